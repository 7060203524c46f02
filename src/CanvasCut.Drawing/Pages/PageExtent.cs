namespace CanvasCut.Drawing.Pages;

/// <summary>A width and a height.</summary>
/// <param name="WidthMm">From left to right.</param>
/// <param name="HeightMm">From bottom to top.</param>
public readonly record struct PageExtent(double WidthMm, double HeightMm)
{
    /// <summary>The same, turned a quarter.</summary>
    public PageExtent Turned() => new(HeightMm, WidthMm);

    /// <summary>The smaller of the two.</summary>
    public double Smaller() => Math.Min(WidthMm, HeightMm);
}
