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
        .. job.Top.Bows.Index().SelectMany(each => OnTube(job, mounted, Plan.BandOf(job.Top, each.Item), Say.Of($"bow {each.Index + 1}"))),
    ];

    /// <summary>Those that depend on the offset alone: the top's port and starboard edge.</summary>
    public static ImmutableArray<Clearance> Across(CarrierJob job, MountedShape mounted)
    {
        var (whole, extent, needed) = (Plan.Of(job.Top), mounted.Extent, job.Top.Edges.Margin.Millimeters);
        return
        [
            Clearance.OfMm(ClearanceKind.Margin, Say.Of("port edge of the top"), extent.Left - whole.Left, needed),
            Clearance.OfMm(ClearanceKind.Margin, Say.Of("starboard edge of the top"), whole.Right - extent.Right, needed),
        ];
    }

    /// <summary>Those that depend on both: the keep-outs.</summary>
    public static ImmutableArray<Clearance> KeepOuts(CarrierJob job, MountedShape mounted) =>
    [
        .. job.Top.KeepOuts.Select(keepOut => Clearance.OfMm(
            ClearanceKind.KeepOut, keepOut.Name, ToKeepOutMm(BoxesOf(mounted), Plan.Of(keepOut), new(0, 0)), keepOut.Clearance.Millimeters)),
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
        yield return Clearance.OfMm(ClearanceKind.Margin, Say.Of("forward edge of the top"), whole.Top - extent.Top, needed);
        yield return Clearance.OfMm(ClearanceKind.Margin, Say.Of("aft edge of the top"), extent.Bottom - whole.Bottom, needed);
    }

    private static IEnumerable<Clearance> OnTube(CarrierJob job, MountedShape mounted, Box tube, string bow)
    {
        var needed = job.Limits.TubeClearance.Millimeters;
        foreach (var (kind, subject, part) in HardParts(mounted).Concat(SideFasteners.NearestTo(tube, mounted)))
        {
            yield return Clearance.OfMm(kind, Say.Of($"{subject} and {bow}"), part.DistanceInYMm(tube), needed);
        }

        if (!job.Panel.Limits.AllowsHardPoints)
        {
            yield return Cells(job, mounted, tube, bow);
        }
    }

    /// <summary>The distance of the cells from a tube.</summary>
    public static Clearance Cells(CarrierJob job, MountedShape mounted, Box tube, string bow) =>
        Clearance.OfMm(ClearanceKind.TubeCells, Say.Of($"cells and {bow}"), mounted.CellBox.DistanceInYMm(tube), job.Limits.CellMargin.Millimeters);

    private static IEnumerable<(ClearanceKind Kind, string Subject, Box Part)> HardParts(MountedShape mounted)
    {
        var carrier = mounted.CarrierBox;
        yield return (ClearanceKind.TubeEdge, Say.Of("carrier's forward edge"), carrier with { Bottom = carrier.Top });
        yield return (ClearanceKind.TubeEdge, Say.Of("carrier's aft edge"), carrier with { Top = carrier.Bottom });
        foreach (var zipper in mounted.Fastened.Zippers.Where(zipper => zipper.IsEnd))
        {
            yield return (ClearanceKind.TubeZipper, Say.Of($"{Words.Of(zipper.Side)} zipper"), zipper.Band);
        }

        foreach (var flap in mounted.Fastened.Flaps.Where(flap => flap.IsEnd))
        {
            yield return (ClearanceKind.TubeMount, flap.Name, flap.Band);
        }

        // Port and starboard pockets lie at the same stations unless their legs differ; each is told all the same.
        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return (ClearanceKind.TubePocket, Say.Of($"{pocket.Corner} pocket"), pocket.Outline.Bounds);
        }

        foreach (var strip in mounted.Fastened.Strips)
        {
            yield return (ClearanceKind.TubeStrip, Say.Of($"{Words.Of(strip.Side)} weather strip's seam"), strip.Finished with { Bottom = strip.SeamY, Top = strip.SeamY });
        }

        if (mounted.JunctionBox is { } box)
        {
            yield return (ClearanceKind.TubeBox, Say.Of("junction box"), box);
        }
    }
}
