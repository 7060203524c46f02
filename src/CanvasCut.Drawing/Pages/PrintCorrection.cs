using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>What a printer made of the 100 mm square, and by how much pages are stretched to make up for it.</summary>
/// <param name="ReadXMm">The side along the sheet's short side, as measured on paper; above zero.</param>
/// <param name="ReadYMm">The side along the sheet's long side.</param>
/// <remarks>
/// The error is the printer's, across its paper and along it. So x and y belong to the sheet of paper, whichever way
/// round a page is printed on it and whichever way a piece lies on the page.
/// </remarks>
public sealed record PrintCorrection(double ReadXMm, double ReadYMm)
{
    /// <summary>For a printer that is true.</summary>
    public static PrintCorrection None { get; } = new(TestSquares.MetricSideMm, TestSquares.MetricSideMm);

    /// <summary>Whether nothing is corrected.</summary>
    public bool IsNone => this == None;

    /// <summary>By how much a page is stretched along the sheet's short side.</summary>
    public double FactorX => TestSquares.MetricSideMm / ReadXMm;

    /// <summary>By how much it is stretched along the sheet's long side.</summary>
    public double FactorY => TestSquares.MetricSideMm / ReadYMm;

    /// <summary>What every corrected page says; empty when nothing is corrected.</summary>
    public string Words => IsNone
        ? string.Empty
        : Say.Of($"corrected x {FactorX:0.0000}, y {FactorY:0.0000} for a printer that read {ReadXMm:0.##} and {ReadYMm:0.##}");

    /// <summary>The factors from left to right and from bottom to top of a page.</summary>
    internal PageExtent FactorsOn(bool isLandscape) => isLandscape ? new(FactorY, FactorX) : new(FactorX, FactorY);
}
