using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>The flaps that hold the carrier's edges in the place of zippers, and what lies under or against them on the top.</summary>
internal static class FlapPieces
{
    /// <summary>Each arm of the cross at a fastener's centre.</summary>
    private const double CrossMm = 5;

    /// <summary>The flap that is sewn under the carrier's edge: folded in half, the fold outside.</summary>
    public static PatternPiece OnCarrier(CarrierJob job, FlapPlace flap)
    {
        var title = new PieceTitle(Say.Of($"Flap for {Words.Of(flap.Kind)}, {Words.Of(flap.Side)}"), 1, Hand.Neither, PieceTitle.OuterFaceUp) { KindName = Say.Of($"Flap for {Words.Of(flap.Kind)}") };
        return Back(AsEnd(job, flap.AsEnd, (new(PieceKind.MountFlap, Side: flap.Side), title)), flap).LyingAt(PlaneMap.To(flap.Flap.Center));
    }

    /// <summary>What is sewn to the top: a strip under fasteners, the other flap of a lacing or a sleeve; nothing for tape.</summary>
    public static IEnumerable<PatternPiece> OnTop(CarrierJob job, FlapPlace flap)
    {
        if (flap.Kind == MountKind.HookAndLoop)
        {
            yield break;
        }

        var name = flap.Kind switch
        {
            MountKind.Lacing => Say.Of("Flap for lacing on the top"),
            MountKind.Sleeve => Say.Of("Flap for rod sleeve on the top"),
            _ => Say.Of($"Strip under {Words.Of(flap.Kind)}"),
        };
        var which = (new PieceKey(PieceKind.MountStrip, Side: flap.Side), new PieceTitle($"{name}, {Words.Of(flap.Side)}", 1, Hand.Neither, PieceTitle.OuterFaceUp) { KindName = name });
        var end = flap.AsEnd;
        var piece = flap.Kind switch
        {
            MountKind.Lacing => Laced(job, which, end),
            MountKind.Sleeve => SleevePieces.OnTop(job, end, which),
            _ => Strip(job, which, end.OnTop),
        };
        yield return Back(piece with { Lines = [.. piece.Lines, .. Crosses(end.CentresOnTop, end.OnTop)] }, flap).LyingAt(PlaneMap.To(flap.OnTop.Center));
    }

    /// <summary>The piece as it lies at its own edge; the middle of a side's is not the boat's.</summary>
    private static PatternPiece Back(PatternPiece piece, FlapPlace flap) => flap.IsEnd ? piece : (piece with
    {
        Lines = [.. piece.Lines.Select(line => line.Shows == LineShows.Centreline ? line with { Shows = LineShows.Middle } : line)],
    }).Back(flap.Frame);

    private static PatternPiece AsEnd(CarrierJob job, FlapPlace flap, (PieceKey Key, PieceTitle Title) which)
    {
        if (flap.Kind == MountKind.Sleeve)
        {
            return SleevePieces.OnCarrier(job, flap, which);
        }

        var piece = Folded(job, which, flap.Flap, flap.Outward);
        return piece with { Lines = [.. piece.Lines, .. TapeRows(flap), .. Crosses(flap.CentresOnCarrier, flap.Flap)] };
    }

    /// <summary>The two rows that hold a tape along a flap or the top, in the plan.</summary>
    public static IEnumerable<(Point From, Point To)> RowsOf(FlapPlace flap)
    {
        var (inset, frame) = (flap.AsEnd.OnTop.Grown(-StitchRows.FromFold.Millimeters), flap.Frame);
        yield return (frame.Back(new Point(inset.Left, inset.Top)), frame.Back(new Point(inset.Right, inset.Top)));
        yield return (frame.Back(new Point(inset.Left, inset.Bottom)), frame.Back(new Point(inset.Right, inset.Bottom)));
    }

    /// <summary>The openings of a sleeve, which no joining seam should cross.</summary>
    public static ImmutableArray<Box> Openings(PatternPiece piece) =>
        [.. piece.Lines.Where(line => line.Shows == LineShows.Opening).Select(line => Box.Holding(line.Points))];

    private static PatternPiece Strip(CarrierJob job, (PieceKey Key, PieceTitle Title) which, Box place)
    {
        var turn = FoldedStrip.TurnIn(place);
        var hemmed = new HemmedBox(Box.Around(new(0, 0), place.WidthMm, place.HeightMm), Sides.All(EdgeTurn.Once(turn)), CornerKind.Square);
        return new PatternPiece(
            which.Key,
            which.Title,
            new(hemmed.Finished, hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [.. hemmed.Folds(), .. hemmed.Rows(1)],
            [AllowanceText.Of(Sides.All(turn), job.Units), Say.Of("Sewn to the underside of the top.")]).FoldedAlong(hemmed.FoldOrder);
    }

    /// <summary>The flap on the top, folded toward the carrier and sewn down along its outer edge.</summary>
    private static PatternPiece Laced(CarrierJob job, (PieceKey Key, PieceTitle Title) which, FlapPlace flap)
    {
        var piece = Folded(job, which, flap.OnTop, -flap.Outward);
        return piece with { Lines = [.. piece.Lines, .. OuterRows(job, piece, flap.Outward)] };
    }

    /// <summary>The rows that hold a flap on the top, along its edge away from the carrier.</summary>
    public static IEnumerable<PieceLine> OuterRows(CarrierJob job, PatternPiece piece, int outward)
    {
        var box = piece.Shape.Finished.Bounds;
        var outer = outward > 0 ? box.Top : box.Bottom;
        return Enumerable.Range(0, job.Workshop.Sewing.Rows)
            .Select(row => outer - (outward * StitchRows.DistanceFromFold(row).Millimeters))
            .Select(y => PieceLine.Row(new(box.Left, y), new(box.Right, y), new(RowKind.Edge, piece.Folds.Length)));
    }

    /// <summary>A strip of two plies, folded in half, its raw edges turned in and its ends closed.</summary>
    /// <param name="job">The job.</param>
    /// <param name="which">Which piece it is, and what it is called.</param>
    /// <param name="place">The finished flap.</param>
    /// <param name="toward">Where the fold lies: 1 forward, -1 aft.</param>
    private static PatternPiece Folded(CarrierJob job, (PieceKey Key, PieceTitle Title) which, Box place, int toward)
    {
        var folded = new FoldedStrip(place, toward);
        var finished = folded.Finished;
        return new PatternPiece(
            which.Key,
            which.Title,
            new(Outline.Of(finished), folded.Hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [
                .. folded.Folds(),
                .. new[] { finished.Left + StitchRows.FromFold.Millimeters, finished.Right - StitchRows.FromFold.Millimeters }
                    .Select((x, end) => PieceLine.Row(new(x, finished.Bottom), new(x, finished.Top), new(RowKind.Hem, folded.Order.Length, Face: end))),
                PieceLine.Straight(PieceLineKind.Mark, new(0, finished.Bottom), new(0, finished.Top), LineShows.Centreline),
            ],
            [AllowanceText.Of(Sides.All(folded.Turn), job.Units), Say.Of("Folded in half: two plies when finished.")]).FoldedAlong(folded.Order);
    }

    /// <summary>The rows of the hook tape, on the flap's own plane.</summary>
    private static IEnumerable<PieceLine> TapeRows(FlapPlace flap) => flap.Kind == MountKind.HookAndLoop
        ? RowsOf(flap).Select(row => PieceLine.Row(Own(row.From, flap.Flap), Own(row.To, flap.Flap), new(RowKind.Mount, 0)))
        : [];

    private static IEnumerable<PieceLine> Crosses(ImmutableArray<Point> centres, Box place)
    {
        foreach (var (index, centre) in centres.Select(centre => Own(centre, place)).Index())
        {
            var shows = index == 0 ? LineShows.Centres : LineShows.Nothing;
            yield return PieceLine.Straight(PieceLineKind.Mark, centre - new Step(CrossMm, 0), centre + new Step(CrossMm, 0), shows) with { Count = centres.Length };
            yield return PieceLine.Straight(PieceLineKind.Mark, centre - new Step(0, CrossMm), centre + new Step(0, CrossMm));
        }
    }

    /// <summary>A point of the plan in the plane of a piece whose middle is the origin.</summary>
    private static Point Own(Point point, Box place) => new Point(0, 0) + (point - place.Center);
}
