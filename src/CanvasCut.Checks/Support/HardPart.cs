using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Something hard, or thicker than plain cloth, near the cells.</summary>
/// <param name="Code">The check it belongs to.</param>
/// <param name="Key">Which part it is of.</param>
/// <param name="Subject">What it is, in words.</param>
/// <param name="Shapes">Lines and boxes of it, in the plan of the top.</param>
internal sealed record HardPart(string Code, PartKey Key, string Subject, ImmutableArray<(Point From, Point To)> Shapes)
{
    /// <summary>The four sides of a box.</summary>
    public static ImmutableArray<(Point From, Point To)> LinesOf(Box box)
    {
        var corners = Outline.Of(box).Corners;
        return [.. corners.Select((corner, i) => (corner, corners[(i + 1) % corners.Length]))];
    }

    /// <summary>The shortest distance from the cells; below zero by the way out when it reaches into them.</summary>
    public Length ToCells(Box cells) => Length.FromMillimeters(Shapes.Min(line => ToBoxMm(line.From, line.To, cells)));

    private static double ToBoxMm(Point from, Point to, Box box)
    {
        var bounds = Box.Holding([from, to]);
        var between = bounds.DistanceMm(box);

        // A level or upright line is its own box; a slanting one may pass a corner that its box reaches over.
        return bounds.WidthMm == 0 || bounds.HeightMm == 0 || (between < 0 && Crosses(from, to, box))
            ? between
            : Corners(box).Select(corner => ToLineMm(corner, from, to)).Concat([ToBoxMm(from, from, box), ToBoxMm(to, to, box)]).Min();
    }

    private static bool Crosses(Point from, Point to, Box box)
    {
        var sides = Corners(box).Select(corner => Math.Sign((to - from).Cross(corner - from))).ToList();
        return sides.Min() < 0 && sides.Max() > 0;
    }

    private static ImmutableArray<Point> Corners(Box box) => Outline.Of(box).Corners;

    private static double ToLineMm(Point point, Point from, Point to)
    {
        var step = to - from;
        var part = Math.Clamp((point - from).Dot(step) / step.Dot(step), 0, 1);
        return point.DistanceMm(from + (step * part));
    }
}
