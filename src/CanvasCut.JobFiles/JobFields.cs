using System.Collections.Immutable;

namespace CanvasCut.JobFiles;

/// <summary>One field of a job file.</summary>
/// <param name="Name">Its full name; [] stands behind a table that may be there several times.</param>
/// <param name="IsRequired">Whether it must be there; in a table that may be left out, whether it must be there with the table.</param>
/// <param name="Default">What is taken when it is left out, as in the file but without quotes; null without a default.</param>
/// <param name="ImperialDefault">What is taken instead when only inches are printed; null when the same.</param>
/// <param name="Source">Where the default comes from; empty without a default.</param>
/// <param name="Usual">The range that is not questioned; empty when anything goes.</param>
/// <param name="Words">The words that may stand there; empty for other kinds.</param>
public sealed record JobField(
    string Name,
    bool IsRequired,
    string? Default,
    string? ImperialDefault,
    string Source,
    string Usual,
    ImmutableArray<string> Words);

/// <summary>The fields that <see cref="JobFile"/> knows.</summary>
public static class JobFields
{
    /// <summary>Every field in the order of docs/job-file.md.</summary>
    public static ImmutableArray<JobField> All { get; } = [.. KnownFields.All.Select(Shown)];

    private static JobField Shown(Field field) => new(
        field.Name,
        field.Presence is Presence.Required or Presence.RequiredInTable,
        field.Default,
        field.ImperialDefault,
        field.Source,
        field.Range.IsLimited ? field.Range.ToString() : string.Empty,
        [.. field.Words]);
}
