using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>Prints pieces true to size over pages that are joined afterwards.</summary>
public static class TilePages
{
    /// <summary>How far beyond its points a line may still show; half the widest line, rounded up.</summary>
    private const double LineRoomMm = 1;

    /// <summary>The squares stand between the joins with a little room round them.</summary>
    private const double RoomForSquaresMm = 2;

    /// <summary>The map page, then each piece's pages row by row.</summary>
    /// <param name="pieces">The pieces, each at least one figure.</param>
    /// <param name="job">What stands on every page.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="marginMm">What the printer cannot reach, on every side; nothing is drawn there.</param>
    /// <param name="overlapMm">How much neighbouring pages show twice.</param>
    /// <remarks>The scale is 1. A piece that one page can hold, upright or turned, is never cut by a join.</remarks>
    /// <exception cref="ArgumentException">The paper cannot hold the test squares, or is smaller than its margins and overlap.</exception>
    public static ImmutableArray<Sheet> Of(ImmutableArray<TilePiece> pieces, TileJob job, PaperSize paper, double marginMm, double overlapMm)
    {
        var layout = LayoutOf(paper, marginMm, overlapMm);
        ImmutableArray<TileGrid> grids = [.. pieces.Select(piece => new TileGrid(piece, layout))];
        var pageCount = 1 + grids.Sum(grid => grid.Plan.PageCount);
        var sheets = ImmutableArray.CreateBuilder<Sheet>(pageCount);
        sheets.Add(MapPage.Of(grids, job, layout));
        foreach (var grid in grids)
        {
            for (var i = 0; i < grid.Plan.PageCount; i++)
            {
                var number = FormattableString.Invariant($"page {sheets.Count + 1} of {pageCount}");
                sheets.Add(Page(grid, i / grid.Plan.Columns, i % grid.Plan.Columns, job, number));
            }
        }

        return sheets.ToImmutable();
    }

    /// <summary>How <see cref="Of"/> divides its pages.</summary>
    /// <exception cref="ArgumentException">As there.</exception>
    public static PageLayout LayoutOf(PaperSize paper, double marginMm, double overlapMm)
    {
        var layout = new PageLayout(paper, marginMm, overlapMm, PageFooter.HeightMm);
        layout.ThrowIfImpossible();
        if (layout.SmallestWindowSideMm - overlapMm < TestSquares.InchSideMm + RoomForSquaresMm)
        {
            throw new ArgumentException(FormattableString.Invariant($"{paper.Name} paper with margins of {marginMm} mm and an overlap of {overlapMm} mm cannot hold the test squares."), nameof(paper));
        }

        return layout;
    }

    private static Sheet Page(TileGrid grid, int row, int column, TileJob job, string number)
    {
        var layout = grid.Plan.Layout;
        var page = layout.PageSizeMm(grid.Plan.IsLandscape);
        var (window, label) = (grid.WindowOf(row, column), grid.LabelOf(row, column)!);
        var corner = new Point(layout.MarginMm, layout.MarginMm + layout.FooterMm);
        var onPage = window.MovedBy(corner - window.LowerLeft);
        var shown = Shown([.. grid.Figures, .. JoinMarks.Of(grid)], window);
        var edges = new TileEdges(grid, row, column, onPage).Figures;
        var squares = SquarePlace.BestCorner(grid.BodyOf(row, column).MovedBy(corner - window.LowerLeft), [.. Figures.Moved(shown, corner - window.LowerLeft), .. edges]);
        return new(
            FormattableString.Invariant($"{grid.Piece.Name}-{label}").ToLowerInvariant(),
            $"{grid.Piece.Title}, {label}",
            page.WidthMm,
            page.HeightMm,
            [
                new Inset(shown, window, corner, Scale: 1),
                .. edges,
                .. TestSquares.At(squares),
                .. PageFooter.Of(layout.FooterOf(grid.Plan.IsLandscape), job, label, grid.Piece.Title, number),
            ]);
    }

    /// <summary>The figures of which something may show in a window; the rest would only make the file larger.</summary>
    private static ImmutableArray<Figure> Shown(ImmutableArray<Figure> figures, Box window) =>
        [.. figures.Where(figure => !Figures.BoundsOf(figure).Grown(LineRoomMm).Shared(window).IsEmpty)];
}
