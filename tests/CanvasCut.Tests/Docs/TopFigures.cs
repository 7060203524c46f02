using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Docs;

/// <summary>The arc across, the marks on the top, and how a template is spread over pages.</summary>
internal static class TopFigures
{
    public static Sheet Arc()
    {
        var arc = CircularArc.FromChordAndRise(1750, 260);
        var (radius, half) = (arc.RadiusMm, arc.ChordMm / 2);
        var sweep = Math.Asin(half / radius);
        var view = DocView.Putting(new(0, 0), new(85, 36), 0.085);
        Point On(double angle) => view.Of(radius * Math.Sin(angle), (radius * Math.Cos(angle)) - radius + arc.RiseMm);
        var points = Enumerable.Range(0, 61).Select(i => On(sweep * ((i / 30.0) - 1)));
        var (left, right, top, centre) = (On(-sweep), On(sweep), On(0), view.Of(0, arc.RiseMm - radius));
        return new DocPage("arc-across", "The arc of a bow", new(170, 80))
            .Add(new Stroke(LineRole.Cut, [.. points], IsClosed: false), Stroke.Open(LineRole.Fold, left, right))
            .Add(Stroke.Open(LineRole.Note, right, right.Toward(centre, 0.17)), Stroke.Open(LineRole.Note, left, left.Toward(centre, 0.17)))
            .Across((left.X, right.X), (7, left.Y), "c, chord (a tight string)")
            .Add(Stroke.Open(LineRole.Note, view.Of(0, 0), top))
            .Text("s, crown", new(87, 44))
            .Callout("g, girth (along the cloth)", On(-0.25), new(16, 70))
            .Text("R, to the circle's centre", right.Toward(centre, 0.17) - new Step(2, 0), TextAnchor.Right)
            .Callout("tube", On(0.4), new(140, 70))
            .ToSheet();
    }

    public static Sheet Marks()
    {
        var job = SampleJobs.Plain;
        var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)));
        var (whole, mark) = (Plan.Of(job.Top), new Point(mounted.CarrierBox.Right, mounted.CarrierBox.Top));
        var view = DocView.Putting(whole.LowerLeft, new(8, 8), 0.062);
        var (paper, at, middle) = (view.Of(whole), view.Of(mark), view.Of(0, 0).X);
        var corners = Outline.Of(mounted.CarrierBox).Corners;
        return new DocPage("marks", "Where a mark lies: station and offset", new(165, 118))
            .Add(view.Line(LineRole.Cut, whole), Stroke.Open(LineRole.Fold, new(middle, paper.Bottom), new(middle, paper.Top)))
            .Add(job.Top.Bows.Select(bow => view.Line(LineRole.Note, Plan.BandOf(job.Top, bow))))
            .Add(mounted.Parts.Select(part => view.Line(LineRole.Mark, part)))
            .Add(view.Line(LineRole.Stitch, corners[0], corners[2]), view.Line(LineRole.Stitch, corners[1], corners[3]))
            .Add(TopMarks.Of(mounted).SelectMany(each => Cross(view.Of(Plan.Of(each.Place)))))
            .Across((middle, at.X), (85, at.Y), "offset")
            .Upright((at.Y, paper.Top), (123, at.X), "station, from the")
            .Text("forward edge", new(125, ((at.Y + paper.Top) / 2) - 6))
            .Callout("the mark", at, new(125, at.Y - 10))
            .Callout("two equal diagonals", view.Of(corners[1].Toward(corners[3], 0.25)), new(125, 40))
            .Callout("centreline", new(middle, 26), new(125, 26))
            .Text("FORWARD", new(middle, paper.Top + 3), TextAnchor.Middle)
            .Text("port", new(paper.Left + 3, paper.Bottom + 10))
            .Text("starboard", new(paper.Right - 3, paper.Bottom + 10), TextAnchor.Right)
            .ToSheet();
    }

    public static Sheet Tiling()
    {
        const double Scale = 0.165;
        var layout = new PageLayout(PaperSize.A4, 10, 10, 12);
        var plan = TilePlan.For(700, 500, layout);
        var window = plan.Window;
        var (stepX, stepY) = (window.WidthMm - layout.OverlapMm, window.HeightMm - layout.OverlapMm);
        var size = new Step(plan.Covered.WidthMm * Scale, plan.Covered.HeightMm * Scale);
        var origin = new Point(14, 20);
        var page = new DocPage("tiling", "A template spread over pages", new(174, 40 + size.Y));
        foreach (var (row, column) in Enumerable.Range(0, plan.Rows).SelectMany(row => Enumerable.Range(0, plan.Columns).Select(column => (row, column))))
        {
            var corner = origin + new Step(column * stepX * Scale, size.Y - (((row * stepY) + window.HeightMm) * Scale));
            var box = new Box(corner.X, corner.Y, corner.X + (window.WidthMm * Scale), corner.Y + (window.HeightMm * Scale));
            page.Add(Stroke.Closed(LineRole.Mark, Outline.Of(box)))
                .Text(FormattableString.Invariant($"{(char)('A' + row)}{column + 1}"), box.Center + new Step(3, -8), TextAnchor.Middle);
        }

        var piece = Box.Around(origin + (size * 0.5), 700 * Scale, 500 * Scale);
        var joins = Enumerable.Range(1, plan.Columns - 1).Select(i => origin.X + (((i * stepX) + (layout.OverlapMm / 2)) * Scale)).ToList();
        var joinY = origin.Y + size.Y - ((stepY + (layout.OverlapMm / 2)) * Scale);
        page.Add(Stroke.Closed(LineRole.Cut, Outline.Of(piece)))
            .Add(joins.SelectMany(x => new[] { 0.2, 0.4, 0.7, 0.9 }.Select(part => Diamond(new(x, origin.Y + (size.Y * part))))))
            .Add(Enumerable.Range(0, plan.Columns * 2).Select(i => Diamond(new(origin.X + (((i / 2 * stepX) + (window.WidthMm * ((i % 2 * 0.5) + 0.25))) * Scale), joinY))));
        return page
            .Across((origin.X, origin.X + (window.WidthMm * Scale)), (12, origin.Y), "u, the page's window")
            .Callout("o, overlap", new(joins[^1], origin.Y + size.Y - 2), new(132, origin.Y + size.Y + 10))
            .Callout("join marks", new(joins[^1], origin.Y + (size.Y * 0.9)), new(150, joinY + 30))
            .Callout("the piece", new(piece.Right, piece.Bottom + 8), new(150, piece.Bottom + 4))
            .ToSheet();
    }

    private static Stroke Diamond(Point at) =>
        Stroke.Closed(LineRole.Note, new([at + new Step(1.5, 0), at + new Step(0, 1.5), at - new Step(1.5, 0), at - new Step(0, 1.5)]));

    private static IEnumerable<Figure> Cross(Point at) =>
        [Stroke.Open(LineRole.Mark, at - new Step(1, 0), at + new Step(1, 0)), Stroke.Open(LineRole.Mark, at - new Step(0, 1), at + new Step(0, 1))];
}
