using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The fasteners along the port and the starboard edge, which pass over tubes; none may sit on one.</summary>
public static class SideFasteners
{
    /// <summary>Of each side that has fasteners, the one nearest to a tube.</summary>
    internal static IEnumerable<(ClearanceKind Kind, string Subject, Box Part)> NearestTo(Box tube, MountedShape mounted) =>
        mounted.Fastened.Flaps
            .Where(flap => !flap.IsEnd && flap.Fasteners is not null)
            .Select(flap => (ClearanceKind.TubeMount, Say.Of($"nearest of {flap.Name}"), RimsOf(flap).MinBy(rim => rim.DistanceInYMm(tube))));

    /// <summary>The rims of all fasteners of a flap, on the carrier and on the top.</summary>
    public static ImmutableArray<Box> RimsOf(FlapPlace flap)
    {
        var across = (flap.Parts.Spec?.Diameter ?? UnitsNet.Length.Zero).Millimeters;
        return [.. flap.CentresOnCarrier.Concat(flap.CentresOnTop).Select(centre => Box.Around(centre, across, across))];
    }
}
