using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A line through points in which the arcs held as points are known as arcs again.</summary>
/// <remarks>
/// An arc is found where at least three edges in a row have their ends on one circle to 0.000001 mm, turn the same way,
/// and leave the circle by no more than <see cref="RoundedBox.SagittaMm"/>: so the arcs lie that close to the straight
/// edges, and corners that merely lie on a circle, as those of any rectangle, stay corners. An arc of more than a half
/// circle is found as several. Points repeated in a row are dropped.
/// </remarks>
public sealed class BulgedLine
{
    private const double OnCircleMm = 1e-6;
    private const int FewestEdges = 3;

    /// <summary>Three points on a larger circle are taken as straight.</summary>
    private const double LargestRadiusMm = 1e6;

    private BulgedLine(ImmutableArray<Point> points, bool isClosed)
    {
        (Points, IsClosed) = (points, isClosed);
        Runs = [.. Found()];
    }

    /// <summary>The points, none repeated in a row.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Whether the line returns to its first point.</summary>
    public bool IsClosed { get; }

    /// <summary>Arcs and straight edges in order; together they are all edges of the line.</summary>
    public ImmutableArray<ArcRun> Runs { get; }

    private int EdgeCount => IsClosed ? Points.Length : Points.Length - 1;

    /// <summary>Finds the arcs of a line.</summary>
    /// <param name="points">Its points; the first is not repeated at the end of a closed line.</param>
    /// <param name="isClosed">Whether it returns to its first point.</param>
    public static BulgedLine Of(ImmutableArray<Point> points, bool isClosed)
    {
        ImmutableArray<Point> distinct = [.. points.Where((point, i) => i == 0 || point.DistanceMm(points[i - 1]) > OnCircleMm)];
        return new(isClosed && distinct.Length > 1 && distinct[^1].DistanceMm(distinct[0]) <= OnCircleMm ? distinct[..^1] : distinct, isClosed);
    }

    /// <summary>The bulge of an arc: the tangent of a quarter of its angle.</summary>
    /// <param name="angle">In radians; above zero to the left.</param>
    /// <remarks>Definition: DXF reference, group code 42 of VERTEX.</remarks>
    public static double BulgeOf(double angle) => Math.Tan(angle / 4);

    private IEnumerable<ArcRun> Found()
    {
        for (var start = 0; start < EdgeCount;)
        {
            var run = LongestFrom(start);
            yield return run;
            start += run.Edges;
        }
    }

    private ArcRun LongestFrom(int start)
    {
        var longest = new ArcRun(start, 1, 0);
        for (var edges = FewestEdges; start + edges <= EdgeCount && ArcOf(start, edges) is { } arc; edges++)
        {
            longest = arc;
        }

        return longest;
    }

    private Point At(int index) => Points[index % Points.Length];

    private ArcRun? ArcOf(int start, int edges)
    {
        if (CenterOf(At(start), At(start + 1), At(start + 2)) is not { } center)
        {
            return null;
        }

        var radius = center.DistanceMm(At(start));
        var angles = Enumerable.Range(start, edges).Select(i => Angle(At(i) - center, At(i + 1) - center)).ToList();
        var sweep = angles.Sum();
        var largest = angles.Max(Math.Abs);
        var isArc = Enumerable.Range(start, edges + 1).All(i => Math.Abs(center.DistanceMm(At(i)) - radius) <= OnCircleMm)
            && angles.All(angle => Math.Sign(angle) == Math.Sign(sweep))
            && Math.Abs(sweep) <= Math.PI + 1e-9
            && radius * (1 - Math.Cos(largest / 2)) <= RoundedBox.SagittaMm + OnCircleMm;
        return isArc ? new(start, edges, BulgeOf(sweep)) : null;
    }

    private static double Angle(Step from, Step to) => Math.Atan2(from.Cross(to), from.Dot(to));

    /// <summary>The middle of the circle through three points; null when they are straight, or as good as.</summary>
    private static Point? CenterOf(Point first, Point second, Point third)
    {
        var (one, other) = (second - first, third - first);
        var cross = 2 * one.Cross(other);
        var (oneSquare, otherSquare) = (one.Dot(one), other.Dot(other));
        var toCenter = new Step(((oneSquare * other.Y) - (otherSquare * one.Y)) / cross, ((otherSquare * one.X) - (oneSquare * other.X)) / cross);
        return toCenter.LengthMm < LargestRadiusMm ? first + toCenter : null;
    }
}
