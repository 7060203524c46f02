using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>A panel where it lies on the carrier.</summary>
/// <param name="Name">Its name; that of a top's only mounting where a carrier has one panel.</param>
/// <param name="Lies">The panel the way it lies.</param>
/// <param name="Box">Its outline without its rounded corners.</param>
/// <param name="Cells">Its cell area.</param>
public sealed record PlacedPanel(MountingName Name, MountedPanel Lies, Box Box, Box Cells)
{
    /// <summary>The same elsewhere.</summary>
    public PlacedPanel MovedBy(Step step) => this with { Box = Box.MovedBy(step), Cells = Cells.MovedBy(step) };
}

/// <summary>A carrier as if one of its panels lay on it alone, for what is asked of each panel by itself.</summary>
/// <param name="Job">The job of that panel.</param>
/// <param name="Mounted">The carrier with all that holds it, and that panel.</param>
public sealed record EachPanel(CarrierJob Job, MountedShape Mounted)
{
    /// <summary>One for each panel of a carrier; of one panel the carrier as it is.</summary>
    public static ImmutableArray<EachPanel> Of(CarrierJob job, MountedShape mounted)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(mounted);
        return job.Row is null ? [new(job, mounted)] : [.. mounted.Panels.Index().Select(each => new EachPanel(job.OfPanel(each.Index), With(mounted, each.Item)))];
    }

    private static MountedShape With(MountedShape mounted, PlacedPanel panel) =>
        mounted with { Panel = panel.Lies, PanelBox = panel.Box, CellBox = panel.Cells, Others = [] };
}
