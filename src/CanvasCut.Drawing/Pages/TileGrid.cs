using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>A piece laid under the windows of its pages: which page shows which part of the piece's plane.</summary>
/// <remarks>The plane is the piece's own, turned if the plan says so. Row A is the uppermost, column 1 the leftmost.</remarks>
internal sealed class TileGrid
{
    /// <summary>Half the widest line, so that a line on the edge of the piece is printed whole.</summary>
    public const double EdgeMm = 0.25;

    /// <summary>How far from the page's edge the piece begins where there is room to spare.</summary>
    private const double LargestInsetMm = 5;

    private const int LettersInAlphabet = 26;

    private readonly Point _upperLeft;

    public TileGrid(TilePiece piece, PageLayout layout)
    {
        Piece = piece;
        Plan = PlanOf(piece.Bounds, layout);
        PieceFigures = Plan.IsTurned ? Drawing.Figures.Turned(piece.Figures, 1) : piece.Figures;
        PieceBounds = Drawing.Figures.BoundsOf(PieceFigures);
        Bounds = PieceBounds.Grown(EdgeMm);
        var covered = Plan.Covered;
        _upperLeft = new(
            Bounds.Left - Spare(covered.WidthMm - Bounds.WidthMm, Plan.Columns),
            Bounds.Top + Spare(covered.HeightMm - Bounds.HeightMm, Plan.Rows));
        Figures = PieceFigures.AddRange(LongScale.FiguresOf(this));
    }

    public TilePiece Piece { get; }

    public TilePlan Plan { get; }

    /// <summary>The piece's figures as they lie on the pages.</summary>
    public ImmutableArray<Figure> PieceFigures { get; }

    /// <summary>The box round the piece alone.</summary>
    public Box PieceBounds { get; }

    /// <summary>The piece's figures and the long scales across its joins.</summary>
    public ImmutableArray<Figure> Figures { get; }

    /// <summary>The box round them, line widths included.</summary>
    public Box Bounds { get; }

    /// <summary>How a piece of such a size is divided.</summary>
    public static TilePlan PlanOf(Box piece, PageLayout layout) =>
        TilePlan.For(piece.WidthMm + (2 * EdgeMm), piece.HeightMm + (2 * EdgeMm), layout);

    private double StepXMm => Plan.Window.WidthMm - Plan.Layout.OverlapMm;

    private double StepYMm => Plan.Window.HeightMm - Plan.Layout.OverlapMm;

    /// <summary>The part of the plane that a page shows.</summary>
    public Box WindowOf(int row, int column)
    {
        var (left, top) = (_upperLeft.X + (column * StepXMm), _upperLeft.Y - (row * StepYMm));
        return new(left, top - Plan.Window.HeightMm, left + Plan.Window.WidthMm, top);
    }

    /// <summary>The part of a page's window up to its joins: what is left of it in the joined sheet.</summary>
    public Box BodyOf(int row, int column)
    {
        var (window, halfMm) = (WindowOf(row, column), Plan.Layout.OverlapMm / 2);
        return new(
            window.Left + (column > 0 ? halfMm : 0),
            window.Bottom + (row + 1 < Plan.Rows ? halfMm : 0),
            window.Right - (column + 1 < Plan.Columns ? halfMm : 0),
            window.Top - (row > 0 ? halfMm : 0));
    }

    /// <summary>The middle of the strip that a column shares with the next: where the two are joined.</summary>
    public double JoinRightOf(int column) => WindowOf(0, column).Right - (Plan.Layout.OverlapMm / 2);

    /// <summary>The middle of the strip that a row shares with the next one below.</summary>
    public double JoinBelow(int row) => WindowOf(row, 0).Bottom + (Plan.Layout.OverlapMm / 2);

    /// <summary>The page's name: the row's letter and the column's number, as in B3; null when there is no such page.</summary>
    public string? LabelOf(int row, int column) =>
        row >= 0 && row < Plan.Rows && column >= 0 && column < Plan.Columns
            ? FormattableString.Invariant($"{RowName(row)}{column + 1}")
            : null;

    private static string RowName(int row) =>
        (row < LettersInAlphabet ? string.Empty : RowName((row / LettersInAlphabet) - 1)) + (char)('A' + (row % LettersInAlphabet));

    /// <summary>A piece on one page stands in its middle; a larger one begins near the edge, so that the spare room is in one place.</summary>
    private static double Spare(double spareMm, int pages) => pages == 1 ? spareMm / 2 : Math.Min(spareMm / 2, LargestInsetMm);
}
