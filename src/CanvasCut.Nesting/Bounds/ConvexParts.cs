using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Splits an outline into convex parts, and sets them out by no more than half the gap.</summary>
/// <remarks>
/// Pieces that keep a gap are the same as pieces set out by half of it that may touch. A round corner is replaced by a
/// polygon inside it, so that what is measured on the parts is never more than the true piece takes.
/// </remarks>
public static class ConvexParts
{
    /// <summary>Slabs and dents thinner than this are round-off.</summary>
    private const double ThinMm = 1e-9;

    /// <summary>A smaller gap is left out, which only lowers a bound.</summary>
    private const double LeastGapMm = 1e-3;

    /// <summary>Twice the area of a part that is not worth counting; leaving one out only lowers a bound.</summary>
    private const double LeastAreaMm2 = 1e-7;

    /// <summary>Corners of the polygon in place of the circle; it covers 97 % of it.</summary>
    private const int RoundCorners = 16;

    /// <summary>The parts of an outline, which together are the outline set out by half the gap, or a little less.</summary>
    public static ImmutableArray<Outline> Of(Outline shape, double gapMm)
    {
        var parts = IsConvex(shape) ? [shape] : Slabs(shape);
        return gapMm > LeastGapMm ? [.. parts.Select(part => MinkowskiSum.OfConvex(part, Round(gapMm / 2)))] : parts;
    }

    /// <summary>Whether an outline has no dent.</summary>
    public static bool IsConvex(Outline shape) =>
        ConvexHull.Of(shape.Corners).AreaMm2 - shape.AreaMm2 <= ThinMm * shape.PerimeterMm;

    /// <summary>A polygon inside the circle of a radius, with corners at its far left, right, top and bottom.</summary>
    private static Outline Round(double radiusMm) => new(Enumerable.Range(0, RoundCorners).Select(i =>
        new Point(radiusMm * Math.Cos(2 * Math.PI * i / RoundCorners), radiusMm * Math.Sin(2 * Math.PI * i / RoundCorners))));

    /// <summary>Between each two neighbouring corners, from left to right, an outline is a pile of pieces with straight sides.</summary>
    private static ImmutableArray<Outline> Slabs(Outline shape)
    {
        double[] levels = [.. shape.Corners.Select(corner => corner.X).Distinct().Order()];
        var parts = ImmutableArray.CreateBuilder<Outline>();
        foreach (var (leftMm, rightMm) in levels.Zip(levels.Skip(1)).Where(slab => slab.Second - slab.First > ThinMm))
        {
            var sides = Crossing(shape, leftMm, rightMm);
            for (var i = 0; i + 1 < sides.Count; i += 2)
            {
                var (low, high) = (sides[i], sides[i + 1]);
                if ((rightMm - leftMm) * (high.From.Y - low.From.Y + high.To.Y - low.To.Y) > LeastAreaMm2)
                {
                    parts.Add(ConvexHull.Of([low.From, low.To, high.To, high.From]));
                }
            }
        }

        return parts.ToImmutable();
    }

    /// <summary>The parts of the edges that cross a slab, from left to right each, the lowest first.</summary>
    private static List<Stretch> Crossing(Outline shape, double leftMm, double rightMm)
    {
        var sides = new List<Stretch>();
        for (var i = 0; i < shape.Count; i++)
        {
            var edge = new Stretch(shape[i], shape[i + 1]).FromTheLeft;
            if (edge.From.X <= leftMm && edge.To.X >= rightMm && edge.To.X > edge.From.X)
            {
                sides.Add(new(PointAt(edge, leftMm), PointAt(edge, rightMm)));
            }
        }

        sides.Sort((one, other) => (one.From.Y + one.To.Y).CompareTo(other.From.Y + other.To.Y));
        return sides;
    }

    private static Point PointAt(Stretch edge, double xMm) => edge.At((xMm - edge.From.X) / (edge.To.X - edge.From.X)) with { X = xMm };
}
