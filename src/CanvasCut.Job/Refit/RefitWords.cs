using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The answer to a refit in words.</summary>
internal static class RefitWords
{
    public static string Fits(ImmutableArray<RefitPiece> pieces, JobRun made)
    {
        var anew = pieces.Where(piece => piece.Fate == RefitFate.Anew).Select(piece => piece.Name).ToList();
        var failed = made.Checks.Count(check => check.Verdict == Verdict.Fail);
        var what = anew.Count == 0 ? Say.Of("every piece stays as it is drawn") : Say.Of($"made anew: {string.Join(", ", anew)}");
        return failed == 0
            ? Say.Of($"FITS the sewn half; {what}.")
            : Say.Of($"FITS the sewn half, but {failed} {(failed == 1 ? Say.Of("check fails") : Say.Of("checks fail"))}; {what}.");
    }

    public static string DoesNotFit(RefitWay way, CarrierJob job)
    {
        var range = way.Range;
        var isAthwart = way.Panel.LongSide == LongSide.Athwart;
        var (athwart, foreAft) = isAthwart ? (range.Length, range.Width) : (range.Width, range.Length);
        string?[] reasons =
        [
            TooMuch("athwart", way.Panel.Athwart, athwart, job.Units),
            TooMuch(Say.Of("fore and aft"), way.Panel.ForeAft, foreAft, job.Units),
            way.IsThinEnough ? null : Say.Of($"too thick by {LengthText.Of(job.Panel.Body.Thickness - way.MostThickness, job.Units)} for the pockets"),
        ];
        var told = reasons.Where(reason => reason is not null).ToList();
        return Say.Of($"DOES NOT FIT the sewn half: {(told.Count > 0 ? string.Join("; ", told) : Say.Of("a pocket's mouth or a weather strip would lie over cells"))}.");
    }

    private static string? TooMuch(string direction, Length size, (Length From, Length To) range, PrintUnits units) =>
        size > range.To ? Say.Of($"{direction} too large by {LengthText.Of(size - range.To, units)}")
        : size < range.From ? Say.Of($"{direction} too small by {LengthText.Of(range.From - size, units)}")
        : null;

    public static string Borders(Sides<Length> border, PrintUnits units) =>
        Say.Of($"Borders of the new carrier: forward {LengthText.Of(border.Forward, units)}, aft {LengthText.Of(border.Aft, units)}, port {LengthText.Of(border.Port, units)}, starboard {LengthText.Of(border.Starboard, units)}.");

    /// <summary>A sentence for each measure that must change.</summary>
    public static ImmutableArray<string> Changes(RefitAnswer answer, SewnHalf sewn, PrintUnits units) =>
        answer.Change is { } change ? [.. change.Measures.Select(measure => Change(measure, sewn, units))] : [];

    private static string Change(MeasureChange measure, SewnHalf sewn, PrintUnits units)
    {
        string From(string what) => Say.Of($"{what} from {LengthText.Of(measure.From, units)} to {LengthText.Of(measure.To, units)}");
        var by = measure.To - measure.From;
        return measure.Thing switch
        {
            ChangedThing.Border => Say.Of($"In the new job, {From($"carrier.border.{Words.Id((Side)measure.At!)}")}; nothing on the top changes."),
            ChangedThing.WidestBorder => Say.Of($"In the new job, {From("carrier.widest_border")}; nothing on the top changes, but so wide a border flutters."),
            ChangedThing.StripOverlap => Say.Of($"Turn the weather strip's free edge under, or make it anew: {From(Say.Of("overlap"))}."),
            ChangedThing.PocketEase => Say.Of($"Unpick all four pockets and make them anew for the thicker panel: {From(Say.Of("ease"))}."),
            ChangedThing.PocketLeg => Say.Of($"Unpick the {measure.At} pocket and sew a smaller one in its place: {From(Say.Of("leg"))}."),
            ChangedThing.Athwart => Say.Of($"Unpick the four pockets and sew each {LengthText.Of(by / 2, units)} further out, for a carrier wider athwart: {From(Say.Of("its finished size"))}; both zipper halves stay, their setback becomes {LengthText.Of(sewn.Zipper.Setback + (by / 2), units)}."),
            _ => Say.Of($"Unpick the aft zipper half, the aft pockets and an aft weather strip, and sew them {LengthText.Of(by, units)} further aft, for a carrier longer fore and aft: {From(Say.Of("its finished size"))}."),
        };
    }
}
