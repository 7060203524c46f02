using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>The fasteners along the port and the starboard edge, which pass over tubes; none may sit on one.</summary>
internal static class SideFasteners
{
    /// <summary>Of each side that has fasteners, the one nearest to a tube.</summary>
    public static IEnumerable<(string Code, string Subject, Box Part)> NearestTo(Box tube, MountedShape mounted) =>
        mounted.Fastened.Flaps
            .Where(flap => !flap.IsEnd && flap.Fasteners is not null)
            .Select(flap => (CheckCodes.TubeMount, Say.Of($"nearest of {flap.Name}"), RimsOf(flap).MinBy(rim => Clearance.AlongMm(rim, tube))));

    /// <summary>The rims of all fasteners of a flap, on the carrier and on the top.</summary>
    public static IEnumerable<Box> RimsOf(FlapPlace flap)
    {
        var across = (flap.Parts.Spec?.Diameter ?? UnitsNet.Length.Zero).Millimeters;
        return flap.CentresOnCarrier.Concat(flap.CentresOnTop).Select(centre => Box.Around(centre, across, across));
    }
}
