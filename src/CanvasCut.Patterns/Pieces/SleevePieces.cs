using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The two sleeves of a rod: each a strip folded in half, closed by a row beside the fold, with openings for the other's lugs.</summary>
internal static class SleevePieces
{
    /// <summary>The sleeve that is sewn under the carrier's edge.</summary>
    public static PatternPiece OnCarrier(CarrierJob job, FlapPlace flap, (PieceKey Key, PieceTitle Title) which) =>
        Of(job, which, flap, (flap.Flap, flap.Outward), flap.Lugs!.CutFromCarrier);

    /// <summary>The sleeve on the top, its fold toward the carrier, sewn down along its outer edge.</summary>
    public static PatternPiece OnTop(CarrierJob job, FlapPlace flap, (PieceKey Key, PieceTitle Title) which)
    {
        var piece = Of(job, which, flap, (flap.OnTop, -flap.Outward), flap.Lugs!.CutFromTop);
        return piece with { Lines = [.. piece.Lines, .. FlapPieces.OuterRows(job, piece, flap.Outward)] };
    }

    /// <summary>A sleeve with its middle at the origin.</summary>
    /// <param name="job">The job.</param>
    /// <param name="which">Which piece it is, and what it is called.</param>
    /// <param name="flap">What it belongs to.</param>
    /// <param name="place">The finished sleeve, and where its fold lies: 1 forward, -1 aft.</param>
    /// <param name="openings">What is cut out, along the sleeve.</param>
    private static PatternPiece Of(
        CarrierJob job, (PieceKey Key, PieceTitle Title) which, FlapPlace flap, (Box Finished, int Toward) place, ImmutableArray<(Length From, Length To)> openings)
    {
        var (sleeve, folded) = (flap.Parts.Sleeve!, new FoldedStrip(place.Finished, place.Toward));
        var (finished, fold) = (folded.Finished, folded.FoldY);
        var row = fold - (place.Toward * sleeve.Depth.Millimeters);
        var depth = SleeveOpening.DepthOf(sleeve).Millimeters;
        return new PatternPiece(
            which.Key,
            which.Title,
            new(Outline.Of(finished), folded.Hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [
                .. folded.Folds(),
                .. EndRows(folded),
                PieceLine.Row(new(finished.Left, row), new(finished.Right, row), new(RowKind.Sleeve, folded.Order.Length)),
                PieceLine.Straight(PieceLineKind.Mark, new(0, finished.Bottom), new(0, finished.Top), LineShows.Centreline),
                .. openings.Select(opening => PieceLine.Round(
                    PieceLineKind.Mark,
                    Outline.Of(new Box(opening.From.Millimeters, fold - depth, opening.To.Millimeters, fold + depth)),
                    LineShows.Opening)),
            ],
            [
                AllowanceText.Of(Sides.All(folded.Turn), job.Units),
                Say.Of("Cut the openings out with a hot knife while the strip is flat. Sew the turned ends, fold in half, then sew the row beside the fold: the rod goes between row and fold."),
            ]).FoldedAlong(folded.Order);
    }

    /// <summary>The ends are hemmed flat, before the strip is folded, so that the sleeve stays open; a row on either half.</summary>
    private static IEnumerable<PieceLine> EndRows(FoldedStrip folded)
    {
        var (open, inset, folds) = (folded.Open, StitchRows.FromFold.Millimeters, folded.Hemmed.FoldOrder.Length);
        return new[] { open.Left + inset, open.Right - inset }.SelectMany((x, end) => new[]
        {
            PieceLine.Row(new(x, open.Bottom), new(x, open.Center.Y), new(RowKind.Hem, folds, Face: 2 * end)),
            PieceLine.Row(new(x, open.Center.Y), new(x, open.Top), new(RowKind.Hem, folds, Face: (2 * end) + 1)),
        });
    }
}
