using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The distances that a mounting must keep.</summary>
public static class Clearances
{
    /// <summary>
    /// All of them where it lies: to the top's edges, to the tubes, to the keep-outs, to what is on the top already and to the swing of the
    /// boom.
    /// </summary>
    public static ImmutableArray<Clearance> Of(CarrierJob job, MountedShape mounted) => [.. RulesOf(job, mounted).Select(rule => rule.Clearance)];

    /// <summary>The rules for a mounting that is moved from where it lies.</summary>
    internal static ImmutableArray<DistanceRule> RulesOf(CarrierJob job, MountedShape mounted) =>
    [
        .. new[] { Side.Port, Side.Starboard, Side.Forward, Side.Aft }.Select(side => Rim(job.Top, mounted, side)),
        .. TubeUnder.Of(job.Top).SelectMany(tube => OnTube(job, mounted, tube)),
        .. job.Top.KeepOuts.Index().Select(each => KeepOut(mounted, each.Item, each.Index + 1)),
        .. FixtureParts.RulesOf(job, mounted),
        .. BoomRoom.RulesOf(job, mounted),
    ];

    /// <summary>The distance of the cells from each tube.</summary>
    public static ImmutableArray<Clearance> CellsFromTubes(CarrierJob job, MountedShape mounted) =>
        [.. TubeUnder.Of(job.Top).Select(tube => Cells(job, mounted, tube).Clearance)];

    private static DistanceRule Rim(TopCloth top, MountedShape mounted, Side side)
    {
        var subject = side switch
        {
            Side.Port => Say.Of("port edge of the top"),
            Side.Starboard => Say.Of("starboard edge of the top"),
            Side.Forward => Say.Of("forward edge of the top"),
            _ => Say.Of("aft edge of the top"),
        };
        return new(ClearanceKind.Margin, subject, top.Outline.IsRectangle ? [mounted.Extent] : mounted.Bounds, TopRim.Of(top, side), top.Edges.Margin.Millimeters) { To = PartKey.TopEdge(side) };
    }

    /// <summary>The boxes round all that is mounted are kept clear of it. A pocket's box holds a little more than the pocket, on the safe side.</summary>
    private static DistanceRule KeepOut(MountedShape mounted, KeepOut keepOut, int number) => new(
        ClearanceKind.KeepOut, keepOut.Name, mounted.Bounds, new BlockObstacle(Plan.Of(keepOut)), keepOut.Clearance.Millimeters)
    {
        To = PartKey.KeepOut(number),
    };

    private static IEnumerable<DistanceRule> OnTube(CarrierJob job, MountedShape mounted, TubeUnder tube)
    {
        var (obstacle, needed) = (tube.Obstacle, job.Limits.TubeClearance.Millimeters);
        foreach (var hard in tube.RunsForeAft ? TubeParts.Along(job, mounted) : TubeParts.Across(job, mounted))
        {
            yield return new(hard.Kind, Say.Of($"{hard.Name} and {tube.Name}"), hard.Places, obstacle, needed) { Of = hard.Key, To = tube.Key };
        }

        foreach (var panel in EachPanel.Of(job, mounted).Where(panel => !panel.Job.Panel.Limits.AllowsHardPoints))
        {
            yield return Cells(panel.Job, panel.Mounted, tube);
        }
    }

    private static DistanceRule Cells(CarrierJob job, MountedShape mounted, TubeUnder tube) => new(
        ClearanceKind.TubeCells, PanelWords.Of(job, Say.Of($"cells and {tube.Name}")), [mounted.CellBox], tube.Obstacle, job.Limits.CellMargin.Millimeters)
    {
        Of = new PartKeys(job).Cells,
        To = tube.Key,
    };
}
