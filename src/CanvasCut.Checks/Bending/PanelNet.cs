using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Places of the top under the panel.</summary>
internal static class PanelNet
{
    /// <summary>From its forward to its aft edge and from port to starboard, evenly, edges included.</summary>
    /// <param name="mounted">What is mounted.</param>
    /// <param name="stations">How many along the boat; at least two.</param>
    /// <param name="offsets">How many across; at least two.</param>
    public static IEnumerable<TopPlace> Places(MountedShape mounted, int stations, int offsets)
    {
        var box = mounted.PanelBox;
        return
            from row in Enumerable.Range(0, stations)
            from column in Enumerable.Range(0, offsets)
            select At(-box.Top + (box.HeightMm * row / (stations - 1)), box.Left + (box.WidthMm * column / (offsets - 1)));
    }

    /// <summary>A place by its station and offset.</summary>
    public static TopPlace At(double stationMm, double offsetMm) => new(Length.FromMillimeters(stationMm), Length.FromMillimeters(offsetMm));
}
