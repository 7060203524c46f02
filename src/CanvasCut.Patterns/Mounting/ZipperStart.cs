using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>How far from the corner a zipper starts, so that hands find pin and box beside the pocket that goes over the zipper's end.</summary>
public static class ZipperStart
{
    /// <summary>Between the pocket's mouth and the zipper's start, for two fingers; common practice, no source.</summary>
    public static readonly Length Room = Length.FromMillimeters(10);

    /// <summary>
    /// From the carrier's corner to where a pocket lets go of a zipper's tapes along an edge. The mouth goes out over the edge at 45
    /// degrees, so that it reaches furthest along the outer edge of the tapes, or along the pocket's own seam when that lies nearer.
    /// </summary>
    /// <param name="pocket">The pocket at the zipper's start.</param>
    /// <param name="edge">The edge that the zipper holds.</param>
    /// <param name="spec">The zippers.</param>
    public static Length Reach(PocketPlace pocket, Side edge, ZipperSpec spec)
    {
        var seam = edge is Side.Forward or Side.Aft ? pocket.OutY : pocket.OutX;
        return pocket.Covers + UnitMath.Min(seam, spec.OuterTapeEdge);
    }

    /// <summary>
    /// What the job says, or clear of the pockets. Both ends of the carrier have the same, so that one length of zipper does; a carrier
    /// too small to keep half of its edge for the zipper starts at the setback, and the checks say so.
    /// </summary>
    /// <param name="side">An edge held by a zipper.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="pockets">All four.</param>
    /// <param name="spec">The zippers.</param>
    internal static Length SetbackFor(Side side, Box carrier, IReadOnlyList<PocketPlace> pockets, ZipperSpec spec)
    {
        if (spec.StartSetback is { } given)
        {
            return given;
        }

        var clear = pockets.Where(pocket => IsAtStart(pocket.Corner, side, spec)).Max(pocket => Reach(pocket, side, spec).Millimeters) + Room.Millimeters;
        var edge = side is Side.Forward or Side.Aft ? carrier.WidthMm : carrier.HeightMm;
        var keepsHalf = edge - clear - spec.Setback.Millimeters >= edge / 2;
        return keepsHalf ? Length.FromMillimeters(Math.Max(clear, spec.Setback.Millimeters)) : spec.Setback;
    }

    private static bool IsAtStart(Corner corner, Side edge, ZipperSpec spec)
    {
        var start = spec.StartOf(edge);
        return corner.Hand == start || corner.End == start;
    }
}
