using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>Draws a plane at a scale onto a part of a sheet; lines and letters keep their sizes on paper.</summary>
/// <param name="Scale">Millimetres on paper for one in the plane.</param>
/// <param name="Shift">Where the plane's origin lies on paper.</param>
internal sealed record View(double Scale, Step Shift)
{
    private static readonly double[] Denominators = [1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100];

    /// <summary>As in "1:10".</summary>
    public string ScaleText => FormattableString.Invariant($"1:{1 / Scale:0.#}");

    /// <summary>The largest usual scale at which a box fits a frame, the box in the frame's middle.</summary>
    public static View Fitting(Box content, Box frame)
    {
        var needed = Math.Max(content.WidthMm / frame.WidthMm, content.HeightMm / frame.HeightMm);
        var scale = 1 / Denominators.FirstOrDefault(denominator => denominator >= needed, Math.Ceiling(needed));
        return new(scale, frame.Center - new Point(content.Center.X * scale, content.Center.Y * scale));
    }

    /// <summary>Where a point of the plane lies on paper.</summary>
    public Point Of(Point point) => new Point(point.X * Scale, point.Y * Scale) + Shift;

    /// <summary>Where a box of the plane lies on paper.</summary>
    public Box Of(Box box) => Box.Holding([Of(box.LowerLeft), Of(new Point(box.Right, box.Top))]);

    /// <summary>Where an outline of the plane lies on paper.</summary>
    public Outline Of(Outline outline) => outline.Mapped(Of);

    /// <summary>A closed line.</summary>
    public Stroke Line(LineRole role, Outline outline) => Stroke.Closed(role, Of(outline));

    /// <summary>A closed line round a box.</summary>
    public Stroke Line(LineRole role, Box box) => Line(role, Outline.Of(box));

    /// <summary>A straight line.</summary>
    public Stroke Line(LineRole role, Point from, Point to) => Stroke.Open(role, Of(from), Of(to));
}
