using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A box with rounded corners, its arcs held as points.</summary>
public static class RoundedBox
{
    /// <summary>How far the straight pieces may lie from the true arc; a tenth of the thinnest line drawn.</summary>
    public const double SagittaMm = 0.01;

    /// <summary>Two points nearer than this are one, told apart only by round-off.</summary>
    private const double SamePlaceMm = 1e-6;

    /// <summary>The outline of a box with corners of one radius.</summary>
    /// <param name="box">The box.</param>
    /// <param name="radiusMm">Zero or more, at most half the shorter side; below the sagitta it counts as zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is outside its range.</exception>
    public static Outline Of(Box box, double radiusMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(radiusMm);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(radiusMm, Math.Min(box.WidthMm, box.HeightMm) / 2);
        return radiusMm > SagittaMm ? Around(box.Grown(-radiusMm), radiusMm) : Outline.Of(box);
    }

    /// <summary>A circle as points, with the same closeness as the corners.</summary>
    public static Outline Circle(Point center, double radiusMm) => Around(Box.Around(center, 0, 0), radiusMm);

    /// <summary>Four quarter arcs; where two of them meet the point they share is kept once.</summary>
    private static Outline Around(Box inner, double radiusMm)
    {
        ImmutableArray<Point> corners =
        [
            .. QuarterArc(new(inner.Left, inner.Bottom), radiusMm, 2),
            .. QuarterArc(new(inner.Right, inner.Bottom), radiusMm, 3),
            .. QuarterArc(new(inner.Right, inner.Top), radiusMm, 0),
            .. QuarterArc(new(inner.Left, inner.Top), radiusMm, 1),
        ];
        return new(corners.Where((corner, i) => corner.DistanceMm(corners[(i + 1) % corners.Length]) > SamePlaceMm));
    }

    private static ImmutableArray<Point> QuarterArc(Point center, double radiusMm, int quarter)
    {
        var largestStep = 2 * Math.Acos(1 - Math.Min(1, SagittaMm / radiusMm));
        var steps = Math.Max(2, (int)Math.Ceiling(Math.PI / 2 / largestStep));
        return
        [
            .. Enumerable.Range(0, steps + 1)
                .Select(i => i * Math.PI / 2 / steps)
                .Select(angle => center + OnQuarter(radiusMm, angle, quarter)),
        ];
    }

    private static Step OnQuarter(double radiusMm, double angle, int quarter)
    {
        var point = Turn.Quarters(new(radiusMm * Math.Cos(angle), radiusMm * Math.Sin(angle)), quarter);
        return new(point.X, point.Y);
    }
}
