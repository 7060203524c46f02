using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A corner pocket where it lies on the top.</summary>
/// <param name="Corner">Which corner of the carrier it holds.</param>
/// <param name="Leg">Along each leg seam.</param>
/// <param name="OutX">From the carrier's side edge out to the leg seam.</param>
/// <param name="OutY">From the carrier's forward or aft edge out to the leg seam.</param>
/// <param name="At">The pocket's right-angled corner.</param>
public sealed record PocketPlace(Corner Corner, Length Leg, Length OutX, Length OutY, Point At)
{
    /// <summary>How far along each edge of the carrier, from its corner, the mouth lies.</summary>
    public Length Covers => Leg - OutX - OutY;

    /// <summary>The end of the leg that runs across the boat.</summary>
    public Point EndAthwart => At - new Step(Corner.OutwardX * Leg.Millimeters, 0);

    /// <summary>The end of the leg that runs along the boat.</summary>
    public Point EndForeAft => At - new Step(0, Corner.OutwardY * Leg.Millimeters);

    /// <summary>The finished pocket.</summary>
    public Outline Outline => new([At, EndAthwart, EndForeAft]);

    /// <summary>The pocket moved with the carrier.</summary>
    public PocketPlace MovedBy(Step step) => this with { At = At + step };

    /// <summary>The pocket for a corner.</summary>
    /// <param name="corner">Which corner.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="cells">The cell area.</param>
    /// <param name="job">The job.</param>
    public static PocketPlace For(Corner corner, Box carrier, Box cells, CarrierJob job)
    {
        var toCells = ToCells(corner, carrier, cells) - job.Carrier.Room.Kept[corner.End] - job.Carrier.Room.Kept[corner.Hand];
        var leg = job.Fastenings.Pocket.Leg ?? LargestLeg(toCells, Outside(job.Fastenings, corner), job.Limits.ShadeGap);
        return Of(corner, carrier, job.Fastenings, leg);
    }

    /// <summary>A pocket of a given leg at a corner of the carrier.</summary>
    internal static PocketPlace Of(Corner corner, Box carrier, Fastenings fastenings, Length leg)
    {
        var (outX, outY) = Outs(fastenings, corner);
        var at = corner.Of(carrier) + new Step(corner.OutwardX * outX.Millimeters, corner.OutwardY * outY.Millimeters);
        return new(corner, leg, outX, outY, at);
    }

    /// <summary>How much of a leg lies outside the carrier, both ways added up.</summary>
    internal static Length Outside(Fastenings fastenings, Corner corner)
    {
        var (outX, outY) = Outs(fastenings, corner);
        return outX + outY;
    }

    private static (Length OutX, Length OutY) Outs(Fastenings fastenings, Corner corner)
    {
        Length Out(Side side) => fastenings.Pocket.OverZipper ? fastenings.OuterEdge(side) + fastenings.Pocket.Ease : fastenings.Pocket.Ease;
        return (Out(corner.Hand), Out(corner.End));
    }

    /// <summary>How far the cell area's corner lies from the carrier's, the distances along both edges added up.</summary>
    public static Length ToCells(Corner corner, Box carrier, Box cells)
    {
        var step = corner.Of(carrier) - corner.Of(cells);
        return Length.FromMillimeters((step.X * corner.OutwardX) + (step.Y * corner.OutwardY));
    }

    /// <summary>
    /// The largest leg whose mouth stays clear of the cells: the mouth is the line on which the distances along both
    /// edges add up to <see cref="Covers"/>, and that of the cells' corner must be more by the gap.
    /// </summary>
    private static Length LargestLeg(Length toCells, Length outside, Length gap)
    {
        var leg = toCells - gap + outside;

        // A pocket over cells that reach the carrier's very corner would have no size at all; it keeps the size of its
        // ease, holds nothing, and the checks say so.
        return leg.Millimeters >= outside.Millimeters ? leg : outside;
    }
}
