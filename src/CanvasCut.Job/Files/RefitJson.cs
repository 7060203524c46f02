using CanvasCut.Design;
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
    public static string Of(string oldName, string newName, RefitOutcome outcome) => JsonText.Of(new Dictionary<string, object?>
    {
        ["format"] = Format,
        ["version"] = JobRun.Version,
        ["language"] = Languages.Code,
        ["job"] = newName,
        ["old_job"] = oldName,
        ["fits"] = outcome.Made is not null,
        ["failed"] = outcome.Made?.HasFailed,
        ["verdict"] = outcome.Verdict,
        ["pieces"] = outcome.Pieces.Select(piece => new { id = piece.Id, name = piece.Name, fate = WordOf(piece.Fate), why = piece.Why }),
        ["ranges"] = outcome.Ranges.Select(range => range.Sizes is { } sizes ? Sizes(sizes, range.MostThickness) : null).OfType<object>(),
        ["changes"] = outcome.Changes,
        ["notes"] = outcome.Notes,
    });

    private static object Sizes(Patterns.PanelRange sizes, Length mostThickness) => new
    {
        long_side = sizes.LongSide == LongSide.Athwart ? "athwart" : "fore-aft",
        length_mm = new[] { Mm(sizes.Length.From), Mm(sizes.Length.To) },
        width_mm = new[] { Mm(sizes.Width.From), Mm(sizes.Width.To) },
        limits = sizes.Limits.Select(limit => new { lengths = limit.Lengths, widths = limit.Widths, most_mm = Mm(limit.Most) }),
        most_thickness_mm = Mm(mostThickness),
    };

    private static double Mm(Length length) => JsonText.Mm(length.Millimeters);

    private static string WordOf(RefitFate fate) => fate switch
    {
        RefitFate.Stays => "stays",
        RefitFate.StaysAsSewn => "stays-as-sewn",
        RefitFate.Anew => "anew",
        RefitFate.NotThere => "not-on-top",
        _ => "not-needed",
    };
}
