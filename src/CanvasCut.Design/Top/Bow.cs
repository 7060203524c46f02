using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A bent tube that carries the top across the boat.</summary>
public sealed class Bow
{
    /// <summary>Describes a bow.</summary>
    /// <param name="station">From the top's forward edge to the tube's middle, along the cloth on the centreline; not negative.</param>
    /// <param name="diameter">The tube's outside diameter; above zero.</param>
    /// <param name="halves">The arcs of the cloth over the bow; null when they were not measured.</param>
    /// <param name="height">The middle's height over any level common to all bows; null when it was not measured.</param>
    /// <param name="sagAft">How far the cloth hangs, halfway to the next bow aft, below a straight line; not negative.</param>
    public Bow(Length station, Length diameter, BowHalves? halves, Length? height, Length sagAft)
    {
        Station = Require.NotNegative(station);
        Diameter = Require.Positive(diameter);
        Halves = halves;
        Height = height;
        SagAft = Require.NotNegative(sagAft);
    }

    /// <summary>From the top's forward edge to the tube's middle.</summary>
    public Length Station { get; }

    /// <summary>The tube's outside diameter.</summary>
    public Length Diameter { get; }

    /// <summary>The arcs of the cloth over the bow, which differ where its halves do; null when they were not measured.</summary>
    public BowHalves? Halves { get; }

    /// <summary>The arc of the cloth over the bow, halves evened out; null when it was not measured.</summary>
    public CircularArc? Across => Halves?.Whole;

    /// <summary>The middle's height over a level common to all bows; null when it was not measured.</summary>
    public Length? Height { get; }

    /// <summary>How far the cloth hangs halfway to the next bow aft.</summary>
    public Length SagAft { get; }
}
