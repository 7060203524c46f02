using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The clear strip between two carriers with all that holds them, in which hands, zipper pulls and cables need room.</summary>
internal static class BetweenCarriers
{
    /// <summary>The distance of every pair.</summary>
    public static ImmutableArray<Clearance> Of(CarrierJob first, ImmutableArray<PlacedMounting> placed) =>
    [
        .. from one in placed.Index()
           from other in placed.Skip(one.Index + 1)
           select Of(one.Item, other, first.Limits.BetweenCarriers.Millimeters),
    ];

    /// <summary>What must be kept between two that are moved: one lies clear to port, to starboard, forward or aft of the other.</summary>
    /// <param name="one">The extent of one, its middle at the origin, and its place.</param>
    /// <param name="other">The same of the other.</param>
    /// <param name="neededMm">How wide the strip must be.</param>
    public static SpareChoice Choice((Box Extent, PlaceUnknowns At) one, (Box Extent, PlaceUnknowns At) other, double neededMm)
    {
        LinearSpare Way(Step unit, double oneMm, double otherMm) =>
            new([.. one.At.Along(unit, 0).Terms, .. other.At.Along(unit * -1, 0).Terms], oneMm - otherMm - neededMm);
        return new(
        [
            Way(new(1, 0), one.Extent.Left, other.Extent.Right),
            Way(new(-1, 0), -one.Extent.Right, -other.Extent.Left),
            Way(new(0, 1), one.Extent.Bottom, other.Extent.Top),
            Way(new(0, -1), -one.Extent.Top, -other.Extent.Bottom),
        ]);
    }

    private static Clearance Of(PlacedMounting one, PlacedMounting other, double neededMm)
    {
        var (names, extents) = ((one.Job.Mounting, other.Job.Mounting), (one.Fit.Mounted.Extent, other.Fit.Mounted.Extent));
        return Clearance.OfMm(ClearanceKind.Between, Say.Of($"{names.Item1} and {names.Item2}"), extents.Item1.DistanceMm(extents.Item2), neededMm)
            .Between(new(PartKind.Panel, names.Item1), new(PartKind.Panel, names.Item2));
    }
}
