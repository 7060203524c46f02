using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>
/// How far a panel's cable runs over the top: from the middle of its box, by its hole if it has one, straight to the nearest edge of the top.
/// </summary>
public static class CableWay
{
    /// <summary>The way; null when the place of the box is not known, nor that of a hole.</summary>
    public static Length? Of(TopCloth top, MountedShape mounted)
    {
        ArgumentNullException.ThrowIfNull(top);
        ArgumentNullException.ThrowIfNull(mounted);
        return (mounted.JunctionBox?.Center, mounted.CableExit) switch
        {
            ({ } box, { } exit) => Length.FromMillimeters(box.DistanceMm(exit) + ToEdgeMm(top, exit)),
            ({ } box, null) => Length.FromMillimeters(ToEdgeMm(top, box)),
            (null, { } exit) => Length.FromMillimeters(ToEdgeMm(top, exit)),
            _ => null,
        };
    }

    private static double ToEdgeMm(TopCloth top, Point from)
    {
        var corners = Plan.OutlineOf(top).Corners;
        return corners.Select((corner, i) => ToEdgeMm(from, corner, corners[(i + 1) % corners.Length])).Min();
    }

    private static double ToEdgeMm(Point from, Point start, Point end)
    {
        var (along, to) = (end - start, from - start);
        var part = Math.Clamp(((to.X * along.X) + (to.Y * along.Y)) / ((along.X * along.X) + (along.Y * along.Y)), 0, 1);
        return from.DistanceMm(start + (along * part));
    }
}
