using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The distances that a mounting must keep.</summary>
public static class Clearances
{
    /// <summary>All of them where it lies: to the top's edges, to the tubes, to the keep-outs.</summary>
    public static ImmutableArray<Clearance> Of(CarrierJob job, MountedShape mounted) => [.. RulesOf(job, mounted).Select(rule => rule.Clearance)];

    /// <summary>The rules for a mounting that is moved from where it lies.</summary>
    internal static ImmutableArray<DistanceRule> RulesOf(CarrierJob job, MountedShape mounted) =>
    [
        .. new[] { Side.Port, Side.Starboard, Side.Forward, Side.Aft }.Select(side => Rim(job.Top, mounted, side)),
        .. job.Top.Bows.Index().SelectMany(each => OnTube(job, mounted, each.Index + 1)),
        .. job.Top.KeepOuts.Index().Select(each => KeepOut(mounted, each.Item, each.Index + 1)),
    ];

    /// <summary>The distance of the cells from a tube.</summary>
    /// <param name="job">The job.</param>
    /// <param name="mounted">What is mounted.</param>
    /// <param name="bow">The number of the bow, from 1.</param>
    public static Clearance CellsFromBow(CarrierJob job, MountedShape mounted, int bow) => Cells(job, mounted, bow).Clearance;

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

    private static IEnumerable<DistanceRule> OnTube(CarrierJob job, MountedShape mounted, int bow)
    {
        var (tube, needed) = (TubeOf(job, bow), job.Limits.TubeClearance.Millimeters);
        var each = EachPanel.Of(job, mounted);
        foreach (var hard in HardParts(mounted, new(job)).Concat(each.SelectMany(Boxes)).Concat(SideFasteners.Of(mounted, new(job))))
        {
            yield return new(hard.Kind, Say.Of($"{hard.Name} and {NameOf(bow)}"), hard.Places, tube, needed) { Of = hard.Key, To = PartKey.Bow(bow) };
        }

        foreach (var panel in each.Where(panel => !panel.Job.Panel.Limits.AllowsHardPoints))
        {
            yield return Cells(panel.Job, panel.Mounted, bow);
        }
    }

    private static IEnumerable<TubePart> Boxes(EachPanel panel) => panel.Mounted.JunctionBox is { } box
        ? [new(ClearanceKind.TubeBox, new PartKeys(panel.Job).JunctionBox, PanelWords.Of(panel.Job, Say.Of("junction box")), [box])]
        : [];

    private static DistanceRule Cells(CarrierJob job, MountedShape mounted, int bow) => new(
        ClearanceKind.TubeCells, PanelWords.Of(job, Say.Of($"cells and {NameOf(bow)}")), [mounted.CellBox], TubeOf(job, bow), job.Limits.CellMargin.Millimeters)
    {
        Of = new PartKeys(job).Cells,
        To = PartKey.Bow(bow),
    };

    private static BandObstacle TubeOf(CarrierJob job, int bow)
    {
        var band = Plan.BandOf(job.Top, job.Top.Bows[bow - 1]);
        return new(band.Center, new(1, 0), band.HeightMm / 2);
    }

    private static string NameOf(int bow) => Say.Of($"bow {bow}");

    private static IEnumerable<TubePart> HardParts(MountedShape mounted, PartKeys keys)
    {
        var carrier = mounted.CarrierBox;
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Forward), Say.Of("carrier's forward edge"), [carrier with { Bottom = carrier.Top }]);
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Aft), Say.Of("carrier's aft edge"), [carrier with { Top = carrier.Bottom }]);
        foreach (var zipper in mounted.Fastened.Zippers.Where(zipper => zipper.IsEnd))
        {
            yield return new(ClearanceKind.TubeZipper, keys.Fastening(zipper.Side), Say.Of($"{Words.Of(zipper.Side)} zipper"), [zipper.Band]);
        }

        foreach (var flap in mounted.Fastened.Flaps.Where(flap => flap.IsEnd))
        {
            yield return new(ClearanceKind.TubeMount, keys.Fastening(flap.Side), flap.Name, [flap.Band]);
        }

        // Port and starboard pockets lie at the same stations unless their legs differ; each is told all the same.
        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return new(ClearanceKind.TubePocket, keys.Pocket(pocket.Corner), Say.Of($"{pocket.Corner} pocket"), [pocket.Outline.Bounds]);
        }

        foreach (var strip in mounted.Fastened.StripsOnTop)
        {
            yield return new(ClearanceKind.TubeStrip, keys.Strip(strip.Side), Say.Of($"{Words.Of(strip.Side)} weather strip's seam"), [Box.Holding([strip.Seam.From, strip.Seam.To])]);
        }
    }
}
