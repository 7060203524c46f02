using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>One field of a job file.</summary>
/// <param name="Name">Its full name; [] stands behind a table that may be there several times.</param>
/// <param name="IsRequired">Whether it must be there; in a table that may be left out, whether it must be there with the table.</param>
/// <param name="Default">What is taken when it is left out; null without a default.</param>
/// <param name="Usual">The range that is not questioned; empty when anything goes.</param>
/// <param name="Words">The words that may stand there; empty for other kinds.</param>
public sealed record JobField(string Name, bool IsRequired, JobFieldDefault? Default, string Usual, ImmutableArray<string> Words)
{
    /// <summary>The kind of quantity that stands there, or in each item of a list; null for other kinds.</summary>
    public QuantityKind? Quantity { get; internal init; }
}

/// <summary>What is taken for a field that is left out.</summary>
/// <param name="Text">As in the file, but without quotes.</param>
/// <param name="Imperial">The same when only inches are printed.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record JobFieldDefault(string Text, string Imperial, string Source);

/// <summary>The fields that <see cref="JobFile"/> knows.</summary>
public static class JobFields
{
    /// <summary>Every field in the order of docs/job-file.md, in the language of the moment.</summary>
    public static ImmutableArray<JobField> All => [.. KnownFields.All.Select(Shown)];

    private static JobField Shown(Field field) => new(
        field.Name,
        field.Presence is Presence.Required or Presence.RequiredInTable,
        field.Default is { } text ? new(text, field.ImperialDefault ?? text, field.Source) : null,
        field.Range.IsLimited ? field.Range.ToString() : string.Empty,
        [.. field.Words])
    {
        Quantity = FieldKinds.QuantityIn(field.Kind),
    };
}
