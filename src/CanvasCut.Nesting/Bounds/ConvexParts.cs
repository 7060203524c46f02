using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>The convex parts of an outline, set out by no more than half the gap.</summary>
/// <remarks>
/// Pieces that keep a gap are the same as pieces set out by half of it that may touch. A round corner is replaced by a
/// polygon inside it, so that what is measured on the parts is never more than the true piece takes.
/// </remarks>
public static class ConvexParts
{
    /// <summary>Dents thinner than this are round-off.</summary>
    private const double ThinMm = 1e-9;

    /// <summary>A smaller gap is left out, which only lowers a bound.</summary>
    private const double LeastGapMm = 1e-3;

    /// <summary>Corners of the polygon in place of the circle; it covers 97 % of it.</summary>
    private const int RoundCorners = 16;

    /// <summary>The parts of an outline, which together are the outline set out by half the gap, or a little less.</summary>
    public static ImmutableArray<Outline> Of(Outline shape, double gapMm)
    {
        var parts = IsConvex(shape) ? [shape] : ConvexDivision.Of(shape);
        return gapMm > LeastGapMm ? [.. parts.Select(part => MinkowskiSum.OfConvex(part, Round(gapMm / 2)))] : parts;
    }

    /// <summary>Whether an outline has no dent.</summary>
    public static bool IsConvex(Outline shape) =>
        ConvexHull.Of(shape.Corners).AreaMm2 - shape.AreaMm2 <= ThinMm * shape.PerimeterMm;

    /// <summary>A polygon inside the circle of a radius, with corners at its far left, right, top and bottom.</summary>
    private static Outline Round(double radiusMm) => new(Enumerable.Range(0, RoundCorners).Select(i =>
        new Point(radiusMm * Math.Cos(2 * Math.PI * i / RoundCorners), radiusMm * Math.Sin(2 * Math.PI * i / RoundCorners))));
}
