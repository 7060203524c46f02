using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>How a page is divided: margin all round, a footer strip, and the window that shows the piece.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="MarginMm">What the printer cannot reach, on every side.</param>
/// <param name="OverlapMm">How much neighbouring pages show twice.</param>
/// <param name="FooterMm">The strip below the window, kept free of the piece.</param>
public sealed record PageLayout(PaperSize Paper, double MarginMm, double OverlapMm, double FooterMm = 0)
{
    /// <summary>Whether neighbouring pages can follow each other in both orientations of the paper.</summary>
    public bool IsPossible =>
        MarginMm >= 0 && OverlapMm >= 0 && FooterMm >= 0 && SmallestWindowSideMm > OverlapMm;

    /// <summary>The shortest side that the window has in either orientation.</summary>
    public double SmallestWindowSideMm =>
        Math.Min(WindowSizeMm(isLandscape: false).Smaller(), WindowSizeMm(isLandscape: true).Smaller());

    /// <summary>The page's size.</summary>
    public PageExtent PageSizeMm(bool isLandscape) =>
        isLandscape ? new(Paper.HeightMm, Paper.WidthMm) : new(Paper.WidthMm, Paper.HeightMm);

    /// <summary>The size of the window that shows the piece.</summary>
    public PageExtent WindowSizeMm(bool isLandscape)
    {
        var page = PageSizeMm(isLandscape);
        return new(page.WidthMm - (2 * MarginMm), page.HeightMm - (2 * MarginMm) - FooterMm);
    }

    /// <summary>Where the footer strip is on the page.</summary>
    public Box FooterOf(bool isLandscape) =>
        new(MarginMm, MarginMm, PageSizeMm(isLandscape).WidthMm - MarginMm, MarginMm + FooterMm);

    /// <summary>Throws unless <see cref="IsPossible"/>.</summary>
    /// <exception cref="ArgumentException">The paper is too small for its margins, footer and overlap, or one is negative.</exception>
    public void ThrowIfImpossible()
    {
        if (!IsPossible)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{Paper.Name} paper is too small for margins of {MarginMm} mm, a footer of {FooterMm} mm and an overlap of {OverlapMm} mm."));
        }
    }
}
