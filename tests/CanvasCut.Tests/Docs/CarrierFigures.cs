using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Docs;

/// <summary>The carrier, its mitre, and the seam between two widths.</summary>
internal static class CarrierFigures
{
    /// <summary>A small panel with wide borders, so that allowances can be seen beside it.</summary>
    private static readonly CarrierJob Small = SampleJobs.Plain with
    {
        Panel = SampleJobs.Panel(260, 130),
        Carrier = SampleJobs.Carrier with { Border = Sides.All(SampleJobs.Mm(30)) },
    };

    public static Sheet Carrier()
    {
        var (mounted, piece) = PieceOf(Small);
        var (finished, cut, panel) = (piece.Shape.Finished.Bounds, piece.Shape.Cut.Bounds, mounted.PanelBox);
        var view = DocView.Putting(cut.LowerLeft, new(6, 32), 0.38);
        var (inPaper, outPaper, cell) = (view.Of(finished), view.Of(cut), view.Of(mounted.CellBox));
        var page = new DocPage("carrier", "The carrier: from panel to cut outline", new(172, 150))
            .Add(view.Shade(Outline.Of(panel), 0.12), view.Line(LineRole.Cut, piece.Shape.Cut))
            .Add(piece.Lines.Where(IsHemOrPanel).Select(view.Line));
        var onPaper = view.Of(panel);
        return page
            .Across((onPaper.Left, onPaper.Right), (14, onPaper.Bottom), "p, panel")
            .Across((inPaper.Left, onPaper.Left), (14, inPaper.Bottom), "b")
            .Across((onPaper.Right, inPaper.Right), (14, inPaper.Bottom), "b")
            .Across((inPaper.Left, inPaper.Right), (7, inPaper.Bottom), "f = p + b + b, finished")
            .Across((outPaper.Left, outPaper.Right), (23, outPaper.Bottom + 17), "cut = f + (t + h) + (t + h)")
            .Upright((inPaper.Top, inPaper.Top + (25.4 * view.Scale)), (outPaper.Right + 3, outPaper.Right - 16), "h")
            .Upright((inPaper.Top + (25.4 * view.Scale), outPaper.Top), (outPaper.Right + 3, outPaper.Right - 16), "t")
            .Text("cells", cell.Center, TextAnchor.Middle)
            .Callout("row, 3 mm from the hem's inner edge", new(80, inPaper.Top - (22.4 * view.Scale)), new(70, 143))
            .Callout("finished edge (fold)", new(58, inPaper.Top), new(10, 143))
            .ToSheet();
    }

    public static Sheet Mitre()
    {
        var (_, piece) = PieceOf(Small);
        var corner = new Point(piece.Shape.Finished.Bounds.Right, piece.Shape.Finished.Bounds.Top);
        var window = new Box(corner.X - 32, corner.Y - 32, corner.X + 42, corner.Y + 42);
        var view = DocView.Putting(window.LowerLeft, new(6, 6), 1.3);
        var square = new Point(corner.X + 38.1, corner.Y + 38.1);
        return new DocPage("mitre", "The mitred corner", new(174, 110))
            .Add(view.Clipped(
                window,
                [
                    view.Line(LineRole.Note, square, square - new Step(100, 0)),
                    view.Line(LineRole.Note, square, square - new Step(0, 100)),
                    view.Line(LineRole.Cut, piece.Shape.Cut),
                    .. piece.Lines.Where(IsHemOrPanel).Select(view.Line),
                ]))
            .Callout("surplus, cut away", view.Of(corner.X + 27, corner.Y + 27), new(112, 96))
            .Callout("cut line", view.Of(corner.X + 2, corner.Y + 6.5), new(112, 86))
            .Callout("k = 6 mm, kept outside the fold", view.Of(corner.X + 13, corner.Y - 8.8), new(112, 76))
            .Callout("fold of the mitre", view.Of(corner.X + 16, corner.Y - 16), new(112, 66))
            .Callout("C, finished corner", view.Of(corner), new(112, 56))
            .Callout("turn-under fold", view.Of(corner.X + 25.4, corner.Y - 27), new(112, 30))
            .Callout("finished edge (fold)", view.Of(corner.X, corner.Y - 26), new(112, 20))
            .Callout("hem row", view.Of(corner.X - 22.4, corner.Y - 30), new(112, 10))
            .ToSheet();
    }

    public static Sheet FelledSeam()
    {
        var narrow = Small.On(SampleJobs.Cloth with { Roll = SampleJobs.Cloth.Roll with { Width = SampleJobs.Mm(260) } });
        var widths = PatternSet.Of(narrow, MountedShape.Of(narrow, LongSide.Athwart)).CarrierPieces;
        var (port, starboard) = (widths[0].Shape, widths[1].Shape);
        const double Scale = 1 / 3.0;
        var views = new[]
        {
            DocView.Putting(port.Cut.Bounds.LowerLeft, new(6, 14), Scale),
            DocView.Putting(starboard.Cut.Bounds.LowerLeft, new(98, 14), Scale),
        };
        var page = new DocPage("felled-seam", "A felled seam between two widths", new(180, 122));
        foreach (var (view, piece) in views.Zip(widths))
        {
            page.Add(view.Line(LineRole.Cut, piece.Shape.Cut)).Add(piece.Lines.Where(line => IsHemOrPanel(line) || IsSeam(line)).Select(view.Line));
        }

        var (first, second) = (views[0].Of(port.Cut.Bounds), views[1].Of(starboard.Cut.Bounds));
        var seam = (Left: first.Right - (12.7 * Scale), Right: second.Left + (25.4 * Scale));
        return page
            .Across((seam.Left, first.Right), (first.Top + 5, first.Top), "1/2 in")
            .Across((second.Left, seam.Right), (second.Top + 5, second.Top), "1 in")
            .Text("width 1, port", new(first.Center.X, 7), TextAnchor.Middle)
            .Text("width 2, starboard", new(second.Center.X, 7), TextAnchor.Middle)
            .Callout("seam line: sew here first", new(seam.Left, first.Top - 8), new(20, 115))
            .Callout("the same line on the other width", new(seam.Right, second.Top - 8), new(112, 115))
            .ToSheet();
    }

    private static (MountedShape Mounted, PatternPiece Piece) PieceOf(CarrierJob job)
    {
        var mounted = MountedShape.Of(job, LongSide.Athwart);
        return (mounted, PatternSet.Of(job, mounted).WholeCarrier);
    }

    /// <summary>Leaves out what other figures show: zipper rows and ticks, centre marks.</summary>
    private static bool IsHemOrPanel(PieceLine line) =>
        line.Kind == PieceLineKind.Fold || line.IsClosed || (line.Kind == PieceLineKind.Stitch && line.Text.Length == 0 && IsHemRow(line));

    private static bool IsSeam(PieceLine line) => line.Shows == LineShows.FelledSeam;

    /// <summary>Hem rows lie 22.4 mm inside the finished edges, 95 mm from the middle; zipper rows lie nearer to them.</summary>
    private static bool IsHemRow(PieceLine line) =>
        line.Points[0].X == line.Points[1].X || Math.Abs(line.Points[0].Y) <= 95 - 22.3;
}
