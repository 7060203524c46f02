using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>Puts several pieces that one page can hold on one page.</summary>
/// <remarks>
/// Row by row, the highest first, none turned against the others. For each page every way round is tried, and the one
/// on which the most is placed is taken. Never more pages than one for each piece.
/// </remarks>
internal static class PagePacking
{
    /// <summary>Between pieces, for the scissors.</summary>
    public const double GapMm = 8;

    /// <summary>The pieces as they are printed, pieces that share a page made one, in the order of their first.</summary>
    public static ImmutableArray<TilePiece> Of(ImmutableArray<TilePiece> pieces, PageLayout layout)
    {
        var (upright, level) = (layout.WindowSizeMm(isLandscape: false), layout.WindowSizeMm(isLandscape: true));
        PageExtent[] pages = [upright, upright.Turned(), level, level.Turned()];
        var printed = pieces.Index().Where(piece => !IsForOnePage(piece.Item)).Select(piece => (First: piece.Index, Piece: piece.Item)).ToList();
        var left = pieces.Index().Where(piece => IsForOnePage(piece.Item))
            .OrderByDescending(piece => Math.Round(piece.Item.Bounds.HeightMm, 6)).ThenBy(piece => piece.Index).ToList();
        while (left.Count > 0)
        {
            var fullest = pages.Select(page => Filled(left, page)).MaxBy(placed => Math.Round(placed.Sum(piece => AreaOf(piece.Piece)), 3))!;
            var placed = fullest.OrderBy(piece => piece.Index).ToList();
            printed.Add((placed[0].Index, Joined(placed)));
            left.RemoveAll(piece => placed.Exists(one => one.Index == piece.Index));
        }

        return [.. printed.OrderBy(piece => piece.First).Select(piece => piece.Piece)];

        bool IsForOnePage(TilePiece piece) => PlanOf(piece).PageCount == 1;

        TilePlan PlanOf(TilePiece piece) => TileGrid.PlanOf(piece.Bounds, layout);
    }

    /// <summary>Which of the pieces a page takes, and where their lower left corners lie.</summary>
    private static List<Placed> Filled(List<(int Index, TilePiece Item)> pieces, PageExtent page)
    {
        var placed = new List<Placed>();
        var (widthMm, heightMm) = (page.WidthMm - (2 * TilePlacing.EdgeMm), page.HeightMm - (2 * TilePlacing.EdgeMm));
        var (rowBottom, rowTop, right) = (0.0, -GapMm, double.PositiveInfinity);
        foreach (var (index, piece) in pieces)
        {
            var (width, height) = (piece.Bounds.WidthMm, piece.Bounds.HeightMm);
            if (right + width <= widthMm + TilePlan.RoundingMm && rowBottom + height <= heightMm + TilePlan.RoundingMm)
            {
                placed.Add(new(index, piece, new(right, rowBottom)));
            }
            else if (rowTop + GapMm + height <= heightMm + TilePlan.RoundingMm && width <= widthMm + TilePlan.RoundingMm)
            {
                (rowBottom, right) = (rowTop + GapMm, 0);
                placed.Add(new(index, piece, new(right, rowBottom)));
            }
            else
            {
                continue;
            }

            (right, rowTop) = (right + width + GapMm, Math.Max(rowTop, rowBottom + height));
        }

        return placed;
    }

    private static TilePiece Joined(List<Placed> placed) => placed.Count == 1
        ? placed[0].Piece
        : new(
            placed[0].Piece.Name,
            string.Join(" · ", placed.Select(piece => piece.Piece.Title)),
            [.. placed.SelectMany(piece => Figures.Moved(piece.Piece.Figures, piece.At - piece.Piece.Bounds.LowerLeft))]);

    private static double AreaOf(TilePiece piece) => piece.Bounds.WidthMm * piece.Bounds.HeightMm;

    private sealed record Placed(int Index, TilePiece Piece, Point At);
}
