using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Checks;

/// <summary>
/// Tells whether a boom passes over what is mounted, and whether it shades the cells. What is too high for it must lie beside its swing; that is a
/// distance like
/// others, and <see cref="FitChecks"/> tells it.
/// </summary>
internal static class BoomChecks
{
    private static string Source => Say.Of("top.boom.clearance");

    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var (job, mounted) = (patterns.Job, patterns.Mounted);
        if (job.Top.Boom is not { } boom)
        {
            return [];
        }

        var parts = BoomRoom.PartsOf(job, mounted);
        return [.. parts.SelectMany(part => Passing(boom, part)), .. patterns.OfEach(each => MissingBox(boom, each.Mounted, parts[0])), .. patterns.OfEach(each => [Shade(each.Job, each.Mounted, boom)])];
    }

    private static IEnumerable<CheckResult> Passing(TopBoom boom, BoomPart part)
    {
        if (BoomRoom.OutsideOf(boom, part).Millimeters >= 0)
        {
            return [];
        }

        if (boom.Height is not { } height)
        {
            return [new CheckResult(CheckCodes.Boom, Say.Of($"{part.Name} and the boom above"), Verdict.NotChecked, Measured.Nothing, Source, Say.Of("How high the boom swings over the cloth is not given: measure it where it comes lowest, the sheet hauled in and the topping lift slack, and add top.boom.height.")).On(part.Key, PartKey.Boom)];
        }

        return BoomRoom.ClearsOver(boom, part)
            ? [CheckResult.Judged((CheckCodes.Boom, Say.Of($"{part.Name} and the boom above")), Measured.AtLeast(height - part.Height, boom.Clearance), Verdict.Fail, Source, string.Empty).On(part.Key, PartKey.Boom)]
            : [];
    }

    private static IEnumerable<CheckResult> MissingBox(TopBoom boom, MountedShape mounted, BoomPart panel) => mounted.JunctionBox is null && BoomRoom.OutsideOf(boom, panel).Millimeters < 0
        ? [new CheckResult(CheckCodes.Boom, Say.Of("junction box and the boom above"), Verdict.NotChecked, Measured.Nothing, Source, Say.Of("The place of the junction box is not given: add panel.junction_box.")).On(PartKey.Boom)]
        : [];

    private static CheckResult Shade(CarrierJob job, MountedShape mounted, TopBoom boom)
    {
        var isUnder = ConvexZone.Around(Plan.SwingOf(boom).Corners, mounted.CellBox).DistanceMm(0, 0) < 0;
        return new CheckResult(
            CheckCodes.BoomShade,
            Say.Of("cells and the shade of the boom"),
            isUnder ? Verdict.Caution : Verdict.Pass,
            Measured.Nothing,
            LimitSource.Practice,
            isUnder ? Say.Of("Cells lie below the swing of the boom and are shaded whenever it is over them; how much that costs is not worked out. Lay the panel beside the swing, or let the boom out while it charges.") : string.Empty).On(new PartKeys(job).Cells, PartKey.Boom);
    }
}
