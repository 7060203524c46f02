using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>How a page is divided: margin all round, a footer strip, and the window that shows the piece.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="MarginMm">What the printer cannot reach, on every side.</param>
/// <param name="OverlapMm">How much neighbouring pages show twice.</param>
/// <param name="FooterMm">The strip below the window, kept free of the piece.</param>
/// <param name="Correction">For which printer; null for a true one.</param>
/// <remarks>
/// Everything but <see cref="PaperSizeMm"/> is in millimetres as they come out of the printer. A page that is to be
/// stretched for a printer that shrinks therefore has room for less, and nothing of it gets into the margin.
/// </remarks>
public sealed record PageLayout(PaperSize Paper, double MarginMm, double OverlapMm, double FooterMm = 0, PrintCorrection? Correction = null)
{
    /// <summary>For which printer the pages are stretched.</summary>
    public PrintCorrection Correction { get; } = Correction ?? PrintCorrection.None;

    /// <summary>Whether neighbouring pages can follow each other in both orientations of the paper.</summary>
    public bool IsPossible =>
        MarginMm >= 0 && OverlapMm >= 0 && FooterMm >= 0 && SmallestWindowSideMm > OverlapMm;

    /// <summary>The shortest side that the window has in either orientation.</summary>
    public double SmallestWindowSideMm =>
        Math.Min(WindowSizeMm(isLandscape: false).Smaller(), WindowSizeMm(isLandscape: true).Smaller());

    /// <summary>The sheet's size as the printer is told of it.</summary>
    public PageExtent PaperSizeMm(bool isLandscape) =>
        isLandscape ? new(Paper.HeightMm, Paper.WidthMm) : new(Paper.WidthMm, Paper.HeightMm);

    /// <summary>The part of a page within its margins, from the page's lower left corner.</summary>
    public Box PrintableOf(bool isLandscape)
    {
        var (page, factors) = (PaperSizeMm(isLandscape), Correction.FactorsOn(isLandscape));
        var (left, bottom) = (MarginMm / factors.WidthMm, MarginMm / factors.HeightMm);
        return new(left, bottom, (page.WidthMm / factors.WidthMm) - left, (page.HeightMm / factors.HeightMm) - bottom);
    }

    /// <summary>The size of the window that shows the piece.</summary>
    public PageExtent WindowSizeMm(bool isLandscape)
    {
        // Subtracted in turn: a box cannot tell of paper that is smaller than its margins.
        var (page, factors) = (PaperSizeMm(isLandscape), Correction.FactorsOn(isLandscape));
        return new((page.WidthMm - (2 * MarginMm)) / factors.WidthMm, ((page.HeightMm - (2 * MarginMm)) / factors.HeightMm) - FooterMm);
    }

    /// <summary>Where the window's lower left corner is on the page.</summary>
    public Point WindowCornerOf(bool isLandscape) => PrintableOf(isLandscape).LowerLeft + new Step(0, FooterMm);

    /// <summary>Where the footer strip is on the page.</summary>
    public Box FooterOf(bool isLandscape)
    {
        var printable = PrintableOf(isLandscape);
        return printable with { Top = printable.Bottom + FooterMm };
    }

    /// <summary>What the sheet's axis from left to right is called: x along its short side, y along its long side.</summary>
    public static string AcrossName(bool isLandscape) => isLandscape ? "y" : "x";

    /// <summary>What the sheet's axis from bottom to top is called.</summary>
    public static string UpName(bool isLandscape) => isLandscape ? "x" : "y";

    /// <summary>A finished page: its figures stretched for the printer.</summary>
    internal Sheet SheetOf((string Name, string Title) names, bool isLandscape, ImmutableArray<Figure> figures)
    {
        var (page, factors) = (PaperSizeMm(isLandscape), Correction.FactorsOn(isLandscape));
        return new(names.Name, names.Title, page.WidthMm, page.HeightMm, Correction.IsNone ? figures : Figures.Stretched(figures, factors.WidthMm, factors.HeightMm));
    }

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
