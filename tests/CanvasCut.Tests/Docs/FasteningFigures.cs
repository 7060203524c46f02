using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Docs;

/// <summary>Zippers, corner pockets and the weather strip, all of the sample job.</summary>
internal static class FasteningFigures
{
    private static readonly MountedShape Mounted = MountedShape.Of(SampleJobs.Plain, LongSide.Athwart);
    private static readonly ZipperPlace Zipper = Mounted.Fastened.Zippers[0];
    private static readonly PocketPlace Pocket = Mounted.Fastened.Pockets[1];
    private static readonly Point Corner = Pocket.Corner.Of(Mounted.CarrierBox);

    public static Sheet Zippers()
    {
        var job = SampleJobs.Plain with { Panel = SampleJobs.Panel(500, 300) };
        var mounted = MountedShape.Of(job, LongSide.Athwart);
        var (zipper, carrier) = (mounted.Fastened.Zippers[0], mounted.CarrierBox);
        var window = new Box(carrier.Left - 12, carrier.Top - 60, 26, carrier.Top + 32);
        var view = DocView.Putting(window.LowerLeft, new(4, 22), 0.53);
        var (band, edge) = (view.Of(zipper.Band), view.Of(carrier));
        var chain = view.Of(0, zipper.ChainY).Y;
        var page = new DocPage("zipper", "A zipper along the carrier's edge", new(180, 92))
            .Add(view.Clipped(
                window,
                [view.Shade(Outline.Of(carrier), 0.1), view.Line(LineRole.Cut, carrier), view.Line(LineRole.Mark, zipper.Band), .. Chain(view, zipper, job)]))
            .Add(zipper.Choice.Ticks.Select(tick => view.Of(tick.Millimeters, zipper.ChainY)).Where(at => at.X > 4 && at.X < 150)
                .SelectMany(at => new[] { -1, 1 }.Select(side => Stroke.Open(LineRole.Mark, at + new Step(0, 5 * side), at + new Step(0, 10 * side)))));
        var ticks = (view.Of(-200, 0).X, view.Of(0, 0).X);
        return page
            .Across((edge.Left, band.Left), (14, edge.Bottom > 22 ? edge.Bottom : 22), "s, setback")
            .Across(ticks, (band.Top + 5, chain), "200 mm between ticks")
            .Upright((edge.Top, chain), (158, 156), "r, reveal")
            .Upright((band.Bottom, band.Top), (151, 146), string.Empty)
            .Text("w, both tapes", new(149, band.Top + 3))
            .Text("the run goes on to the same setback at the other end", new(58, 12.65))
            .Text("carrier", new(30, 30))
            .Callout("top's half", new(band.Left + 20, band.Top - 3), new(24, 87))
            .Callout("chain", new(band.Left + 30, chain), new(60, 87))
            .Callout("carrier's half, under the edge", new(band.Left + 45, band.Bottom + 2), new(band.Left + 55, 40))
            .ToSheet();
    }

    public static Sheet CornerPocket()
    {
        var window = new Box(Pocket.EndAthwart.X - 22, Pocket.EndForeAft.Y - 26, Pocket.At.X + 12, Pocket.At.Y + 8);
        var view = DocView.Putting(window.LowerLeft, new(8, 20), 0.82);
        var (at, left, low) = (view.Of(Pocket.At), view.Of(Pocket.EndAthwart), view.Of(Pocket.EndForeAft));
        var (corner, cell) = (view.Of(Corner), view.Of(CellCorner));
        return new DocPage("corner-pocket", "A corner pocket over the carrier's corner", new(170, 138))
            .Add(view.Clipped(window, [.. Carrier(view), .. Chain(view, Zipper, SampleJobs.Plain), .. PocketLines(view)]))
            .Across((left.X, at.X), (at.Y + 6, at.Y), "P, leg")
            .Across((corner.X, at.X), (14, low.Y), "ox")
            .Across((cell.X, corner.X), (22, cell.Y), "cx")
            .Upright((corner.Y, at.Y), (120, at.X), "oy")
            .Upright((cell.Y, corner.Y), (112, corner.X), "cy")
            .Text("cells", new(cell.X - 30, cell.Y - 16))
            .Callout("cells' corner, 3 mm clear", cell, new(118, 44)).Callout("mouth", view.Of(Pocket.EndAthwart.Toward(Pocket.EndForeAft, 0.93)), new(118, 34))
            .Callout("carrier's corner C", corner, new(128, 76))
            .Callout("the mouth crosses the edges", view.Of(Corner - new Step(0, Pocket.Covers.Millimeters)), new(118, 58))
            .Text("P - ox - oy from C", new(120, 53.5))
            .Callout("zipper's end", view.Of(Zipper.Band.Right - 4, Zipper.ChainY + 12), new(128, 132))
            .Callout("pocket's square corner", at, new(118, 124))
            .ToSheet();
    }

    public static Sheet CutPocket()
    {
        var patterns = PatternSet.Of(SampleJobs.Plain, Mounted);
        var piece = patterns.TopPieces.Single(each => each.Key.Id == "pocket-forward-starboard");
        var view = DocView.Putting(piece.Shape.Cut.Bounds.LowerLeft, new(6, 16), 0.9);
        var (cut, finished) = (view.Of(piece.Shape.Cut.Bounds), view.Of(piece.Shape.Finished.Bounds));
        return new DocPage("cut-pocket", "The pocket as it is cut", new(172, 132))
            .Add(view.Line(LineRole.Cut, piece.Shape.Cut))
            .Add(piece.Lines.Select(view.Line))
            .Across((finished.Right, cut.Right), (9, cut.Bottom), "a")
            .Across((cut.Left, finished.Left), (cut.Top + 5, finished.Top), "a")
            .Across((finished.Left, finished.Right), (cut.Top + 5, cut.Top), "P, leg")
            .Callout("a, seam allowance", new(cut.Right - 3, finished.Top - 20), new(128, 96))
            .Callout("leg: fold and seam", new(finished.Right, finished.Top - 32), new(128, 86))
            .Callout("rows of stitches", new(finished.Right - 2.7, finished.Top - 42), new(128, 76))
            .Callout("mouth's fold", view.Of(-36, -52.25), new(8, 24))
            .Callout("h, mouth's hem", view.Of(-53, -44), new(8, 34))
            .Callout("t, turned under", view.Of(-72, -43), new(8, 44))
            .Callout("tip, cut square", new(finished.Right - 8, cut.Bottom), new(40, 6))
            .ToSheet();
    }

    public static Sheet WeatherStrip()
    {
        var strip = Mounted.Fastened.Strips[0];
        var window = new Box(Corner.X - 105, Corner.Y - 60, Corner.X + 32, Corner.Y + 62);
        var view = DocView.Putting(window.LowerLeft, new(5, 12), 0.85);
        var (box, seam, corner) = (view.Of(strip.Finished), view.Of(strip.Seam.From).Y, view.Of(Corner));
        var pocketTop = view.Of(Pocket.At).Y;
        var rows = StripRows().ToList();
        var inner = view.Of(0, rows[^1]).Y;
        return new DocPage("weather-strip", "The weather strip over zipper and pocket", new(170, 123))
            .Add(view.Clipped(
                window,
                [view.Shade(Outline.Of(strip.Finished), 0.12), .. Carrier(view), .. Chain(view, Zipper, SampleJobs.Plain), .. PocketLines(view), view.Line(LineRole.Cut, strip.Finished)]))
            .Add(view.Clipped(window, [.. rows.Select(row => view.Line(LineRole.Stitch, new(strip.Finished.Left, row), new(strip.Finished.Right, row)))]))
            .Across((corner.X, box.Right), (6, box.Bottom), "overhang")
            .Upright((inner, seam), (132, box.Right), "i")
            .Upright((pocketTop, inner), (132, box.Right), "6 mm")
            .Upright((corner.Y, pocketTop), (132, box.Right), "covered")
            .Upright((box.Bottom, corner.Y), (132, box.Right), "overlap")
            .Callout("seam on the top", new(40, seam), new(50, 119))
            .Callout("chain", view.Of(Corner.X - 95, Zipper.ChainY), new(14, 119))
            .Callout("pocket", view.Of(Pocket.At - new Step(0, 60)), new(120, 36))
            .Callout("carrier's edge", view.Of(Corner - new Step(0, 52)), new(120, 22))
            .ToSheet();
    }

    /// <summary>The rows of the strip, in millimetres of the plan, the outermost first.</summary>
    private static IEnumerable<double> StripRows() => Enumerable.Range(0, SampleJobs.Plain.Workshop.Sewing.Rows)
        .Select(row => Mounted.Fastened.Strips[0].Seam.From.Y - StitchRows.DistanceFromFold(row).Millimeters);

    private static Point CellCorner => Pocket.Corner.Of(Mounted.CellBox);

    private static IEnumerable<Figure> Carrier(DocView view) =>
    [
        view.Shade(Outline.Of(Mounted.CellBox), 0.2),
        view.Line(LineRole.Cut, Mounted.CarrierBox),
        view.Line(LineRole.Mark, Mounted.CellBox),
        view.Line(LineRole.Mark, Zipper.Band),
    ];

    private static IEnumerable<Figure> PocketLines(DocView view) => [view.Line(LineRole.Cut, Pocket.Outline)];

    private static IEnumerable<Figure> Chain(DocView view, ZipperPlace zipper, CarrierJob job)
    {
        var half = job.Fastenings.Zipper.Gauge.Chain.Millimeters / 2;
        yield return view.Shade(Outline.Of(zipper.Band with { Bottom = zipper.ChainY - half, Top = zipper.ChainY + half }), 0.45);
    }
}
