using CanvasCut.Design;
using CanvasCut.Geometry;
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
        var (finding, keys) = (patterns.Surface, new PartKeys(patterns.Job));
        return patterns.Mounted.Fastened.Strips.SelectMany(strip => (finding.IsKnown
            ? new[] { FreeEdge(finding.Surface, strip), Ends(finding.Surface, strip) }
            : [NotKnown((CheckCodes.StripWater, FreeEdgeOf(strip)), finding), NotKnown((CheckCodes.StripEnds, EndsOf(strip)), finding)])
            .Select(check => check.On(keys.Strip(strip.Side))));
    }

    /// <summary>Of the middle and both ends the worst.</summary>
    private static CheckResult FreeEdge(TopSurface surface, StripPlace strip)
    {
        var (from, to) = strip.FreeEdge;
        var falls = new[] { 0, 0.5, 1 }.Select(part => Fall(surface, from.Toward(to, part), strip.FreeSide)).ToList();
        return CheckResult.Judged(
            (CheckCodes.StripWater, FreeEdgeOf(strip)),
            AtLeastLevel(falls.Min()),
            Verdict.Caution,
            Source,
            string.Join(' ', new[] { UnderIt(strip), Held(strip), Remedy(strip, fallsTheOtherWay: falls.Max() <= 0) }.Where(part => part.Length > 0)));
    }

    private static string UnderIt(StripPlace strip) => strip.IsOnCarrier
        ? Say.Of($"Water that runs down the top meets the free edge and gets under it to the {Words.Of(strip.Side)} edge, where a zipper leaks.")
        : Say.Of($"Water that runs down the carrier meets the free edge and gets under it to the {Words.Of(strip.Side)} edge, where a zipper leaks.");

    /// <summary>What holds the edge down keeps it from lifting in the wind, and does not make it tight.</summary>
    private static string Held(StripPlace strip) => strip.Holding switch
    {
        null => string.Empty,
        { Kind: Design.StripHold.Rod } => Say.Of("The rod keeps the edge down all along, but water still soaks in under it."),
        _ => Say.Of("What holds it keeps the edge from lifting, but water runs in between."),
    };

    private static string Remedy(StripPlace strip, bool fallsTheOtherWay)
    {
        var rise = Say.Of($"raise the bow {Beyond(strip.SeamSide)} or move the carrier beyond it, and expect drips there.");
        return !fallsTheOtherWay ? Say.Of($"Some of it falls the other way, so the other side is no better: {rise}")
            : strip.IsOnCarrier ? Say.Of($"Sew it to the top (weather_strip.sewn_to.{Words.Id(strip.Side)} = \"top\"): then it lies like a roof tile. Or {rise}")
            : Say.Of($"Sew it to the carrier (weather_strip.sewn_to.{Words.Id(strip.Side)} = \"carrier\"): then it lies like a roof tile. Or {rise}");
    }

    private static CheckResult Ends(TopSurface surface, StripPlace strip)
    {
        var ((from, to), (free, other)) = (strip.Seam, strip.FreeEdge);
        var (first, last) = (Fall(surface, from.Toward(free, 0.5), strip.Ends.First), Fall(surface, to.Toward(other, 0.5), strip.Ends.Last));
        var (worst, end) = first <= last ? (first, strip.Ends.First) : (last, strip.Ends.Last);
        return CheckResult.Judged(
            (CheckCodes.StripEnds, EndsOf(strip)),
            AtLeastLevel(worst),
            Verdict.Caution,
            Source,
            strip.IsOnCarrier
                ? Say.Of($"Its {Words.Of(end)} end is open uphill, beside the pocket: water gets in there under the strip. It cannot be sewn down, for it comes off with the carrier; a strip on the top can.")
                : Say.Of($"Its {Words.Of(end)} end is open uphill: sew that end down to the top beside the carrier's corner, so that water goes round it; the rest still lifts."));
    }

    /// <summary>How far the top falls toward a side at a place, in degrees; below zero it rises.</summary>
    private static double Fall(TopSurface surface, Point place, Side toward)
    {
        var slope = surface.SlopeAt(Plan.PlaceOf(place));
        return toward switch
        {
            Side.Forward => -slope.ForeAft.Degrees,
            Side.Aft => slope.ForeAft.Degrees,
            Side.Port => -slope.Athwart.Degrees,
            _ => slope.Athwart.Degrees,
        };
    }

    private static Measured AtLeastLevel(double degrees) => Measured.AtLeast(Angle.FromDegrees(Math.Round(degrees, Decimals) + 0.0), Angle.Zero);

    private static CheckResult NotKnown((string Code, string Subject) what, SurfaceFinding finding) =>
        new(what.Code, what.Subject, Verdict.NotChecked, Measured.Nothing, Source, Say.Of($"Give {string.Join(", ", finding.Missing)}."));

    private static string FreeEdgeOf(StripPlace strip) => Say.Of($"fall of the top toward the {Words.Of(strip.Side)} weather strip's free edge");

    private static string EndsOf(StripPlace strip) => Say.Of($"fall of the top outward at the {Words.Of(strip.Side)} weather strip's ends");

    private static string Beyond(Side seam) => seam switch
    {
        Side.Forward => Say.Of("forward of it"),
        Side.Aft => Say.Of("aft of it"),
        Side.Port => Say.Of("to port of it"),
        _ => Say.Of("to starboard of it"),
    };
}
