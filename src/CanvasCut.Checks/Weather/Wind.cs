using UnitsNet;
using UnitsNet.Units;

namespace CanvasCut.Checks;

/// <summary>What wind is and does.</summary>
public static class Wind
{
    /// <summary>Of air at sea level and 15 °C, in kg/m³: ISO 2533, from memory.</summary>
    private const double AirDensity = 1.225;

    /// <summary>The first whole knot of the forces 1 to 12 of the World Meteorological Organization's Beaufort scale.</summary>
    private static readonly double[] FromKnots = [1, 4, 7, 11, 17, 22, 28, 34, 41, 48, 56, 64];

    /// <summary>The same in metres a second.</summary>
    private static readonly double[] FromMetersPerSecond = [0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7];

    /// <summary>The dynamic pressure q = ½·ρ·v², about 0.613·v² in Pa with v in m/s.</summary>
    public static Pressure Pressure(Speed speed) => UnitsNet.Pressure.FromPascals(AirDensity / 2 * speed.MetersPerSecond * speed.MetersPerSecond);

    /// <summary>The force on the Beaufort scale, 0 to 12.</summary>
    /// <remarks>
    /// The scale's own edges in knots and in metres a second do not quite agree (16 kn is force 4, and 8.0 m/s, a little
    /// less, is force 5); a speed in knots is rounded to whole knots and held against the edges in knots, any other against
    /// those in metres a second.
    /// </remarks>
    public static int Beaufort(Speed speed) => speed.Unit == SpeedUnit.Knot
        ? FromKnots.Count(edge => Math.Round(speed.Knots, MidpointRounding.AwayFromZero) >= edge)
        : FromMetersPerSecond.Count(edge => speed.MetersPerSecond >= edge - 1e-9);
}
