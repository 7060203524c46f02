using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The fasteners along the port and the starboard edge, which pass over tubes; none may sit on one.</summary>
public static class SideFasteners
{
    /// <summary>The fasteners of each side that has some; the nearest to a tube counts.</summary>
    internal static IEnumerable<TubePart> Of(MountedShape mounted, PartKeys keys) =>
        mounted.Fastened.Flaps
            .Where(flap => !flap.IsEnd && flap.Fasteners is not null)
            .Select(flap => new TubePart(ClearanceKind.TubeMount, keys.Fastening(flap.Side), Say.Of($"nearest of {flap.Name}"), RimsOf(flap)));

    /// <summary>The rims of all fasteners of a flap, on the carrier and on the top.</summary>
    public static ImmutableArray<Box> RimsOf(FlapPlace flap)
    {
        var across = (flap.Parts.Spec?.Diameter ?? UnitsNet.Length.Zero).Millimeters;
        return [.. flap.CentresOnCarrier.Concat(flap.CentresOnTop).Select(centre => Box.Around(centre, across, across))];
    }
}
