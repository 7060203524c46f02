using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>Prints pieces true to size over pages that are joined afterwards.</summary>
public static class TilePages
{
    /// <summary>How far beyond its points a line may still show; half the widest line, rounded up.</summary>
    private const double LineRoomMm = 1;

    /// <summary>The squares stand between the joins with a little room round them.</summary>
    private const double RoomForSquaresMm = 2;

    /// <summary>The map page, then each piece's pages row by row, for a printer that is true.</summary>
    /// <param name="pieces">The pieces, each at least one figure.</param>
    /// <param name="job">What stands on every page.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="marginMm">What the printer cannot reach, on every side; nothing is drawn there.</param>
    /// <param name="overlapMm">How much neighbouring pages show twice.</param>
    /// <remarks>The scale is 1. A piece that one page can hold, upright or turned, is never cut by a join.</remarks>
    /// <exception cref="ArgumentException">The paper cannot hold the test squares, or is smaller than its margins and overlap.</exception>
    public static ImmutableArray<Sheet> Of(ImmutableArray<TilePiece> pieces, TileJob job, PaperSize paper, double marginMm, double overlapMm) =>
        Of(pieces, job, LayoutOf(paper, (marginMm, overlapMm), PrintCorrection.None));

    /// <summary>The map page, then each piece's pages row by row; small pieces share a page.</summary>
    /// <param name="pieces">The pieces, each at least one figure.</param>
    /// <param name="job">What stands on every page.</param>
    /// <param name="layout">How the pages are divided, from <see cref="LayoutOf"/>.</param>
    public static ImmutableArray<Sheet> Of(ImmutableArray<TilePiece> pieces, TileJob job, PageLayout layout)
    {
        ImmutableArray<TileGrid> grids = [.. PagePacking.Of(pieces, layout).Select(piece => TileGrid.Of(piece, layout))];
        var noted = job with { Note = layout.Correction.Words };
        var pageCount = 1 + grids.Sum(grid => grid.PageCount);
        var sheets = ImmutableArray.CreateBuilder<Sheet>(pageCount);
        sheets.Add(MapPage.Of(grids, noted, layout));
        foreach (var grid in grids)
        {
            ImmutableArray<Figure> figures = [.. grid.Figures, .. JoinMarks.Of(grid)];
            foreach (var page in grid.Pages)
            {
                var number = Say.Of($"page {sheets.Count + 1} of {pageCount}");
                sheets.Add(Page(grid, figures, page, noted, number));
            }
        }

        return sheets.ToImmutable();
    }

    /// <summary>How pages of a paper are divided.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="edges">What the printer cannot reach on every side, and how much neighbouring pages show twice.</param>
    /// <param name="correction">For which printer.</param>
    /// <exception cref="ArgumentException">The paper cannot hold the test squares, or is smaller than its margins and overlap.</exception>
    public static PageLayout LayoutOf(PaperSize paper, (double MarginMm, double OverlapMm) edges, PrintCorrection correction)
    {
        var footerMm = PageFooter.HeightMm + (correction.IsNone ? 0 : PageFooter.NoteMm);
        var layout = new PageLayout(paper, edges.MarginMm, edges.OverlapMm, footerMm, correction);
        layout.ThrowIfImpossible();
        if (layout.SmallestWindowSideMm - edges.OverlapMm < TestSquares.InchSideMm + RoomForSquaresMm)
        {
            throw new ArgumentException(FormattableString.Invariant($"{paper.Name} paper with margins of {edges.MarginMm} mm and an overlap of {edges.OverlapMm} mm cannot hold the test squares."), nameof(paper));
        }

        return layout;
    }

    private static Sheet Page(TileGrid grid, ImmutableArray<Figure> figures, (int Row, int Column) place, TileJob job, string number)
    {
        var (layout, isLandscape) = (grid.Plan.Layout, grid.Plan.IsLandscape);
        var (window, label) = (grid.WindowOf(place.Row, place.Column), grid.LabelOf(place.Row, place.Column)!);
        var corner = layout.WindowCornerOf(isLandscape);
        var toPage = corner - window.LowerLeft;
        var shown = Shown(figures, window);
        var edges = new TileEdges(grid, place.Row, place.Column, window.MovedBy(toPage)).Figures;
        var squares = SquarePlace.BestCorner(grid.BodyOf(place.Row, place.Column).MovedBy(toPage), [.. Figures.Moved(shown, toPage), .. edges]);
        var names = (FormattableString.Invariant($"{grid.Piece.Name}-{label}").ToLowerInvariant(), $"{grid.Piece.Title}, {label}");
        return layout.SheetOf(names, isLandscape,
        [
            new Inset(shown, window, corner, Scale: 1),
            .. edges,
            .. TestSquares.At(squares, isLandscape),
            .. PageFooter.Of(layout.FooterOf(isLandscape), job, label, grid.Piece.Title, number),
        ]);
    }

    /// <summary>The figures of which something may show in a window; the rest would only make the file larger.</summary>
    private static ImmutableArray<Figure> Shown(ImmutableArray<Figure> figures, Box window) =>
        [.. figures.Where(figure => !Figures.BoundsOf(figure).Grown(LineRoomMm).Shared(window).IsEmpty)];
}
