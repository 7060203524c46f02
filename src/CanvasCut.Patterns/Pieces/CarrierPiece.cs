using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>The carrier, before it is split for a narrow roll; its middle is the origin of its plane.</summary>
internal static class CarrierPiece
{
    private const double TickMm = 12;

    public static PatternPiece Of(CarrierJob job, MountedShape mounted)
    {
        var centred = mounted.MovedBy(new Point(0, 0) - mounted.CarrierBox.Center);
        var finished = GrownForShrink(centred.CarrierBox, job.Workshop.Cloth);
        var allowances = job.Carrier.Allowances;
        var hemmed = new HemmedBox(finished, TurnsOf(job.Carrier), job.Carrier.Corner);
        return new PatternPiece(
            new(PieceKind.Carrier),
            new(Say.Of("Carrier"), 1, Hand.Neither, PieceTitle.OuterFaceUp),
            new(hemmed.Finished, hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [.. hemmed.Folds(), .. hemmed.Rows(1), .. ZipperLines(job, centred, finished, hemmed.FoldOrder.Length), .. FlapLines(job, centred, finished, hemmed.FoldOrder.Length), .. StripMarks(centred, hemmed.FoldOrder.Length), .. EachPanel.Of(job, centred).SelectMany(PanelMarks), .. Holes(job, centred), .. BondLines.Of(BondPlan.Joined(BondPlan.All(job, centred))), .. Middles(finished)],
            [AllowanceText.Of(allowances, job.Units), .. ShrinkNote(job), .. BindingNote(job)]).FoldedAlong(hemmed.FoldOrder).LyingAt(OnTop(finished, mounted.CarrierBox));
    }

    /// <summary>Shrunk to its nominal size, at its place.</summary>
    private static PlaneMap OnTop(Box sewn, Box nominal) =>
        PlaneMap.To(nominal.Center) with { AlongX = nominal.WidthMm / sewn.WidthMm, AlongY = nominal.HeightMm / sewn.HeightMm };

    /// <summary>The finished size before shrinking: divided by what will be left.</summary>
    private static Box GrownForShrink(Box finished, ClothSpec cloth) =>
        Box.Around(finished.Center, finished.WidthMm / (1 - cloth.ShrinkAthwart), finished.HeightMm / (1 - cloth.ShrinkForeAft));

    private static Sides<EdgeTurn> TurnsOf(CarrierSpec carrier)
    {
        var (hem, edges) = (EdgeTurn.Of(carrier.Hem), carrier.Edges);
        EdgeTurn Of(Side side) => edges[side] == EdgeFinish.Hem ? hem : EdgeTurn.None;
        return new(Of(Side.Forward), Of(Side.Aft), Of(Side.Port), Of(Side.Starboard));
    }

    private static IEnumerable<PieceLine> ZipperLines(CarrierJob job, MountedShape centred, Box finished, int folds)
    {
        var underHem = job.Fastenings.Zipper.Gauge.OverallWidth.Millimeters / 2 - job.Fastenings.Zipper.Reveal.Millimeters;
        return centred.Fastened.Zippers.SelectMany(zipper => EdgeLines(
            zipper,
            finished,
            [.. RowDepths(underHem, job.Workshop.Sewing.Rows)],
            new(RowKind.Zipper, folds, zipper.Side),
            Ticks(zipper.AsEnd)));
    }

    private static IEnumerable<PieceLine> FlapLines(CarrierJob job, MountedShape centred, Box finished, int folds)
    {
        return centred.Fastened.Flaps.SelectMany(flap => EdgeLines(
            flap,
            finished,
            [.. RowDepths(MountSpec.Lap.Millimeters, job.Workshop.Sewing.Rows)],
            new(RowKind.Mount, folds, flap.Side),
            [(flap.AsEnd.Band.Left, LineShows.FlapEnd), (flap.AsEnd.Band.Right, LineShows.FlapEnd)]));
    }

    /// <summary>The rows that hold something along an edge, and ticks there; worked out as at an end.</summary>
    private static IEnumerable<PieceLine> EdgeLines(
        EdgePlace place, Box finished, ImmutableArray<double> depths, RowUse use, IEnumerable<(double X, LineShows Shows)> ticks)
    {
        var (frame, outward, band) = (place.Frame, place.Outward, place.AsEnd.Band);
        var turned = frame.Turned(finished);
        var edge = outward > 0 ? turned.Top : turned.Bottom;
        return depths.Select(depth => edge - (outward * depth)).Select(y => PieceLine.Row(new(band.Left, y), new(band.Right, y), use))
            .Concat(ticks.Select(tick => PieceLine.Straight(PieceLineKind.Mark, new(tick.X, edge), new(tick.X, edge - (outward * TickMm)), tick.Shows)))
            .Select(line => line.Mapped(frame.Back));
    }

    /// <summary>Where the folded edge of each strip that is sewn to the carrier lies, and what holds the free edge of one that is sewn to the top.</summary>
    private static IEnumerable<PieceLine> StripMarks(MountedShape centred, int folds) =>
    [
        .. centred.Fastened.StripsOnCarrier.Select(strip => PieceLine.Straight(PieceLineKind.Mark, strip.Seam.From, strip.Seam.To, LineShows.StripSeam)),
        .. centred.Fastened.StripsOnTop.SelectMany(strip => strip.Holding is { } held ? StripHoldMarks.Of(held, new(0, 0), folds) : []),
    ];

    /// <summary>One row near the carrier's fold; a second near the tape's inner edge; more between.</summary>
    private static IEnumerable<double> RowDepths(double underHemMm, int rows)
    {
        var (first, last) = (StitchRows.FromFold.Millimeters, underHemMm - StitchRows.FromFold.Millimeters);
        return rows == 1 || last <= first ? [first] : Enumerable.Range(0, rows).Select(row => first + ((last - first) * row / (rows - 1)));
    }

    private static IEnumerable<(double X, LineShows Shows)> Ticks(ZipperPlace zipper)
    {
        var start = zipper.Choice.Kind == ZipperKind.Separating ? LineShows.ZipperPin : LineShows.ZipperStart;
        var (first, last) = zipper.StartsFirst ? (start, LineShows.ZipperEnd) : (LineShows.ZipperEnd, start);
        return
        [
            (zipper.Band.Left, first),
            .. zipper.Choice.Ticks.Select(tick => (zipper.Band.Center.X + tick.Millimeters, LineShows.Nothing)),
            (zipper.Band.Right, last),
        ];
    }

    private static IEnumerable<PieceLine> PanelMarks(EachPanel each)
    {
        var (job, centred) = (each.Job, each.Mounted);
        yield return PieceLine.Round(PieceLineKind.Mark, RoundedBox.Of(centred.PanelBox, job.Panel.Body.CornerRadius.Millimeters), LineShows.PanelEdge) with { Panel = job.PanelName };
        yield return PieceLine.Round(PieceLineKind.Mark, Outline.Of(centred.CellBox), LineShows.Cells);
        if (centred.JunctionBox is { } box)
        {
            yield return PieceLine.Round(PieceLineKind.Mark, Outline.Of(box), LineShows.JunctionBox);
        }

    }

    private static IEnumerable<PieceLine> Holes(CarrierJob job, MountedShape centred)
    {
        foreach (var hole in CableHole.All(job, centred))
        {
            yield return PieceLine.Round(PieceLineKind.Hole, RoundedBox.Circle(hole.Middle, hole.Radius.Millimeters), LineShows.CableExit);
            yield return PieceLine.Round(PieceLineKind.Mark, Outline.Of(hole.Patch), LineShows.ExitPatch);
        }
    }

    private static ImmutableArray<PieceLine> Middles(Box finished) =>
    [
        PieceLine.Straight(PieceLineKind.Mark, new(0, finished.Top), new(0, finished.Top - (2 * TickMm)), LineShows.Centreline),
        PieceLine.Straight(PieceLineKind.Mark, new(0, finished.Bottom), new(0, finished.Bottom + (2 * TickMm)), LineShows.Centreline),
        PieceLine.Straight(PieceLineKind.Mark, new(finished.Left, 0), new(finished.Left + (2 * TickMm), 0)),
        PieceLine.Straight(PieceLineKind.Mark, new(finished.Right, 0), new(finished.Right - (2 * TickMm), 0)),
        PieceLine.Straight(PieceLineKind.Mark, new(-TickMm, 0), new(TickMm, 0)),
        PieceLine.Straight(PieceLineKind.Mark, new(0, -TickMm), new(0, TickMm)),
    ];

    private static IEnumerable<string> ShrinkNote(CarrierJob job)
    {
        var shrink = job.Workshop.Cloth.Shrink;
        if (shrink.Warp > 0 || shrink.Fill > 0)
        {
            yield return Say.Of(
                $"Cut larger for shrinkage: warp {shrink.Warp * 100:0.##} %, fill {shrink.Fill * 100:0.##} %; included.");
        }
    }

    private static IEnumerable<string> BindingNote(CarrierJob job)
    {
        Side[] bound = [.. Enum.GetValues<Side>().Where(side => job.Carrier.Edges[side] == EdgeFinish.Binding)];
        if (bound.Length > 0)
        {
            yield return Say.Of($"Bind the {string.Join(", ", bound.Select(Words.Of))} edge: the cut line is the finished line there.");
        }
    }
}
