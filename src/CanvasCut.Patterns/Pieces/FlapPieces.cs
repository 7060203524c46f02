using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The flaps that hold the carrier's edges in the place of zippers, and what lies under or against them on the top.</summary>
internal static class FlapPieces
{
    /// <summary>The turn along every raw edge, less where the strip is narrower; common practice, no source.</summary>
    private static readonly Length MostTurn = Length.FromInches(0.5);

    /// <summary>Each arm of the cross at a fastener's centre.</summary>
    private const double CrossMm = 5;

    /// <summary>What a flap's id begins with.</summary>
    public const string OnCarrierId = "mount-flap-";

    /// <summary>What the id of its counterpart on the top begins with.</summary>
    public const string OnTopId = "mount-strip-";

    /// <summary>The flap that is sewn under the carrier's edge: folded in half, the fold outside.</summary>
    public static PatternPiece OnCarrier(CarrierJob job, FlapPlace flap)
    {
        var title = new PieceTitle($"{OnCarrierId}{Words.Id(flap.Side)}", Say.Of($"Flap for {Words.Of(flap.Kind)}, {Words.Of(flap.Side)}"), 1, Hand.Neither, PieceTitle.OuterFaceUp);
        var piece = Folded(job, title, flap.Flap, flap.Outward);
        return piece with { Lines = [.. piece.Lines, .. TapeRows(job, flap), .. Crosses(flap, flap.CentresOnCarrier, flap.Flap)] };
    }

    /// <summary>What is sewn to the top: a strip under fasteners, the other flap of a lacing; nothing for tape.</summary>
    public static IEnumerable<PatternPiece> OnTop(CarrierJob job, FlapPlace flap)
    {
        if (flap.Kind == MountKind.HookAndLoop)
        {
            yield break;
        }

        var isLacing = flap.Kind == MountKind.Lacing;
        var name = isLacing ? Say.Of("Flap for lacing on the top") : Say.Of($"Strip under {Words.Of(flap.Kind)}");
        var title = new PieceTitle($"{OnTopId}{Words.Id(flap.Side)}", $"{name}, {Words.Of(flap.Side)}", 1, Hand.Neither, PieceTitle.OuterFaceUp);
        var piece = isLacing ? Laced(job, title, flap) : Strip(job, title, flap.OnTop);
        yield return piece with { Lines = [.. piece.Lines, .. Crosses(flap, flap.CentresOnTop, flap.OnTop)] };
    }

    private static Length TurnIn(Box place) =>
        Length.FromMillimeters(Math.Min(MostTurn.Millimeters, Math.Min(place.WidthMm, place.HeightMm) / 2));

    /// <summary>The two rows that hold a tape along a flap or the top, in the plan.</summary>
    public static IEnumerable<(Point From, Point To)> RowsOf(Box tape)
    {
        var inset = tape.Grown(-StitchRows.FromFold.Millimeters);
        yield return (new(inset.Left, inset.Top), new(inset.Right, inset.Top));
        yield return (new(inset.Left, inset.Bottom), new(inset.Right, inset.Bottom));
    }

    private static PatternPiece Strip(CarrierJob job, PieceTitle title, Box place)
    {
        var turn = TurnIn(place);
        var hemmed = new HemmedBox(Box.Around(new(0, 0), place.WidthMm, place.HeightMm), Sides.All(EdgeTurn.Once(turn)), CornerKind.Square);
        return new PatternPiece(
            title,
            new(hemmed.Finished, hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [.. hemmed.Folds(), .. hemmed.Rows(1)],
            [AllowanceText.Of(Sides.All(turn), job.Units), Say.Of("Sewn to the underside of the top.")]).FoldedAlong(hemmed.FoldOrder);
    }

    /// <summary>The flap on the top, folded toward the carrier and sewn down along its outer edge.</summary>
    private static PatternPiece Laced(CarrierJob job, PieceTitle title, FlapPlace flap)
    {
        var piece = Folded(job, title, flap.OnTop, -flap.Outward);
        var box = piece.Shape.Finished.Bounds;
        var outer = flap.Outward > 0 ? box.Top : box.Bottom;
        var rows = Enumerable.Range(0, job.Workshop.Sewing.Rows)
            .Select(row => outer - (flap.Outward * StitchRows.DistanceFromFold(row).Millimeters))
            .Select(y => PieceLine.Row(new(box.Left, y), new(box.Right, y), new(RowKind.Edge, piece.Folds.Length)));
        return piece with { Lines = [.. piece.Lines, .. rows] };
    }

    /// <summary>A strip of two plies, folded in half, its raw edges turned in and its ends closed.</summary>
    /// <param name="job">The job.</param>
    /// <param name="title">What it is called.</param>
    /// <param name="place">The finished flap.</param>
    /// <param name="toward">Where the fold lies: 1 forward, -1 aft.</param>
    private static PatternPiece Folded(CarrierJob job, PieceTitle title, Box place, int toward)
    {
        var finished = Box.Around(new(0, 0), place.WidthMm, place.HeightMm);
        var fold = toward * finished.Top;
        var open = toward > 0 ? finished with { Top = finished.Top + finished.HeightMm } : finished with { Bottom = finished.Bottom - finished.HeightMm };
        var turn = TurnIn(place);
        var hemmed = new HemmedBox(open, Sides.All(EdgeTurn.Once(turn)), CornerKind.Square);
        ImmutableArray<HalfPlane> folds = [.. hemmed.FoldOrder, new(new(0, fold), new(-toward, 0))];
        var cut = hemmed.Cut.Bounds;
        return new PatternPiece(
            title,
            new(Outline.Of(finished), hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [
                .. hemmed.Folds(),
                PieceLine.Straight(PieceLineKind.Fold, new(cut.Left, fold), new(cut.Right, fold), Say.Of("fold in half")),
                .. new[] { finished.Left + StitchRows.FromFold.Millimeters, finished.Right - StitchRows.FromFold.Millimeters }
                    .Select(x => PieceLine.Row(new(x, finished.Bottom), new(x, finished.Top), new(RowKind.Hem, folds.Length))),
                PieceLine.Straight(PieceLineKind.Mark, new(0, finished.Bottom), new(0, finished.Top), Say.Of("centreline")),
            ],
            [AllowanceText.Of(Sides.All(turn), job.Units), Say.Of("Folded in half: two plies when finished.")]).FoldedAlong(folds);
    }

    /// <summary>The rows of the hook tape, on the flap's own plane.</summary>
    private static IEnumerable<PieceLine> TapeRows(CarrierJob job, FlapPlace flap) => flap.Kind == MountKind.HookAndLoop
        ? RowsOf(flap.OnTop).Select(row => PieceLine.Row(Own(row.From, flap.Flap), Own(row.To, flap.Flap), new(RowKind.Mount, 0)))
        : [];

    private static IEnumerable<PieceLine> Crosses(FlapPlace flap, ImmutableArray<Point> centres, Box place)
    {
        foreach (var (index, centre) in centres.Select(centre => Own(centre, place)).Index())
        {
            var text = index == 0 ? Say.Of($"{centres.Length} centres") : string.Empty;
            yield return PieceLine.Straight(PieceLineKind.Mark, centre - new Step(CrossMm, 0), centre + new Step(CrossMm, 0), text);
            yield return PieceLine.Straight(PieceLineKind.Mark, centre - new Step(0, CrossMm), centre + new Step(0, CrossMm));
        }
    }

    /// <summary>A point of the plan in the plane of a piece whose middle is the origin.</summary>
    private static Point Own(Point point, Box place) => new Point(0, 0) + (point - place.Center);
}
