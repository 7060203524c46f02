namespace CanvasCut.Geometry;

/// <summary>A convex area, and how far points lie from it; a straight line counts as one without breadth.</summary>
/// <remarks>
/// The places at which a box meets a convex area are the area added to the box turned about (<see cref="Around"/>); so the distance of a
/// box that is moved from an area at rest is that of a point from this zone. It changes by no more than the point is moved.
/// </remarks>
public sealed class ConvexZone
{
    /// <summary>A zone narrower than this is a line.</summary>
    private const double LineMm = 1e-6;

    private readonly Edge[] _edges;

    private ConvexZone(Edge[] edges) => _edges = edges;

    /// <summary>The box round it.</summary>
    public Box Bounds => Box.Holding([.. _edges.Select(edge => new Point(edge.X, edge.Y))]);

    /// <summary>For each edge the way out and how far beyond it the origin lies.</summary>
    public IEnumerable<(Step Outward, double OriginMm)> Sides =>
        _edges.Select(edge => (new Step(edge.OutX, edge.OutY), -((edge.X * edge.OutX) + (edge.Y * edge.OutY))));

    /// <summary>The zone of the steps by which a box comes to meet a convex area.</summary>
    /// <param name="corners">The area's corners in any order; the ends of a line.</param>
    /// <param name="part">The box before the step.</param>
    public static ConvexZone Around(IEnumerable<Point> corners, Box part)
    {
        Step[] own = [At(part.Left, part.Bottom), At(part.Right, part.Bottom), At(part.Right, part.Top), At(part.Left, part.Top)];
        return Of([.. corners.SelectMany(corner => own.Select(step => corner - step))]);
    }

    /// <summary>The smallest zone that holds the points.</summary>
    /// <param name="points">At least two that are apart.</param>
    public static ConvexZone Of(IReadOnlyList<Point> points)
    {
        var first = points[0];
        var far = points.MaxBy(first.DistanceMm);
        far = far == first ? throw new ArgumentException("Points that all lie at one place are no zone.", nameof(points)) : far;
        var line = new HalfPlane(first, far - first);
        if (points.All(point => Math.Abs(line.InsideMm(point)) < LineMm))
        {
            var (from, to) = (points.MinBy(line.Along.Unit().DotFrom(first)), points.MaxBy(line.Along.Unit().DotFrom(first)));
            return new([Edge.Between(from, to), Edge.AtEnd(to, line.Along.Unit()), Edge.Between(to, from), Edge.AtEnd(from, -line.Along.Unit())]);
        }

        var hull = ConvexHull.Of(points);
        return new([.. Enumerable.Range(0, hull.Count).Select(i => Edge.Between(hull[i], hull[i + 1]))]);
    }

    /// <summary>How far a point lies outside; negative by the shortest way out when it lies inside.</summary>
    public double DistanceMm(double x, double y)
    {
        var beyond = double.NegativeInfinity;
        foreach (ref readonly var edge in _edges.AsSpan())
        {
            beyond = Math.Max(beyond, edge.BeyondMm(x, y));
        }

        return beyond <= 0 ? beyond : Math.Sqrt(NearestSquareMm2(x, y));
    }

    private double NearestSquareMm2(double x, double y)
    {
        var least = double.PositiveInfinity;
        foreach (ref readonly var edge in _edges.AsSpan())
        {
            if (edge.BeyondMm(x, y) > 0)
            {
                least = Math.Min(least, edge.SquareMm2(x, y));
            }
        }

        return least;
    }

    private static Step At(double x, double y) => new(x, y);

    /// <summary>An edge from a corner, with the way out.</summary>
    private readonly record struct Edge(double X, double Y, double OutX, double OutY, double LengthMm)
    {
        public static Edge Between(Point from, Point to)
        {
            var along = (to - from).Unit();
            return new(from.X, from.Y, along.Y, -along.X, from.DistanceMm(to));
        }

        public static Edge AtEnd(Point end, Step outward) => new(end.X, end.Y, outward.X, outward.Y, 0);

        public double BeyondMm(double x, double y) => ((x - X) * OutX) + ((y - Y) * OutY);

        public double SquareMm2(double x, double y)
        {
            // The edge runs a quarter turn to the left of the way out.
            var along = Math.Clamp(((y - Y) * OutX) - ((x - X) * OutY), 0, LengthMm);
            var (dx, dy) = (x - X + (along * OutY), y - Y - (along * OutX));
            return (dx * dx) + (dy * dy);
        }
    }
}

/// <summary>Places along a direction.</summary>
internal static class Along
{
    /// <summary>How far along a direction points lie from a start.</summary>
    public static Func<Point, double> DotFrom(this Step unit, Point start) => point => unit.Dot(point - start);
}
