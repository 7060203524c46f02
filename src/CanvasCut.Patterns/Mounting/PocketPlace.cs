using System.Collections.Immutable;
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

    /// <summary>The least a pocket should cover along an edge; common practice, no source.</summary>
    public static readonly Length HoldingCover = Length.FromMillimeters(40);

    /// <summary>A pocket that covers less holds nothing; 1 in, common practice, no source.</summary>
    public static readonly Length LeastCover = Length.FromInches(1);

    /// <summary>The pocket for a corner.</summary>
    /// <param name="corner">Which corner.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="panels">The panels on it.</param>
    /// <param name="job">The job.</param>
    public static PocketPlace For(Corner corner, Box carrier, ImmutableArray<PlacedPanel> panels, CarrierJob job) =>
        Of(corner, carrier, job.Fastenings, job.Fastenings.Pocket.Leg ?? (Covered(corner, carrier, panels, job) + Outside(job.Fastenings, corner)));

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

    /// <summary>The same to the nearest of several panels' cells.</summary>
    public static Length ToCells(Corner corner, Box carrier, IEnumerable<Box> cells) => cells.Select(each => ToCells(corner, carrier, each)).Aggregate(UnitMath.Min);

    /// <summary>
    /// What a pocket of its own accord covers: what it needs to hold or, where that is less, what can be fitted, but never so little
    /// that it holds nothing; and all that only as far as the mouth stays clear of the cells. The mouth is the line on which the distances
    /// along both edges add up to <see cref="Covers"/>, and that of the cells' corner must be more by the gap.
    /// </summary>
    private static Length Covered(Corner corner, Box carrier, ImmutableArray<PlacedPanel> panels, CarrierJob job)
    {
        var kept = job.Carrier.Room.Kept;
        var unshaded = ToCells(corner, carrier, panels.Select(panel => panel.Cells)) - kept[corner.End] - kept[corner.Hand] - job.Limits.ShadeGap;
        var fitted = UnitMath.Max(PocketFitting.Of(job, carrier, panels, corner).Most(corner), LeastCover);

        // A pocket over cells that reach the carrier's very corner has the size of its ease, holds nothing, and the checks say so.
        return UnitMath.Max(UnitMath.Min(unshaded, UnitMath.Min(ToHold(job, Length.FromMillimeters(carrier.HeightMm)), fitted)), Length.Zero);
    }

    /// <summary>
    /// What a pocket must cover so that the corner stays in it: as much as is common, and twice the slack of a carrier that has
    /// stretched before it shrank and is as much too long as its zippers can take.
    /// </summary>
    private static Length ToHold(CarrierJob job, Length foreAft)
    {
        var shape = job.Limits.Shape;
        var slack = (foreAft / (1 - job.Workshop.Cloth.ShrinkForeAft) * (1 + shape.Creep)) - foreAft + shape.ZipperPull;
        return UnitMath.Max(HoldingCover, slack * 2);
    }
}
