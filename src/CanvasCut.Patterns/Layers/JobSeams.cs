using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>Every seam of a job, from the folded pieces: how long, and through how many plies.</summary>
/// <remarks>
/// The carrier is sewn first: joins, hems, binding, zipper halves, cable patch, its own strips, webbing. Then on the top, with the carrier
/// away: chafe patches, zipper halves or what stands for them, pockets, strips. A needle goes through what was sewn there before, never through
/// what comes later. The top is one ply.
/// </remarks>
public static class JobSeams
{
    private static string OnTop => Say.Of("on the top");
    private static string OnCarrier => Say.Of("on the carrier");

    /// <summary>The seams in the order of sewing; of a top whose half is sewn, those on the carrier alone.</summary>
    public static ImmutableArray<SewnSeam> Of(PatternSet patterns) =>
    [
        .. Caps(patterns),
        .. Carrier(patterns),
        .. patterns.Mounted.Fastened.StripsOnCarrier.SelectMany(strip => StripHoldSeams.OnStrip(patterns, strip)),
        .. patterns.IsRefit ? [] : Top(patterns),
        .. patterns.IsRefit ? [] : patterns.Mounted.Fastened.StripsOnTop.SelectMany(strip => StripHoldSeams.OnStrip(patterns, strip)),
    ];

    /// <summary>The caps are folded round the ends of the tapes and sewn by their own row before anything else.</summary>
    private static IEnumerable<SewnSeam> Caps(PatternSet patterns)
    {
        if (patterns.Mounted.Fastened.Zippers.IsEmpty)
        {
            yield break;
        }

        var cap = Cap(patterns);
        var tape = new SewnLayer(LayerKind.ZipperTape, Outline.Of(cap.Shape.Finished.Bounds with { Right = 0 }));
        List<SewnLayer> layers = [.. SewnLayer.Of(LayerKind.Cloth, FoldedSheet.Of([cap.Shape.Cut]).Folded(cap.Folds)), tape];
        var rows = cap.Lines.Where(line => line.Use?.Kind == RowKind.Edge).Select(line => (RowLine.Of(line) with { Points = Left(line.Points) }).Through(layers));
        yield return new(SeamKind.Caps, Say.Of("Zipper end caps"), [cap.Key], cap.Title.Quantity, [.. rows.Where(row => !row.Runs.IsEmpty)]);
    }

    private static IReadOnlyList<SewnSeam> Carrier(PatternSet patterns)
    {
        var (job, whole) = (patterns.Job, patterns.WholeCarrier);
        var centred = patterns.Mounted.MovedBy(new Point(0, 0) - patterns.Mounted.CarrierBox.Center);
        var builder = new SeamBuilder([], job.Workshop.Cloth.Join, patterns.Mounted.CarrierBox.Center);
        builder.Lay(whole, patterns.CarrierPieces);
        var keys = patterns.CarrierPieces.Select(piece => piece.Key).ToImmutableArray();
        Binding(builder, job, whole.Shape.Finished.Bounds, keys);
        foreach (var zipper in centred.Fastened.Zippers)
        {
            builder.Lay(TapeHalf(patterns, zipper, isOnTop: false));
            builder.Sew(
                SeamKind.Zipper,
                Say.Of($"{Words.Of(zipper.Side)} zipper, half {OnCarrier}"),
                keys,
                whole.Lines.Where(line => line.Use is { Kind: RowKind.Zipper } use && use.Edge == zipper.Side).Select(RowLine.Of),
                zipper.Side);
        }

        FlapSeams.OnCarrier(builder, patterns, centred, keys);
        foreach (var piece in patterns.WholesOf(PieceKind.ExitPatch).Concat(centred.Fastened.StripsOnCarrier.Select(strip => patterns.Whole(PieceKind.WeatherStrip, strip.Side)!)))
        {
            builder.SewOn(piece, patterns.NotionPieces, OnCarrier);
        }

        foreach (var strip in centred.Fastened.StripsOnTop)
        {
            StripHoldSeams.UnderStrip(builder, strip, keys);
        }

        Ground(builder, whole, BondPlan.Joined(BondPlan.All(job, centred)), keys);
        return builder.Seams;
    }

    /// <summary>The cloth of the top as rows are held against it, which takes convex plies; all rows lie well inside it.</summary>
    private static Outline Cloth(TopCloth top) => top.Outline.IsRectangle ? Plan.OutlineOf(top) : ConvexHull.Of(Plan.OutlineOf(top).Corners);

    private static IReadOnlyList<SewnSeam> Top(PatternSet patterns)
    {
        var (job, mounted) = (patterns.Job, patterns.Mounted);
        var builder = new SeamBuilder([new(LayerKind.Cloth, Cloth(job.Top))], job.Workshop.Cloth.Join, new(0, 0));
        foreach (var patch in patterns.WholesOf(PieceKind.ChafePatch))
        {
            builder.SewOn(patch, patterns.TopPieces, OnTop);
        }

        foreach (var zipper in mounted.Fastened.Zippers)
        {
            builder.Lay(TapeHalf(patterns, zipper, isOnTop: true));
            builder.Sew(SeamKind.Zipper, Say.Of($"{Words.Of(zipper.Side)} zipper, half {OnTop}"), [], OuterRows(job, zipper).Select(row => new RowLine(0, row)), zipper.Side);
        }

        FlapSeams.OnTop(builder, patterns);
        foreach (var strip in mounted.Fastened.StripsOnCarrier)
        {
            StripHoldSeams.UnderStrip(builder, strip, []);
        }

        foreach (var piece in patterns.WholesOf(PieceKind.Pocket).Concat(mounted.Fastened.StripsOnTop.Select(strip => patterns.Whole(PieceKind.WeatherStrip, strip.Side)!)))
        {
            builder.SewOn(piece, patterns.TopPieces, OnTop);
        }

        return builder.Seams;
    }

    private static void Binding(SeamBuilder builder, CarrierJob job, Box finished, ImmutableArray<PieceKey> keys)
    {
        var half = job.Workshop.Supplies.Tapes.Binding.Width.Millimeters / 2;
        var inMm = half - Math.Min(StitchRows.FromFold.Millimeters, half / 2);
        foreach (var side in Enum.GetValues<Side>().Where(side => job.Carrier.Edges[side] == EdgeFinish.Binding))
        {
            var (tape, row) = side switch
            {
                Side.Forward => (finished with { Bottom = finished.Top - half }, Level(finished, finished.Top - inMm)),
                Side.Aft => (finished with { Top = finished.Bottom + half }, Level(finished, finished.Bottom + inMm)),
                Side.Port => (finished with { Right = finished.Left + half }, Upright(finished, finished.Left + inMm)),
                _ => (finished with { Left = finished.Right - half }, Upright(finished, finished.Right - inMm)),
            };
            builder.Lay(Enumerable.Repeat(new SewnLayer(LayerKind.Binding, Outline.Of(tape)), 2));
            builder.Sew(SeamKind.Bound, Say.Of($"Carrier, {Words.Of(side)} binding"), keys, [new(0, row)]);
        }
    }

    /// <summary>What the panel is bonded to, by the rows that are drawn on the carrier.</summary>
    private static void Ground(SeamBuilder builder, PatternPiece whole, BondPlan bond, ImmutableArray<PieceKey> keys)
    {
        var rows = whole.Lines.Where(line => line.Use?.Kind == RowKind.Ground).Select(RowLine.Of);
        builder.Lay(bond.Webbing.Select(strip => new SewnLayer(LayerKind.Webbing, Outline.Of(strip.Box))));
        builder.Lay(bond.Patches.Select(patch => new SewnLayer(LayerKind.Patch, Outline.Of(patch))));
        if (bond.Ground != BondGround.Cloth)
        {
            var (kind, name) = bond.Ground == BondGround.Webbing
                ? (SeamKind.Webbing, Say.Of($"Webbing under the panel, {OnCarrier}"))
                : (SeamKind.Patch, Say.Of($"Coated patch under the panel, {OnCarrier}"));
            builder.Sew(kind, name, keys, rows);
        }
    }

    /// <summary>One tape of a zipper and the caps on its ends, where they lie.</summary>
    private static IEnumerable<SewnLayer> TapeHalf(PatternSet patterns, ZipperPlace zipper, bool isOnTop) =>
        TapeHalfAtEnd(patterns, zipper.AsEnd, isOnTop).Select(layer => layer with { Ply = zipper.Frame.Back(layer.Ply) });

    private static IEnumerable<SewnLayer> TapeHalfAtEnd(PatternSet patterns, ZipperPlace zipper, bool isOnTop)
    {
        var isUpper = (zipper.Side == Side.Forward) == isOnTop;
        var tape = isUpper ? zipper.Band with { Bottom = zipper.ChainY } : zipper.Band with { Top = zipper.ChainY };
        yield return new(LayerKind.ZipperTape, Outline.Of(tape));
        var cap = Cap(patterns);
        var folded = FoldedSheet.Of([cap.Shape.Cut]).Folded(cap.Folds);
        var starboard = folded.MovedBy(new Point(tape.Right, tape.Center.Y) - new Point(0, 0));
        var port = FoldedSheet.Of(folded.Plies.Select(ply => ply.Mirrored())).MovedBy(new Point(tape.Left, tape.Center.Y) - new Point(0, 0));
        var (stop, start) = zipper.StartsFirst ? (starboard, port) : (port, starboard);
        foreach (var layer in SewnLayer.Of(LayerKind.Cloth, stop).Concat(zipper.Choice.Kind == ZipperKind.Continuous ? SewnLayer.Of(LayerKind.Cloth, start) : []))
        {
            yield return layer;
        }
    }

    private static IEnumerable<ImmutableArray<Point>> OuterRows(CarrierJob job, ZipperPlace zipper)
    {
        var (band, frame) = (zipper.AsEnd.Band, zipper.Frame);
        var (outer, inward) = zipper.Outward > 0 ? (band.Top, -1) : (band.Bottom, 1);
        var room = (job.Fastenings.Zipper.Gauge.OverallWidth - job.Fastenings.Zipper.Gauge.Chain).Millimeters / 2;
        return Enumerable.Range(0, job.Workshop.Sewing.Rows)
            .Select(row => Math.Min(StitchRows.DistanceFromFold(row).Millimeters, Math.Max(room, 0)))
            .Select(depth => Level(band, outer + (inward * depth)).Select(frame.Back).ToImmutableArray());
    }

    private static PatternPiece Cap(PatternSet patterns) => patterns.WholesOf(PieceKind.EndCap).Single();

    /// <summary>The part of a cap's row to port of the fold; the other part lies on it.</summary>
    private static ImmutableArray<Point> Left(ImmutableArray<Point> row) =>
        new HalfPlane(new(0, 0), new(0, 1)).Cut(row) is [var part, ..] ? part : [row[0], row[0]];

    private static ImmutableArray<Point> Level(Box box, double y) => [new(box.Left, y), new(box.Right, y)];

    private static ImmutableArray<Point> Upright(Box box, double x) => [new(x, box.Bottom), new(x, box.Top)];
}
