using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Docs;

/// <summary>What lies under the cells: the hem beside the panel, and the cloth that hangs between two bows.</summary>
internal static class SupportFigures
{
    /// <summary>The usual carrier's edge cut through, heights much enlarged: border 1 in, hem 1 + 1/2 in, cells 15 mm inside the panel.</summary>
    public static Sheet Hem()
    {
        const double Scale = 2;
        const double Layer = 3;
        const double Low = 30;
        double X(double fromEdgeMm) => 16 + (fromEdgeMm * Scale);
        var (edge, inner, row, panel, cells, end) = (X(0), X(25.4), X(22.4), X(25.4), X(40.4), X(66));
        Stroke Ply(int layer, double from, double to) => Stroke.Open(LineRole.Mark, new(from, Low + (layer * Layer)), new(to, Low + (layer * Layer)));
        var body = new Box(panel, Low + Layer, end, Low + (2 * Layer));
        return new DocPage("hem-and-cells", "The hem beside the panel", new(170, 66))
            .Add(Ply(0, edge, end), Ply(-2, edge, inner), Ply(-1, X(12.7), inner))
            .Add(Stroke.Open(LineRole.Mark, new(edge, Low), new(edge, Low - (2 * Layer))), Stroke.Open(LineRole.Mark, new(inner, Low - Layer), new(inner, Low - (2 * Layer))))
            .Add(new Tint(Outline.Of(body with { Left = cells }), 0.3), Stroke.Closed(LineRole.Cut, Outline.Of(body)))
            .Add(Stroke.Open(LineRole.Stitch, new(row, Low + 2), new(row, Low - (2 * Layer) - 2)))
            .Across((edge, panel), (46, Low), "b")
            .Across((panel, cells), (46, Low + (2 * Layer)), "dead border")
            .Across((edge, inner), (14, Low - (2 * Layer)), "h")
            .Across((row, cells), (6, Low), "row to cells")
            .Callout("row of stitches", new(row, Low + 1), new(20, 56))
            .Callout("panel, its cells grey", new(cells + 20, Low + (1.5 * Layer)), new(118, 56))
            .Callout("the carrier's cloth", new(X(60), Low), new(128, 18))
            .ToSheet();
    }

    /// <summary>The cloth between two bows with nothing under it, its sag much enlarged.</summary>
    public static Sheet Span()
    {
        var arc = CircularArc.FromChordAndRise(110, 14);
        var (left, right, middle) = (new Point(25, 48), new Point(135, 48), new Point(80, 48));
        var center = middle + new Step(0, arc.RadiusMm - 14);
        var half = Math.Asin(55 / arc.RadiusMm);
        var cloth = Enumerable.Range(0, 41).Select(i => half * ((i / 20.0) - 1)).Select(angle => center + (new Step(Math.Sin(angle), -Math.Cos(angle)) * arc.RadiusMm));
        return new DocPage("hanging-span", "The cloth between two bows", new(170, 66))
            .Add(Tube(left).Concat(Tube(right)))
            .Add(new Stroke(LineRole.Cut, [.. cloth], IsClosed: false), Stroke.Open(LineRole.Fold, left, right))
            .Add(Stroke.Open(LineRole.Note, middle, middle - new Step(0, 14)))
            .Text("s", middle + new Step(2, -8))
            .Across((left.X, right.X), (20, 46), "L, straight from bow to bow")
            .Callout("R = L²/8s + s/2", center + (new Step(Math.Sin(half / 2), -Math.Cos(half / 2)) * arc.RadiusMm), new(120, 56))
            .ToSheet();
    }

    private static IEnumerable<Figure> Tube(Point top)
    {
        const double RadiusMm = 2.4;
        var circle = RoundedBox.Circle(top - new Step(0, RadiusMm), RadiusMm);
        return [new Tint(circle, 0.3), Stroke.Closed(LineRole.Mark, circle)];
    }
}
