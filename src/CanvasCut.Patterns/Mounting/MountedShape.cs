using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Everything that is mounted, in the plan of the top; see <see cref="Plan"/>.</summary>
/// <param name="Panel">The panel the way it lies.</param>
/// <param name="CarrierBox">The finished carrier.</param>
/// <param name="PanelBox">The panel's outline without its rounded corners.</param>
/// <param name="CellBox">The cell area.</param>
/// <param name="Fastened">What holds and covers it.</param>
public sealed record MountedShape(MountedPanel Panel, Box CarrierBox, Box PanelBox, Box CellBox, MountedFastenings Fastened)
{
    /// <summary>The junction box; null when its place is not known.</summary>
    public Box? JunctionBox => Panel.Fittings.JunctionBox is { } box
        ? new Box(
            PanelBox.Left + box.FromPort.Millimeters,
            PanelBox.Top - box.FromForward.Millimeters - box.ForeAft.Millimeters,
            PanelBox.Left + box.FromPort.Millimeters + box.Athwart.Millimeters,
            PanelBox.Top - box.FromForward.Millimeters)
        : null;

    /// <summary>The middle of the hole for the cable; null when there is none.</summary>
    public Point? CableExit => Panel.Fittings.CableExit is { } exit
        ? new Point(PanelBox.Left + exit.FromPort.Millimeters, PanelBox.Top - exit.FromForward.Millimeters)
        : null;

    /// <summary>The outlines of all that lies on the top: carrier, fastenings, pockets and strips.</summary>
    public ImmutableArray<Outline> Parts =>
    [
        Outline.Of(CarrierBox),
        .. Fastened.Edges.Select(edge => Outline.Of(edge.Band)),
        .. Fastened.Pockets.Select(pocket => pocket.Outline),
        .. Fastened.Strips.Select(strip => Outline.Of(strip.Finished)),
    ];

    /// <summary>The box round each of these; a pocket's box holds a little more than the pocket, on the safe side.</summary>
    public ImmutableArray<Box> Bounds => [.. Parts.Select(part => part.Bounds)];

    /// <summary>The box around all of it.</summary>
    public Box Extent => Parts.Select(part => part.Bounds).Aggregate((all, next) => all.Joined(next));

    /// <summary>Whether the carrier or what holds its edges lies on a band of cloth, such as that over a tube.</summary>
    public bool LiesOn(Box band) =>
        !CarrierBox.Shared(band).IsEmpty || Fastened.Edges.Any(edge => !edge.Band.Shared(band).IsEmpty);

    /// <summary>The carrier and what holds its sides, which a tube under it crosses.</summary>
    public Box WithSides => Fastened.Sides.Aggregate(CarrierBox, (all, side) => all.Joined(side.Band));

    /// <summary>The same mounting elsewhere.</summary>
    public MountedShape MovedBy(Step step) => this with
    {
        CarrierBox = CarrierBox.MovedBy(step),
        PanelBox = PanelBox.MovedBy(step),
        CellBox = CellBox.MovedBy(step),
        Fastened = Fastened.MovedBy(step),
    };

    /// <summary>The same mounting with the carrier's middle at a place.</summary>
    public MountedShape At(TopPlace place) => MovedBy(Plan.Of(place) - CarrierBox.Center);

    /// <summary>What a job mounts when the panel's long side lies a given way, with the carrier's middle at the origin.</summary>
    public static MountedShape Of(CarrierJob job, LongSide longSide)
    {
        var panel = MountedPanel.Of(job.Panel, longSide);
        var border = job.Carrier.Border;
        var carrier = Box.Around(
            new(0, 0),
            (panel.Athwart + border.Port + border.Starboard).Millimeters,
            (panel.ForeAft + border.Forward + border.Aft).Millimeters);
        var panelBox = Inside(carrier, border);
        var cells = Inside(panelBox, panel.Fittings.DeadBorder);
        return new(panel, carrier, panelBox, cells, MountedFastenings.For(carrier, cells, panel, job));
    }

    /// <summary>A box set in by a distance a side.</summary>
    public static Box Inside(Box box, Sides<Length> by) => new(
        box.Left + by.Port.Millimeters,
        box.Bottom + by.Aft.Millimeters,
        box.Right - by.Starboard.Millimeters,
        box.Top - by.Forward.Millimeters);
}
