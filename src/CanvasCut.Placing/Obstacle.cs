using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Placing;

/// <summary>Something that mounted parts keep away from, in the plan of the top.</summary>
internal abstract record Obstacle
{
    /// <summary>How far a part lies from it; negative by how far the two lie on each other.</summary>
    public abstract double DistanceMm(Box part);

    /// <summary>
    /// What must be kept so that a part lies clear of it, each in one of several ways; each way is a distance that is linear in the place of
    /// the mounting, and the smallest of the best is never more than <see cref="DistanceMm"/>.
    /// </summary>
    /// <param name="part">The part, with the mounting's middle at the origin.</param>
    /// <param name="at">The mounting's place.</param>
    public abstract IEnumerable<ImmutableArray<LinearSpare>> Ways(Box part, PlaceUnknowns at);

    /// <summary>The distance of a part that is moved, made ready for a search; the smallest of them is <see cref="DistanceMm"/>.</summary>
    /// <param name="part">The part, with the mounting's middle at the origin.</param>
    public abstract IEnumerable<MovedDistance> Moved(Box part);

    /// <summary>How far a box reaches from its middle in a direction.</summary>
    protected static double ReachMm(Box part, Step unit) => ((Math.Abs(unit.X) * part.WidthMm) + (Math.Abs(unit.Y) * part.HeightMm)) / 2;
}

/// <summary>Which unknowns are the place of a mounting's middle.</summary>
/// <param name="X">The number of the unknown across the boat.</param>
/// <param name="Y">The number of the unknown along the boat.</param>
/// <param name="IsMirrored">Whether the mounting lies as far to the other side of the centreline as the unknown says.</param>
public readonly record struct PlaceUnknowns(int X, int Y, bool IsMirrored)
{
    /// <summary>A distance in one direction from the origin, with so much to spare there.</summary>
    internal LinearSpare Along(Step unit, double constantMm) => new([(X, IsMirrored ? -unit.X : unit.X), (Y, unit.Y)], constantMm);
}

/// <summary>A straight edge, which parts stay inside of.</summary>
/// <param name="Inner">Its inner side.</param>
internal sealed record RimObstacle(HalfPlane Inner) : Obstacle
{
    private readonly Step _inward = Inward(Inner);

    public override double DistanceMm(Box part) => Inner.InsideMm(part.Center) - ReachMm(part, _inward);

    public override IEnumerable<ImmutableArray<LinearSpare>> Ways(Box part, PlaceUnknowns at) => [[at.Along(_inward, DistanceMm(part))]];

    public override IEnumerable<MovedDistance> Moved(Box part) => [new EvenDistance(_inward, DistanceMm(part))];

    private static Step Inward(HalfPlane inner)
    {
        var along = inner.Along.Unit();
        return new(-along.Y, along.X);
    }
}

/// <summary>A tube, which crosses the whole top: parts lie on one side of it or on the other.</summary>
/// <param name="On">A point of its middle line.</param>
/// <param name="Along">The way it runs.</param>
/// <param name="HalfMm">Half its breadth.</param>
internal sealed record BandObstacle(Point On, Step Along, double HalfMm) : Obstacle
{
    private readonly Step _across = new(-Along.Unit().Y, Along.Unit().X);

    public override double DistanceMm(Box part) => Math.Abs(SideMm(part)) - ReachMm(part, _across) - HalfMm;

    public override IEnumerable<ImmutableArray<LinearSpare>> Ways(Box part, PlaceUnknowns at)
    {
        var (side, kept) = (SideMm(part), ReachMm(part, _across) + HalfMm);
        return [[at.Along(_across, side - kept), at.Along(_across * -1, -side - kept)]];
    }

    public override IEnumerable<MovedDistance> Moved(Box part) => [new BesideDistance(_across, SideMm(part), ReachMm(part, _across) + HalfMm)];

    private double SideMm(Box part) => new HalfPlane(On, Along).InsideMm(part.Center);
}

/// <summary>A keep-out, which parts lie beside, forward or aft of.</summary>
/// <param name="Block">What must stay clear.</param>
internal sealed record BlockObstacle(Box Block) : Obstacle
{
    public override double DistanceMm(Box part) => part.DistanceMm(Block);

    public override IEnumerable<ImmutableArray<LinearSpare>> Ways(Box part, PlaceUnknowns at) =>
    [
        [
            at.Along(new(-1, 0), Block.Left - part.Right),
            at.Along(new(1, 0), part.Left - Block.Right),
            at.Along(new(0, -1), Block.Bottom - part.Top),
            at.Along(new(0, 1), part.Bottom - Block.Top),
        ],
    ];

    public override IEnumerable<MovedDistance> Moved(Box part) => [new BlockDistance(part, Block)];
}

/// <summary>A convex area or a straight line, set out all round.</summary>
/// <param name="Corners">The area's corners in any order, or the line's ends.</param>
/// <param name="HalfMm">How far it is set out.</param>
internal sealed record ZoneObstacle(ImmutableArray<Point> Corners, double HalfMm) : Obstacle
{
    public override double DistanceMm(Box part) => ConvexZone.Around(Corners, part).DistanceMm(0, 0) - HalfMm;

    public override IEnumerable<ImmutableArray<LinearSpare>> Ways(Box part, PlaceUnknowns at) =>
        [[.. ConvexZone.Around(Corners, part).Sides.Select(side => at.Along(side.Outward, side.OriginMm - HalfMm))]];

    public override IEnumerable<MovedDistance> Moved(Box part) => [new ZoneDistance(ConvexZone.Around(Corners, part), HalfMm)];
}

/// <summary>Several things kept away from as one; the nearest counts.</summary>
/// <param name="Each">At least one.</param>
internal sealed record AllObstacles(ImmutableArray<Obstacle> Each) : Obstacle
{
    public override double DistanceMm(Box part) => Each.Min(one => one.DistanceMm(part));

    public override IEnumerable<ImmutableArray<LinearSpare>> Ways(Box part, PlaceUnknowns at) => Each.SelectMany(one => one.Ways(part, at));

    public override IEnumerable<MovedDistance> Moved(Box part) => Each.SelectMany(one => one.Moved(part));
}
