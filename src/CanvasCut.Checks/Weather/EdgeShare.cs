using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>How the edges that are held share what lifts the carrier.</summary>
/// <remarks>
/// Each bears the part of the carrier that lies nearest to it (tributary areas, common practice, no source). Between the
/// forward and the aft edge alone that is half each. A held side bears a triangle or a trapezoid: of a carrier H long, with w
/// the width that falls to the side (all of it when one side is held, half when both are), H²/4 when w is at least H/2, else
/// w·H − w². The ends share the rest.
/// </remarks>
internal static class EdgeShare
{
    /// <summary>The share of an edge; those of all edges add up to 1.</summary>
    public static double Of(EdgePlace edge, MountedShape mounted)
    {
        var side = OfSide(mounted.CarrierBox, mounted.Fastened.Sides.Length);
        return edge.IsEnd ? (1 - (mounted.Fastened.Sides.Length * side)) / 2 : side;
    }

    private static double OfSide(Box carrier, int sides)
    {
        if (sides == 0)
        {
            return 0;
        }

        var (length, wide) = (carrier.HeightMm, carrier.WidthMm / sides);
        var area = wide >= length / 2 ? length * length / 4 : (wide * length) - (wide * wide);
        return area / (carrier.WidthMm * length);
    }
}
