using System.Collections.Immutable;

namespace CanvasCut.JobFiles;

/// <summary>The fields of a grade in a materials file, for docs/ordering.md to be held against.</summary>
public static class SupplyFields
{
    /// <summary>Every field, named as in <c>cloth.thickness</c>, kind by kind.</summary>
    public static ImmutableArray<JobField> All { get; } =
    [
        .. MaterialFields.OfKind.SelectMany(kind => kind.Value.Select(field => new JobField(
            $"{kind.Key}.{field.Name}",
            field.Presence == Presence.Required,
            null,
            field.Range.IsLimited ? field.Range.ToString() : string.Empty,
            [.. field.Words]))),
    ];

    /// <summary>The ids of the grades that the program knows.</summary>
    public static ImmutableArray<string> Grades { get; } = [.. MaterialLibrary.BuiltIn.Ids];
}
