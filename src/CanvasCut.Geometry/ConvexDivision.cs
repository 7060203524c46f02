using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>Cuts an outline into convex parts.</summary>
/// <remarks>
/// Ears are cut off until nothing is left, then cuts that are not needed are taken back: S. Hertel, K. Mehlhorn,
/// "Fast triangulation of simple polygons", Foundations of Computation Theory (1983). At most four times as many parts
/// as there can be least.
/// </remarks>
public static class ConvexDivision
{
    /// <summary>How much a corner may turn to the wrong side by round-off, as the sine of its turn.</summary>
    private const double StraightSine = 1e-12;

    /// <summary>The parts; together they are the outline.</summary>
    public static ImmutableArray<Outline> Of(Outline outline)
    {
        var parts = Triangles(outline);
        for (var one = 0; one < parts.Count; one++)
        {
            for (var other = one + 1; other < parts.Count; other++)
            {
                if (Joined(parts[one], parts[other]) is { } joined)
                {
                    parts[one] = joined;
                    parts.RemoveAt(other);
                    other = one;
                }
            }
        }

        return [.. parts.Select(ConvexHull.Of)];
    }

    private static List<List<Point>> Triangles(Outline outline)
    {
        var (left, triangles) = (outline.Corners.ToList(), new List<List<Point>>());
        while (left.Count > 3)
        {
            var ear = Ear(left);
            var (before, corner, after) = Around(left, ear);
            if (Sine(before, corner, after) > StraightSine)
            {
                triangles.Add([before, corner, after]);
            }

            left.RemoveAt(ear);
        }

        if (Sine(left[0], left[1], left[2]) > StraightSine)
        {
            triangles.Add(left);
        }

        return triangles;
    }

    /// <summary>The ear whose sharpest corner is bluntest, so that parts do not become slivers; a straight corner before all.</summary>
    private static int Ear(List<Point> left)
    {
        var (best, bestShape) = (-1, double.NegativeInfinity);
        for (var i = 0; i < left.Count; i++)
        {
            var (before, corner, after) = Around(left, i);
            if (Math.Abs(Sine(before, corner, after)) <= StraightSine)
            {
                return i;
            }

            var shape = Sharpest(before, corner, after);
            if (shape > bestShape && IsEar(left, i))
            {
                (best, bestShape) = (i, shape);
            }
        }

        return best >= 0 ? best : throw new InvalidOperationException("An outline that does not cross itself has an ear.");
    }

    private static double Sharpest(Point a, Point b, Point c) => Math.Min(Sine(a, b, c), Math.Min(Sine(b, c, a), Sine(c, a, b)));

    private static bool IsEar(List<Point> left, int index)
    {
        var (before, corner, after) = Around(left, index);
        return Sine(before, corner, after) > 0 && !left.Any(point =>
            point != before && point != corner && point != after &&
            Sine(before, corner, point) >= 0 && Sine(corner, after, point) >= 0 && Sine(after, before, point) >= 0);
    }

    private static (Point Before, Point Corner, Point After) Around(List<Point> points, int index) =>
        (points[(index + points.Count - 1) % points.Count], points[index], points[(index + 1) % points.Count]);

    /// <summary>Two parts as one, where they share an edge and the whole is convex.</summary>
    private static List<Point>? Joined(List<Point> one, List<Point> other)
    {
        for (var i = 0; i < one.Count; i++)
        {
            var (from, to) = (one[i], one[(i + 1) % one.Count]);
            var j = other.FindIndex(point => point == to);
            if (j >= 0 && other[(j + 1) % other.Count] == from)
            {
                List<Point> whole =
                [
                    .. Enumerable.Range(1, one.Count).Select(k => one[(i + k) % one.Count]),
                    .. Enumerable.Range(2, other.Count - 2).Select(k => other[(j + k) % other.Count]),
                ];
                return IsConvex(whole) ? whole : null;
            }
        }

        return null;
    }

    private static bool IsConvex(List<Point> points) =>
        Enumerable.Range(0, points.Count).All(i => Around(points, i) is var (before, corner, after) && Sine(before, corner, after) >= -StraightSine);

    private static double Sine(Point before, Point corner, Point after)
    {
        var (into, away) = (corner - before, after - corner);
        return into.Cross(away) / Math.Max(into.LengthMm * away.LengthMm, double.Epsilon);
    }
}
