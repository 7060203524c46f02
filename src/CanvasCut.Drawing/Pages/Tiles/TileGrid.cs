using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>A piece laid under the windows of its pages: which page shows which part of the piece's plane.</summary>
/// <remarks>The plane is the piece's own, turned if the plan says so. Row A is the uppermost, column 1 the leftmost.</remarks>
internal sealed class TileGrid
{
    private const int LettersInAlphabet = 26;

    private readonly TilePlacing _placing;

    private TileGrid(TilePiece piece, TilePlacing placing)
    {
        (Piece, _placing) = (piece, placing);
        PieceBounds = Drawing.Figures.BoundsOf(placing.Figures);
        Scales = LongScale.FiguresOf(this);
        Figures = placing.Figures.AddRange(Scales);
    }

    /// <summary>The piece on the fewest pages that its long scales allow.</summary>
    public static TileGrid Of(TilePiece piece, PageLayout layout)
    {
        var grid = new TileGrid(piece, TilePlacing.For(piece, layout));
        return grid.ScalesAreWhole ? grid : new(piece, TilePlacing.Full(piece, PlanOf(piece.Bounds, layout)));
    }

    public TilePiece Piece { get; }

    public TilePlan Plan => _placing.Windows.Plan;

    /// <summary>The piece's figures as they lie on the pages.</summary>
    public ImmutableArray<Figure> PieceFigures => _placing.Figures;

    /// <summary>The box round the piece alone.</summary>
    public Box PieceBounds { get; }

    /// <summary>The piece's figures and the long scales across its joins.</summary>
    public ImmutableArray<Figure> Figures { get; }

    /// <summary>How many pages are printed.</summary>
    public int PageCount => _placing.PageCount;

    /// <summary>The pages that are printed, row by row.</summary>
    public IEnumerable<(int Row, int Column)> Pages => PagesWhere(isPrinted: true);

    /// <summary>What the pages that are not printed would show.</summary>
    public IEnumerable<Box> LeftOut => PagesWhere(isPrinted: false).Select(page => BodyOf(page.Row, page.Column));

    private ImmutableArray<Figure> Scales { get; }

    private bool ScalesAreWhole => !LeftOut.Any(page => Scales.Any(figure => !page.Shared(Drawing.Figures.BoundsOf(figure)).IsEmpty));

    /// <summary>How a piece of such a size is divided.</summary>
    public static TilePlan PlanOf(Box piece, PageLayout layout)
    {
        var extent = TilePlacing.Extent(piece);
        return TilePlan.For(extent.WidthMm, extent.HeightMm, layout);
    }

    /// <inheritdoc cref="TileWindows.WindowOf"/>
    public Box WindowOf(int row, int column) => _placing.Windows.WindowOf(row, column);

    /// <inheritdoc cref="TileWindows.BodyOf"/>
    public Box BodyOf(int row, int column) => _placing.Windows.BodyOf(row, column);

    /// <inheritdoc cref="TileWindows.JoinRightOf"/>
    public double JoinRightOf(int column) => _placing.Windows.JoinRightOf(column);

    /// <inheritdoc cref="TileWindows.JoinBelow"/>
    public double JoinBelow(int row) => _placing.Windows.JoinBelow(row);

    /// <summary>The page's name: the row's letter and the column's number, as in B3; null when no such page is printed.</summary>
    public string? LabelOf(int row, int column) =>
        row >= 0 && row < Plan.Rows && column >= 0 && column < Plan.Columns && _placing.Printed[(row * Plan.Columns) + column]
            ? FormattableString.Invariant($"{RowName(row)}{column + 1}")
            : null;

    private IEnumerable<(int Row, int Column)> PagesWhere(bool isPrinted) =>
        _placing.Printed.Index().Where(page => page.Item == isPrinted).Select(page => (page.Index / Plan.Columns, page.Index % Plan.Columns));

    private static string RowName(int row) =>
        (row < LettersInAlphabet ? string.Empty : RowName((row / LettersInAlphabet) - 1)) + (char)('A' + (row % LettersInAlphabet));
}
