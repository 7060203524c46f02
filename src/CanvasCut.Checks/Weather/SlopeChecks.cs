using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>How the panel slopes at its corners, and where water goes.</summary>
internal static class SlopeChecks
{
    private static string Source => Say.Of("water.least_slope (rule of thumb: sheets with channels hold water below about 5 degrees; one panel maker asks for 10 against dirt)");

    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var (job, mounted, finding) = (patterns.Job, patterns.Mounted, patterns.Surface);
        if (!finding.IsKnown)
        {
            var missing = Say.Of($"Give {string.Join(", ", finding.Missing)}.");
            return new[] { (CheckCodes.SlopeCorner, Say.Of("slope of the panel's corners")), (CheckCodes.SlopeDrain, Say.Of("where water goes")) }
                .Select(what => new CheckResult(what.Item1, what.Item2, Verdict.NotChecked, Measured.Nothing, Source, missing));
        }

        return patterns.OfEach(each => Corner.All.Select(corner => OfCorner(finding.Surface, corner, each.Mounted, job.Conditions.LeastSlope))).Append(Drain(finding.Surface, mounted, job.Units));
    }

    private static CheckResult OfCorner(TopSurface surface, Corner corner, MountedShape mounted, Angle least) => CheckResult.Judged(
        (CheckCodes.SlopeCorner, Say.Of($"slope at the panel's {corner} corner")),
        Measured.AtLeast(surface.SlopeAt(Plan.PlaceOf(corner.Of(mounted.PanelBox))).Steepest, least),
        Verdict.Caution,
        Source,
        Say.Of("Nearly level: water and dirt stay. Most tops are so near the middle; wipe the panel dry, lead water off at the low corners, and prefer two panels either side of the centreline to one across it."));

    private static CheckResult Drain(TopSurface surface, MountedShape mounted, PrintUnits units)
    {
        var lowest = Corner.All.MinBy(corner => Math.Round(surface.PointAt(Plan.PlaceOf(corner.Of(mounted.CarrierBox))).Z, 3))!;
        var gap = Say.Of($"The carrier's lowest corner is the {lowest} one: leave 5 to 10 mm open at the tip of its pocket, or set an eyelet there.");
        var seen = Say.Of("the carrier's line midway, from forward to aft; geometry");
        return WaterTrough.Under(surface, mounted.CarrierBox) is { } trough
            ? new(CheckCodes.SlopeDrain, Say.Of("where water goes"), Verdict.Caution, Measured.AtMost(trough.Depth, Length.Zero), seen, Say.Of($"Water gathers across the panel at station {LengthText.Of(trough.At.Station, units)} and leaves only at the sides: take up the sag or raise the bow, and set a drain beside the cells at both ends of that line. {gap}"))
            : new(CheckCodes.SlopeDrain, Say.Of("where water goes"), Verdict.Pass, Measured.Nothing, seen, Say.Of($"It runs off over the edges. {gap}"));
    }
}
