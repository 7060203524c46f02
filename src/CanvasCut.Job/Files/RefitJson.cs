using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The answer to a refit for programs, as <c>refit --json</c> prints it; docs/refit.md tells the form.</summary>
public static class RefitJson
{
    /// <summary>The value of "format".</summary>
    public const string Format = "canvascut-refit-1";

    /// <summary>The whole text.</summary>
    /// <param name="oldName">What the job that is sewn is called.</param>
    /// <param name="newName">What the new job is called.</param>
    /// <param name="outcome">What becomes of it.</param>
    public static string Of(string oldName, string newName, RefitOutcome outcome) => JsonText.Of(
        new(
            Format,
            JobRun.Version,
            Languages.Code,
            newName,
            oldName,
            outcome.Made is not null,
            outcome.Made?.HasFailed,
            outcome.Verdict,
            [.. outcome.Pieces.Select(piece => new FatePart(piece.Id, piece.Name, piece.Fate, piece.Why))],
            [.. outcome.Ranges.Where(range => range.Sizes is not null).Select(range => Sizes(range.Sizes!, range.MostThickness))],
            outcome.Changes,
            outcome.Notes),
        ResultsContext.Default.RefitDocument);

    private static SizesPart Sizes(Patterns.PanelRange sizes, Length mostThickness) => new(
        sizes.LongSide,
        [Mm(sizes.Length.From), Mm(sizes.Length.To)],
        [Mm(sizes.Width.From), Mm(sizes.Width.To)],
        [.. sizes.Limits.Select(limit => new SizeLimitPart(limit.Lengths, limit.Widths, Mm(limit.Most)))],
        Mm(mostThickness));

    private static double Mm(Length length) => JsonText.Mm(length.Millimeters);
}
