using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Everything that is mounted, in the plan of the top; see <see cref="Plan"/>.</summary>
/// <param name="Panel">The panel the way it lies; of several the first.</param>
/// <param name="CarrierBox">The finished carrier.</param>
/// <param name="PanelBox">That panel's outline without its rounded corners.</param>
/// <param name="CellBox">Its cell area.</param>
/// <param name="Fastened">What holds and covers it.</param>
public sealed record MountedShape(MountedPanel Panel, Box CarrierBox, Box PanelBox, Box CellBox, MountedFastenings Fastened)
{
    /// <summary>The panel's name where it lies in a row; that of a top's only mounting where it does not.</summary>
    public MountingName PanelName { get; init; } = MountingName.Only;

    /// <summary>The panels that lie in a row after the first; none where there is one.</summary>
    public ImmutableArray<PlacedPanel> Others { get; init; } = [];

    /// <summary>All panels, from port to starboard or from forward to aft.</summary>
    public ImmutableArray<PlacedPanel> Panels => [new(PanelName, Panel, PanelBox, CellBox), .. Others];

    /// <summary>The box around all panels.</summary>
    public Box RowBox => Others.Aggregate(PanelBox, (all, other) => all.Joined(other.Box));

    /// <summary>The cells of all panels.</summary>
    public ImmutableArray<Box> Cells => [.. Panels.Select(panel => panel.Cells)];

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
        Others = [.. Others.Select(other => other.MovedBy(step))],
        Fastened = Fastened.MovedBy(step),
    };

    /// <summary>The same mounting with the carrier's middle at a place.</summary>
    public MountedShape At(TopPlace place) => MovedBy(Plan.Of(place) - CarrierBox.Center);

    /// <summary>What a job mounts when the panel's long side lies a given way, with the carrier's middle at the origin.</summary>
    public static MountedShape Of(CarrierJob job, LongSide longSide)
    {
        var (row, border) = (RowLayout.Of(job, longSide), job.Carrier.Border);
        var carrier = Box.Around(
            new(0, 0),
            (row.Athwart + border.Port + border.Starboard).Millimeters,
            (row.ForeAft + border.Forward + border.Aft).Millimeters);
        var inside = Inside(carrier, border);
        ImmutableArray<PlacedPanel> panels = [.. row.Seats.Select(seat => row.Seats.Length == 1 ? Placed(seat, inside) : Placed(seat, BoxOf(seat, inside)))];
        return new(panels[0].Lies, carrier, panels[0].Box, panels[0].Cells, MountedFastenings.For(carrier, panels, job)) { PanelName = panels[0].Name, Others = panels[1..] };
    }

    private static PlacedPanel Placed(RowSeat seat, Box box) => new(seat.Name, seat.Panel, box, Inside(box, seat.Panel.Fittings.DeadBorder));

    private static Box BoxOf(RowSeat seat, Box row) => new(
        row.Left + seat.FromPort.Millimeters,
        row.Top - seat.FromForward.Millimeters - seat.Panel.ForeAft.Millimeters,
        row.Left + seat.FromPort.Millimeters + seat.Panel.Athwart.Millimeters,
        row.Top - seat.FromForward.Millimeters);

    /// <summary>A box set in by a distance a side.</summary>
    public static Box Inside(Box box, Sides<Length> by) => new(
        box.Left + by.Port.Millimeters,
        box.Bottom + by.Aft.Millimeters,
        box.Right - by.Starboard.Millimeters,
        box.Top - by.Forward.Millimeters);
}
