using System.Collections.Immutable;

namespace CanvasCut.Drawing.Pages;

/// <summary>On how many pages, and which way round, a piece is printed true to size.</summary>
/// <remarks>Pure arithmetic. Of the four ways (paper upright or on its side, piece upright or turned a quarter) the one with the fewest pages.</remarks>
public sealed record TilePlan
{
    /// <summary>What a window may fall short by rounding alone; a hundredth of the thinnest line.</summary>
    internal const double RoundingMm = 1e-6;

    private TilePlan(PageExtent content, PageLayout layout, bool isLandscape, bool isTurned)
    {
        (Layout, IsLandscape, IsTurned) = (layout, isLandscape, isTurned);
        Content = isTurned ? content.Turned() : content;
        Window = layout.WindowSizeMm(isLandscape);
        Columns = CountOf(Content.WidthMm, Window.WidthMm);
        Rows = CountOf(Content.HeightMm, Window.HeightMm);
    }

    /// <summary>The paper, margins and overlap planned for.</summary>
    public PageLayout Layout { get; }

    /// <summary>Whether the paper lies on its side.</summary>
    public bool IsLandscape { get; }

    /// <summary>Whether the piece is turned a quarter turn to the left.</summary>
    public bool IsTurned { get; }

    /// <summary>The piece's size as it lies on the pages.</summary>
    public PageExtent Content { get; }

    /// <summary>The part of the piece's plane that one page shows.</summary>
    public PageExtent Window { get; }

    /// <summary>How many pages lie side by side: ceil((W − o)/(u − o)), at least one.</summary>
    public int Columns { get; }

    /// <summary>How many pages lie one above the other, by the same rule.</summary>
    public int Rows { get; }

    /// <summary>How many pages there are.</summary>
    public int PageCount => Columns * Rows;

    /// <summary>What all pages together show, wider than the piece by what the last ones have to spare.</summary>
    public PageExtent Covered => new(CoverOf(Columns, Window.WidthMm), CoverOf(Rows, Window.HeightMm));

    /// <summary>The plan with the fewest pages; of equals the one with upright paper, then the one with the piece upright.</summary>
    /// <exception cref="ArgumentException">The paper is smaller than its margins and overlap.</exception>
    public static TilePlan For(double widthMm, double heightMm, PageLayout layout) =>
        Ways(new(widthMm, heightMm), layout).MinBy(way => way.PageCount)!;

    /// <summary>The plans for all four ways round.</summary>
    /// <exception cref="ArgumentException">The paper is smaller than its margins and overlap.</exception>
    internal static ImmutableArray<TilePlan> Ways(PageExtent content, PageLayout layout) =>
    [
        Of(content, layout, isLandscape: false, isTurned: false),
        Of(content, layout, isLandscape: false, isTurned: true),
        Of(content, layout, isLandscape: true, isTurned: false),
        Of(content, layout, isLandscape: true, isTurned: true),
    ];

    /// <summary>The plan for one way round.</summary>
    /// <exception cref="ArgumentException">The paper is smaller than its margins and overlap.</exception>
    public static TilePlan Of(PageExtent content, PageLayout layout, bool isLandscape, bool isTurned)
    {
        layout.ThrowIfImpossible();
        return new(content, layout, isLandscape, isTurned);
    }

    private int CountOf(double contentMm, double windowMm) =>
        Math.Max(1, (int)Math.Ceiling((contentMm - Layout.OverlapMm - RoundingMm) / (windowMm - Layout.OverlapMm)));

    private double CoverOf(int pages, double windowMm) => (pages * (windowMm - Layout.OverlapMm)) + Layout.OverlapMm;
}
