using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The hole for the cable and the patch that strengthens the carrier round it, where the mounting lies.</summary>
/// <param name="Middle">The middle of the hole.</param>
/// <param name="Radius">Half its diameter.</param>
/// <param name="Patch">The finished patch.</param>
/// <param name="IsUnderPanel">Whether the panel lies over the hole or over the flange round it, so that nobody reaches it once the panel is bonded.</param>
public sealed record CableHole(Point Middle, Length Radius, Box Patch, bool IsUnderPanel)
{
    /// <summary>What the flange of a gland or a grommet takes round the hole; from memory.</summary>
    public static readonly Length Rim = Length.FromMillimeters(6);

    /// <summary>Cloth round the hole on every side, where there is room; common practice, no source.</summary>
    public static readonly Length AroundHole = Length.FromInches(1.5);

    /// <summary>Which panel's cable it is; nothing where the carrier has one panel.</summary>
    public MountingName Panel { get; init; } = MountingName.Only;

    /// <summary>Whether the cable comes from a box on the panel's face.</summary>
    public bool IsFromFace { get; init; }

    /// <summary>The holes of a mounting, in the order of its panels; none of a panel whose cable leaves over the edge.</summary>
    public static ImmutableArray<CableHole> All(CarrierJob job, MountedShape mounted)
    {
        ArgumentNullException.ThrowIfNull(mounted);
        ImmutableArray<Box> panels = [.. mounted.Panels.Select(panel => panel.Box)];
        return [.. EachPanel.Of(job, mounted).Select(each => Of(each.Job, each.Mounted, panels)).OfType<CableHole>()];
    }

    private static CableHole? Of(CarrierJob job, MountedShape mounted, ImmutableArray<Box> panels)
    {
        if (mounted.CableExit is not { } middle || mounted.Panel.Fittings.CableExit is not { } exit)
        {
            return null;
        }

        var reach = exit.Diameter + (Rim * 2);
        var flange = Box.Around(middle, reach.Millimeters, reach.Millimeters);
        var isUnderPanel = panels.Any(panel => HasRoom(flange.Shared(panel)));
        var square = Pushed(middle, (exit.Diameter + (AroundHole * 2)).Millimeters, mounted.CarrierBox);
        return new(middle, exit.Diameter / 2, isUnderPanel ? square : Fitted(job, mounted, panels, (middle, square)) ?? square, isUnderPanel) { Panel = job.PanelName, IsFromFace = mounted.Panel.Fittings.JunctionBox is { IsAtBack: false } };
    }

    private static bool HasRoom(Box box) => box.WidthMm > 0 && box.HeightMm > 0;

    /// <summary>The square round the hole, pushed inward until it lies inside the carrier's finished edges.</summary>
    private static Box Pushed(Point middle, double sideMm, Box carrier)
    {
        var room = carrier.Grown(-sideMm / 2);
        return Box.Around(
            room.IsEmpty ? carrier.Center : new(Math.Clamp(middle.X, room.Left, room.Right), Math.Clamp(middle.Y, room.Bottom, room.Top)), sideMm, sideMm);
    }

    /// <summary>The square cut off at the hems and at the edge of each panel; null when too little is left for the flange and the rows.</summary>
    private static Box? Fitted(CarrierJob job, MountedShape mounted, ImmutableArray<Box> panels, (Point Middle, Box Square) hole)
    {
        var exit = mounted.Panel.Fittings.CableExit!.Diameter;
        var least = (exit + ((Rim + StitchRows.FromFold) * 2)).Millimeters;
        var (inside, needed) = (MountedShape.Inside(mounted.CarrierBox, FinishedBands(job)), Box.Around(hole.Middle, least, least));
        return panels.Aggregate((Box?)hole.Square, (left, panel) => left is { } room ? Beside(panel, inside).Select(side => (Box?)side.Shared(room)).FirstOrDefault(side => side!.Value.Holds(needed)) : null);
    }

    private static Box[] Beside(Box panel, Box inside) =>
    [
        inside with { Bottom = panel.Top },
        inside with { Top = panel.Bottom },
        inside with { Right = panel.Left },
        inside with { Left = panel.Right },
    ];

    /// <summary>How far the hem or the binding of each edge reaches over the carrier.</summary>
    public static Sides<Length> FinishedBands(CarrierJob job) => Sides.Of(side => job.Carrier.Edges[side] == EdgeFinish.Hem
        ? job.Carrier.Hem.Width
        : job.Workshop.Supplies.Tapes.Binding.Width / 2);
}
