using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether the water of the top runs over each weather strip like over a roof tile, or in under its free edge or its open ends.</summary>
internal static class StripWaterChecks
{
    /// <summary>Less is round-off, in degrees.</summary>
    private const int Decimals = 2;

    private static string Source => Say.Of("water runs downhill (geometry); that wind drives it uphill is not reckoned with");

    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var (strips, finding, keys) = (patterns.Mounted.Fastened.Strips, patterns.Surface, new PartKeys(patterns.Job));
        return strips.SelectMany(strip => finding.IsKnown
            ? new[] { FreeEdge(finding.Surface, strip), Ends(finding.Surface, strip) }
            : [NotKnown((CheckCodes.StripWater, FreeEdgeOf(strip)), finding), NotKnown((CheckCodes.StripEnds, EndsOf(strip)), finding)])
            .Select((check, i) => check.On(keys.Strip(strips[i / 2].Side)));
    }

    /// <summary>Of the middle and both ends the worst.</summary>
    private static CheckResult FreeEdge(TopSurface surface, StripPlace strip)
    {
        var (freeY, outward) = strip.Side == Side.Forward ? (strip.Finished.Bottom, 1) : (strip.Finished.Top, -1);
        var falls = new[] { strip.Finished.Left, strip.Finished.Center.X, strip.Finished.Right }
            .Select(x => surface.SlopeAt(Plan.PlaceOf(new(x, freeY))).ForeAft * outward);
        return CheckResult.Judged(
            (CheckCodes.StripWater, FreeEdgeOf(strip)),
            AtLeastLevel(falls.Min(fall => fall.Degrees)),
            Verdict.Caution,
            Source,
            Say.Of($"Water that runs down the top meets the free edge and gets under it to the {Words.Of(strip.Side)} edge of the carrier, where a zipper leaks: raise the bow {Beyond(strip)} or move the carrier beyond it, and expect drips there."));
    }

    private static CheckResult Ends(TopSurface surface, StripPlace strip)
    {
        var y = strip.Finished.Center.Y;
        var port = -surface.SlopeAt(Plan.PlaceOf(new(strip.Finished.Left, y))).Athwart.Degrees;
        var starboard = surface.SlopeAt(Plan.PlaceOf(new(strip.Finished.Right, y))).Athwart.Degrees;
        var (worst, end) = port <= starboard ? (port, Side.Port) : (starboard, Side.Starboard);
        return CheckResult.Judged(
            (CheckCodes.StripEnds, EndsOf(strip)),
            AtLeastLevel(worst),
            Verdict.Caution,
            Source,
            Say.Of($"Its {Words.Of(end)} end is open uphill: sew that end down to the top beside the carrier's corner, so that water goes round it; the rest still lifts."));
    }

    private static Measured AtLeastLevel(double degrees) => Measured.AtLeast(Angle.FromDegrees(Math.Round(degrees, Decimals) + 0.0), Angle.Zero);

    private static CheckResult NotKnown((string Code, string Subject) what, SurfaceFinding finding) =>
        new(what.Code, what.Subject, Verdict.NotChecked, Measured.Nothing, Source, Say.Of($"Give {string.Join(", ", finding.Missing)}."));

    private static string FreeEdgeOf(StripPlace strip) => Say.Of($"fall of the top toward the {Words.Of(strip.Side)} weather strip's free edge");

    private static string EndsOf(StripPlace strip) => Say.Of($"fall of the top outward at the {Words.Of(strip.Side)} weather strip's ends");

    private static string Beyond(StripPlace strip) => strip.Side == Side.Forward ? Say.Of("forward of it") : Say.Of("aft of it");
}
