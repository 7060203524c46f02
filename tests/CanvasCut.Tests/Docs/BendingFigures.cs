using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Docs;

/// <summary>The panel as a strip over the tubes, and the carrier's way over a ridge.</summary>
internal static class BendingFigures
{
    private const double LengthMm = 1000;

    public static Sheet Strip()
    {
        var strip = ElasticStrip.Over(LengthMm, [new(300, 70), new(500, 150), new(700, 60)], 0);
        var view = DocView.Putting(new(0, 0), new(20, 30), 0.13);
        Point On(double at) => view.Of(at, strip.HeightAt(at));
        var contact = strip.Contacts[0];
        var (left, right, top) = (view.Of(0, 0), view.Of(LengthMm, 0), On(contact.AtMm));
        var low = view.Of(700, 60);
        return new DocPage("bent-strip", "The panel as a strip over the tubes", new(170, 88))
            .Add(Tube(view.Of(contact.AtMm, contact.HeightMm)).Concat(Tube(low)).Concat(Tube(view.Of(300, 70))))
            .Add(new Stroke(LineRole.Cut, [.. Enumerable.Range(0, 101).Select(i => On(i * 10))], IsClosed: false), Stroke.Open(LineRole.Fold, left, right))
            .Add(Stroke.Open(LineRole.Note, new(top.X, left.Y), new(top.X, top.Y - 5)))
            .Text("d", new(top.X + 1.5, left.Y + 5))
            .Across((left.X, top.X), (18, left.Y), "a")
            .Across((top.X, right.X), (18, left.Y), "b")
            .Across((left.X, right.X), (8, left.Y), "L, from held edge to held edge")
            .Callout("the zippers hold this edge down", left, new(8, 56))
            .Callout("R, sharpest where it lies on a tube", top, new(100, 74))
            .Callout("lifted off: this tube carries nothing", low + new Step(0, 0.5), new(112, 60))
            .ToSheet();
    }

    public static Sheet Ridge()
    {
        const double Slope = 0.35;
        const double High = 14;
        var (top, half) = (new Point(80, 46), 62);
        var (left, right) = (new Step(-half * Math.Cos(Slope), -half * Math.Sin(Slope)), new Step(half * Math.Cos(Slope), -half * Math.Sin(Slope)));
        var (outLeft, outRight) = (new Step(-Math.Sin(Slope), Math.Cos(Slope)) * High, new Step(Math.Sin(Slope), Math.Cos(Slope)) * High);
        var arc = Enumerable.Range(0, 21).Select(i => Slope * ((i / 10.0) - 1)).Select(angle => top + (new Step(Math.Sin(angle), Math.Cos(angle)) * High));
        return new DocPage("ridge-way", "The way of the carrier over a ridge", new(170, 76))
            .Add(Tube(top))
            .Add(new Stroke(LineRole.Mark, [top + left, top, top + right], IsClosed: false))
            .Add(new Stroke(LineRole.Cut, [top + left + outLeft, .. arc, top + right + outRight], IsClosed: false))
            .Add(Stroke.Open(LineRole.Note, top, top + outLeft), Stroke.Open(LineRole.Note, top, top + outRight))
            .Text("h", top + (outRight * 0.6) + new Step(1.5, -1))
            .Text("θ", top + new Step(0, High * 0.55), TextAnchor.Middle)
            .Callout("h·θ longer here", top + new Step(0, High), new(100, 68))
            .Callout("the middle of panel and carrier", top + (left * 0.6) + outLeft, new(6, 62))
            .Callout("the top's cloth", top + (right * 0.7), new(100, 14))
            .ToSheet();
    }

    private static IEnumerable<Figure> Tube(Point top)
    {
        const double RadiusMm = 2;
        var circle = RoundedBox.Circle(top - new Step(0, RadiusMm), RadiusMm);
        return [new Tint(circle, 0.3), Stroke.Closed(LineRole.Mark, circle)];
    }
}
