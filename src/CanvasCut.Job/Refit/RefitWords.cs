using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The answer to a refit in words.</summary>
internal static class RefitWords
{
    public static string Fits(ImmutableArray<RefitPiece> pieces, JobOutcome made)
    {
        var anew = pieces.Where(piece => piece.Fate == RefitFate.Anew).Select(piece => piece.Name).ToList();
        var failed = made.Content.Checks.Count(check => check.Verdict == Verdict.Fail);
        var what = anew.Count == 0 ? "every piece stays as it is drawn" : $"made anew: {string.Join(", ", anew)}";
        return failed == 0
            ? $"FITS the sewn half; {what}."
            : FormattableString.Invariant($"FITS the sewn half, but {failed} {(failed == 1 ? "check fails" : "checks fail")}; {what}.");
    }

    public static string DoesNotFit(RefitWay way, CarrierJob job)
    {
        var range = way.Range;
        var isAthwart = way.Panel.LongSide == LongSide.Athwart;
        var (athwart, foreAft) = isAthwart ? (range.Length, range.Width) : (range.Width, range.Length);
        string?[] reasons =
        [
            TooMuch("athwart", way.Panel.Athwart, athwart, job.Units),
            TooMuch("fore and aft", way.Panel.ForeAft, foreAft, job.Units),
            way.IsThinEnough ? null : $"too thick by {LengthText.Of(job.Panel.Body.Thickness - way.MostThickness, job.Units)} for the pockets",
        ];
        var told = reasons.Where(reason => reason is not null).ToList();
        return $"DOES NOT FIT the sewn half: {(told.Count > 0 ? string.Join("; ", told) : "a pocket's mouth or a weather strip would lie over cells")}.";
    }

    private static string? TooMuch(string direction, Length size, (Length From, Length To) range, PrintUnits units) =>
        size > range.To ? $"{direction} too large by {LengthText.Of(size - range.To, units)}"
        : size < range.From ? $"{direction} too small by {LengthText.Of(range.From - size, units)}"
        : null;

    public static string Borders(Sides<Length> border, PrintUnits units) =>
        $"Borders of the new carrier: forward {LengthText.Of(border.Forward, units)}, aft {LengthText.Of(border.Aft, units)}, port {LengthText.Of(border.Port, units)}, starboard {LengthText.Of(border.Starboard, units)}.";

    /// <summary>A sentence for each measure that must change.</summary>
    public static ImmutableArray<string> Changes(RefitAnswer answer, SewnHalf sewn, PrintUnits units) =>
        answer.Change is { } change ? [.. change.Measures.Select(measure => Change(measure, sewn, units))] : [];

    private static string Change(MeasureChange measure, SewnHalf sewn, PrintUnits units)
    {
        string From(string what) => $"{what} from {LengthText.Of(measure.From, units)} to {LengthText.Of(measure.To, units)}";
        var by = measure.To - measure.From;
        return measure.Thing switch
        {
            ChangedThing.Border => $"In the new job, {From($"carrier.border.{Words.Of((Side)measure.At!)}")}; nothing on the top changes.",
            ChangedThing.WidestBorder => $"In the new job, {From("carrier.widest_border")}; nothing on the top changes, but so wide a border flutters.",
            ChangedThing.StripOverlap => $"Turn the weather strip's free edge under, or make it anew: {From("overlap")}.",
            ChangedThing.PocketEase => $"Unpick all four pockets and make them anew for the thicker panel: {From("ease")}.",
            ChangedThing.PocketLeg => $"Unpick the {measure.At} pocket and sew a smaller one in its place: {From("leg")}.",
            ChangedThing.Athwart => $"Unpick the four pockets and sew each {LengthText.Of(by / 2, units)} further out, for a carrier wider athwart: {From("its finished size")}; both zipper halves stay, their setback becomes {LengthText.Of(sewn.Zipper.Setback + (by / 2), units)}.",
            _ => $"Unpick the aft zipper half, the aft pockets and an aft weather strip, and sew them {LengthText.Of(by, units)} further aft, for a carrier longer fore and aft: {From("its finished size")}.",
        };
    }
}
