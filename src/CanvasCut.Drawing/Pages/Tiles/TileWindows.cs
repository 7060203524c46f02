using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>Which page shows which part of the piece's plane, once it is known where the first page begins.</summary>
/// <param name="Plan">How many pages, and of what size.</param>
/// <param name="UpperLeft">The upper left corner of the first page's window.</param>
internal readonly record struct TileWindows(TilePlan Plan, Point UpperLeft)
{
    private double StepXMm => Plan.Window.WidthMm - Plan.Layout.OverlapMm;

    private double StepYMm => Plan.Window.HeightMm - Plan.Layout.OverlapMm;

    /// <summary>The part of the plane that a page shows.</summary>
    public Box WindowOf(int row, int column)
    {
        var (left, top) = (UpperLeft.X + (column * StepXMm), UpperLeft.Y - (row * StepYMm));
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
}
