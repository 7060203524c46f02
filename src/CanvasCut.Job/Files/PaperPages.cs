using CanvasCut.Design;
using CanvasCut.Drawing.Pages;

namespace CanvasCut.Job;

/// <summary>How a job's paper is divided.</summary>
internal static class PaperPages
{
    public static PageLayout LayoutOf(PaperSpec paper) => TilePages.LayoutOf(
        new(paper.Name, paper.Width.Millimeters, paper.Height.Millimeters),
        (paper.Margin.Millimeters, paper.Overlap.Millimeters),
        paper.Readings is { } readings ? new(readings.X.Millimeters, readings.Y.Millimeters) : PrintCorrection.None);
}
