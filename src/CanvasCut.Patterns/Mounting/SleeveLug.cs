using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>A lug as it lies pulled tight, in the plan.</summary>
/// <param name="IsOnTop">Whether it belongs to the top's sleeve.</param>
/// <param name="Box">From where its sleeve leaves what it is sewn to, to the far side of the rod.</param>
public sealed record SleeveLug(bool IsOnTop, Box Box)
{
    /// <summary>The lugs of a sleeve in their order; none of other kinds.</summary>
    public static ImmutableArray<SleeveLug> Of(FlapPlace flap) => flap is { Lugs: { } lugs, Parts.Sleeve: { } sleeve }
        ? [.. Enumerable.Range(0, lugs.Count).Select(index => Of(flap, lugs, sleeve, index))]
        : [];

    private static SleeveLug Of(FlapPlace flap, LugRow lugs, SleeveSpec sleeve, int index)
    {
        var (end, isOnTop) = (flap.AsEnd, index % 2 == 1);
        var edge = flap.Outward > 0 ? end.Flap.Bottom + MountSpec.Lap.Millimeters : end.Flap.Top - MountSpec.Lap.Millimeters;
        var (rod, radius) = (sleeve.ToRod.Millimeters, sleeve.Rod.Millimeters / 2);
        var (inner, outer) = isOnTop ? (rod - radius, 2 * rod) : (0, rod + radius);

        // The carrier's first and last lug have a neighbour at one end only.
        var from = index == 0 ? end.Flap.Left : end.Flap.Left + ((lugs.Pitch * index) + (lugs.Gap / 2)).Millimeters;
        var to = index == lugs.Count - 1 ? end.Flap.Right : end.Flap.Left + ((lugs.Pitch * (index + 1)) - (lugs.Gap / 2)).Millimeters;
        return new(isOnTop, flap.Frame.Back(Box.Holding([new(from, edge + (flap.Outward * inner)), new(to, edge + (flap.Outward * outer))])));
    }
}
