using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The distances that a mounting must keep, in groups that depend on where it lies along and across the boat.</summary>
public static class Clearances
{
    /// <summary>Those that depend on the station alone: the top's forward and aft edge, and every tube.</summary>
    public static ImmutableArray<Clearance> Along(CarrierJob job, MountedShape mounted) =>
    [
        .. Ends(job.Top, mounted.Extent),
        .. job.Top.Bows.Index().SelectMany(each => OnTube(job, mounted, Plan.BandOf(job.Top, each.Item), each.Index + 1)),
    ];

    /// <summary>Those that depend on the offset alone: the top's port and starboard edge.</summary>
    public static ImmutableArray<Clearance> Across(CarrierJob job, MountedShape mounted)
    {
        var (whole, extent, needed) = (Plan.Of(job.Top), mounted.Extent, job.Top.Edges.Margin.Millimeters);
        return
        [
            Clearance.OfMm(ClearanceKind.Margin, Say.Of("port edge of the top"), extent.Left - whole.Left, needed).Between(null, PartKey.TopEdge(Side.Port)),
            Clearance.OfMm(ClearanceKind.Margin, Say.Of("starboard edge of the top"), whole.Right - extent.Right, needed).Between(null, PartKey.TopEdge(Side.Starboard)),
        ];
    }

    /// <summary>Those that depend on both: the keep-outs.</summary>
    public static ImmutableArray<Clearance> KeepOuts(CarrierJob job, MountedShape mounted) =>
    [
        .. job.Top.KeepOuts.Select((keepOut, index) => Clearance.OfMm(
            ClearanceKind.KeepOut, keepOut.Name, ToKeepOutMm(BoxesOf(mounted), Plan.Of(keepOut), new(0, 0)), keepOut.Clearance.Millimeters).Between(null, PartKey.KeepOut(index + 1))),
    ];

    /// <summary>The boxes round all that is mounted. A pocket's box holds a little more than the pocket, on the safe side.</summary>
    internal static ImmutableArray<Box> BoxesOf(MountedShape mounted) => [.. mounted.Parts.Select(part => part.Bounds)];

    /// <summary>The distance of the nearest of several boxes, moved by a step, from a keep-out.</summary>
    internal static double ToKeepOutMm(ImmutableArray<Box> boxes, Box keepOut, Step step)
    {
        var nearest = double.PositiveInfinity;
        foreach (var box in boxes)
        {
            nearest = Math.Min(nearest, box.MovedBy(step).DistanceMm(keepOut));
        }

        return nearest;
    }

    private static IEnumerable<Clearance> Ends(TopCloth top, Box extent)
    {
        var (whole, needed) = (Plan.Of(top), top.Edges.Margin.Millimeters);
        yield return Clearance.OfMm(ClearanceKind.Margin, Say.Of("forward edge of the top"), whole.Top - extent.Top, needed).Between(null, PartKey.TopEdge(Side.Forward));
        yield return Clearance.OfMm(ClearanceKind.Margin, Say.Of("aft edge of the top"), extent.Bottom - whole.Bottom, needed).Between(null, PartKey.TopEdge(Side.Aft));
    }

    private static IEnumerable<Clearance> OnTube(CarrierJob job, MountedShape mounted, Box tube, int bow)
    {
        var needed = job.Limits.TubeClearance.Millimeters;
        foreach (var hard in HardParts(mounted, new(job)).Concat(SideFasteners.NearestTo(tube, mounted, new(job))))
        {
            yield return Clearance.OfMm(hard.Kind, Say.Of($"{hard.Name} and {NameOf(bow)}"), hard.Place.DistanceInYMm(tube), needed).Between(hard.Key, PartKey.Bow(bow));
        }

        if (!job.Panel.Limits.AllowsHardPoints)
        {
            yield return Cells(job, mounted, tube, bow);
        }
    }

    /// <summary>The distance of the cells from a tube.</summary>
    public static Clearance Cells(CarrierJob job, MountedShape mounted, Box tube, int bow) =>
        Clearance.OfMm(ClearanceKind.TubeCells, Say.Of($"cells and {NameOf(bow)}"), mounted.CellBox.DistanceInYMm(tube), job.Limits.CellMargin.Millimeters)
            .Between(new PartKeys(job).Cells, PartKey.Bow(bow));

    private static string NameOf(int bow) => Say.Of($"bow {bow}");

    private static IEnumerable<TubePart> HardParts(MountedShape mounted, PartKeys keys)
    {
        var carrier = mounted.CarrierBox;
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Forward), Say.Of("carrier's forward edge"), carrier with { Bottom = carrier.Top });
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Aft), Say.Of("carrier's aft edge"), carrier with { Top = carrier.Bottom });
        foreach (var zipper in mounted.Fastened.Zippers.Where(zipper => zipper.IsEnd))
        {
            yield return new(ClearanceKind.TubeZipper, keys.Fastening(zipper.Side), Say.Of($"{Words.Of(zipper.Side)} zipper"), zipper.Band);
        }

        foreach (var flap in mounted.Fastened.Flaps.Where(flap => flap.IsEnd))
        {
            yield return new(ClearanceKind.TubeMount, keys.Fastening(flap.Side), flap.Name, flap.Band);
        }

        // Port and starboard pockets lie at the same stations unless their legs differ; each is told all the same.
        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return new(ClearanceKind.TubePocket, keys.Pocket(pocket.Corner), Say.Of($"{pocket.Corner} pocket"), pocket.Outline.Bounds);
        }

        foreach (var strip in mounted.Fastened.Strips)
        {
            yield return new(ClearanceKind.TubeStrip, keys.Strip(strip.Side), Say.Of($"{Words.Of(strip.Side)} weather strip's seam"), strip.Finished with { Bottom = strip.SeamY, Top = strip.SeamY });
        }

        if (mounted.JunctionBox is { } box)
        {
            yield return new(ClearanceKind.TubeBox, keys.JunctionBox, Say.Of("junction box"), box);
        }
    }
}
