using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A bent tube that carries the top across the boat.</summary>
public sealed class Bow
{
    /// <summary>Describes a bow.</summary>
    /// <param name="station">From the top's forward edge to the tube's middle, along the cloth on the centreline; not negative.</param>
    /// <param name="diameter">The tube's outside diameter; above zero.</param>
    /// <param name="across">The arc of the cloth over the bow, in millimetres; null when it was not measured.</param>
    /// <param name="height">The middle's height over any level common to all bows; null when it was not measured.</param>
    public Bow(Length station, Length diameter, CircularArc? across, Length? height)
    {
        Station = Require.NotNegative(station);
        Diameter = Require.Positive(diameter);
        Across = across;
        Height = height;
    }

    /// <summary>From the top's forward edge to the tube's middle.</summary>
    public Length Station { get; }

    /// <summary>The tube's outside diameter.</summary>
    public Length Diameter { get; }

    /// <summary>The arc of the cloth over the bow; null when it was not measured.</summary>
    public CircularArc? Across { get; }

    /// <summary>The middle's height over a level common to all bows; null when it was not measured.</summary>
    public Length? Height { get; }
}
