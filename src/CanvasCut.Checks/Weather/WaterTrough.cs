using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>A line across the boat, under the carrier, toward which the cloth falls from forward and from aft.</summary>
/// <param name="At">Its place midway between the carrier's sides.</param>
/// <param name="Depth">How far it lies below the lower of the carrier's forward and aft edge.</param>
internal sealed record WaterTrough(TopPlace At, Length Depth)
{
    /// <summary>The carrier's length is looked at in so many steps.</summary>
    private const int Steps = 400;

    /// <summary>A shallower trough is lost in the thickness of the cloth, in millimetres.</summary>
    private const double LeastDepthMm = 1;

    /// <summary>The trough under a carrier; null when there is none.</summary>
    public static WaterTrough? Under(TopSurface surface, Box carrier)
    {
        var places = Enumerable.Range(0, Steps + 1)
            .Select(step => Plan.PlaceOf(new(carrier.Center.X, carrier.Top - (carrier.HeightMm * step / Steps))))
            .Select(place => (Place: place, Height: surface.PointAt(place).Z))
            .ToList();
        var lowest = places.MinBy(each => each.Height);
        var depth = Math.Min(places[0].Height, places[^1].Height) - lowest.Height;
        return depth >= LeastDepthMm ? new(lowest.Place, Length.FromMillimeters(depth)) : null;
    }
}
