using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Docs;

/// <summary>Shows a plane on a documentation figure at a scale.</summary>
/// <param name="Scale">Millimetres on paper for one in the plane.</param>
/// <param name="Shift">Where the plane's origin lies on paper.</param>
internal sealed record DocView(double Scale, Step Shift)
{
    /// <summary>A view that puts a point of the plane at a point of the paper.</summary>
    public static DocView Putting(Point plane, Point paper, double scale) =>
        new(scale, paper - new Point(plane.X * scale, plane.Y * scale));

    public Point Of(Point point) => new Point(point.X * Scale, point.Y * Scale) + Shift;

    public Point Of(double x, double y) => Of(new Point(x, y));

    public Box Of(Box box) => Box.Holding([Of(box.LowerLeft), Of(box.Right, box.Top)]);

    public Stroke Line(LineRole role, Outline outline) => Stroke.Closed(role, outline.Mapped(Of));

    public Stroke Line(LineRole role, Box box) => Line(role, Outline.Of(box));

    public Stroke Line(LineRole role, Point from, Point to) => Stroke.Open(role, Of(from), Of(to));

    public Tint Shade(Outline outline, double darkness) => new(outline.Mapped(Of), darkness);

    /// <summary>A piece's own line in the role that the program's sheets give it.</summary>
    public Stroke Line(PieceLine line) => new(RoleOf(line.Kind), [.. line.Points.Select(Of)], line.IsClosed);

    /// <summary>Figures on paper, cut off at a window of the plane.</summary>
    public Inset Clipped(Box window, params ImmutableArray<Figure> figures) =>
        new(figures, Of(window), Of(window.LowerLeft), 1);

    private static LineRole RoleOf(PieceLineKind kind) => kind switch
    {
        PieceLineKind.Stitch => LineRole.Stitch,
        PieceLineKind.Fold => LineRole.Fold,
        _ => LineRole.Mark,
    };
}
