using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The single fasteners along an edge.</summary>
public static class SideFasteners
{
    /// <summary>The rims of all fasteners of a flap, on the carrier and on the top.</summary>
    public static ImmutableArray<Box> RimsOf(FlapPlace flap)
    {
        var across = (flap.Parts.Spec?.Diameter ?? UnitsNet.Length.Zero).Millimeters;
        return [.. flap.CentresOnCarrier.Concat(flap.CentresOnTop).Select(centre => Box.Around(centre, across, across))];
    }
}
