using System.Collections.Immutable;

namespace CanvasCut.JobFiles;

/// <summary>The fields of a grade in a materials file, for docs/ordering.md to be held against.</summary>
public static class SupplyFields
{
    /// <summary>Every field, named as in <c>cloth.thickness</c>, kind by kind, in the language of the moment.</summary>
    public static ImmutableArray<JobField> All =>
    [
        .. MaterialFields.OfKind.SelectMany(kind => kind.Value.Select(each => new JobField(
            $"{kind.Key}.{each.Name}",
            each.Presence == Presence.Required,
            null,
            each.Range.IsLimited ? each.Range.ToString() : string.Empty,
            [.. each.Words])
        {
            Quantity = FieldKinds.QuantityIn(each.Kind),
        })),
    ];

    /// <summary>The ids of the grades that the program knows.</summary>
    public static ImmutableArray<string> Grades { get; } = [.. MaterialLibrary.BuiltIn.Ids];
}
