using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What falls on level ground, split into what comes from the sun and what comes from the sky.</summary>
/// <param name="Beam">Square to the sun's rays.</param>
/// <param name="Sky">From the sky, on level ground.</param>
public sealed record SplitLight(Irradiance Beam, Irradiance Sky);

/// <summary>Light on a tilted plane.</summary>
public static class PlaneLight
{
    /// <summary>What glass or film throws back more the flatter the rays: ASHRAE 93.</summary>
    private const double Reflecting = 0.05;

    /// <summary>Below it the sun gives next to nothing, and the split is not known.</summary>
    private const double LowestCosine = 0.065;

    private const int Headings = 36;

    /// <summary>The split of what falls on level ground: Erbs, Klein and Duffie 1982.</summary>
    /// <param name="level">On level ground.</param>
    /// <param name="zenith">The sun.</param>
    /// <param name="outside">Outside the air, square to the rays.</param>
    public static SplitLight Split(Irradiance level, Angle zenith, Irradiance outside)
    {
        var cosine = Math.Max(Math.Cos(zenith.Radians), LowestCosine);
        var clearness = Math.Clamp(level.WattsPerSquareMeter / (outside.WattsPerSquareMeter * cosine), 0, 1);
        var k = clearness;
        var part = k <= 0.22 ? 1 - (0.09 * k)
            : k <= 0.80 ? 0.9511 - (0.1604 * k) + (4.388 * k * k) - (16.638 * k * k * k) + (12.336 * k * k * k * k)
            : 0.165;
        var sky = part * level.WattsPerSquareMeter;
        return new(Irradiance.FromWattsPerSquareMeter((level.WattsPerSquareMeter - sky) / cosine), Irradiance.FromWattsPerSquareMeter(sky));
    }

    /// <summary>The sky as seen by a tilted plane, taken as equally bright all over.</summary>
    public static Irradiance OfSky(Irradiance sky, Angle tilt) => sky * ((1 + Math.Cos(tilt.Radians)) / 2);

    /// <summary>What the ground or the water throws back on it.</summary>
    public static Irradiance OfGround(Irradiance level, Ratio albedo, Angle tilt) => level * (albedo.DecimalFractions * (1 - Math.Cos(tilt.Radians)) / 2);

    /// <summary>What passes the panel's face of rays that fall so: ASHRAE 93.</summary>
    public static Ratio Passing(Angle incidence)
    {
        var cosine = Math.Cos(incidence.Radians);
        return Ratio.FromDecimalFractions(cosine <= 0 ? 0 : Math.Max(0, 1 - (Reflecting * ((1 / cosine) - 1))));
    }

    /// <summary>
    /// The mean, over all headings of a boat that swings, of the cosine under which the sun falls on a panel of such a tilt; from behind counts
    /// as nothing.
    /// </summary>
    public static double MeanCosine(Angle tilt, Angle zenith) => Swung(zenith, tilt, incidence => Math.Max(0, Math.Cos(incidence.Radians)));

    /// <summary>The same with what the panel's face throws back.</summary>
    internal static double MeanPassing(Angle tilt, Angle zenith) => Swung(zenith, tilt, Useful);

    /// <summary>What counts of a ray: its cosine, less what the face throws back.</summary>
    internal static double Useful(Angle incidence) => Math.Max(0, Math.Cos(incidence.Radians)) * Passing(incidence).DecimalFractions;

    private static double Swung(Angle zenith, Angle tilt, Func<Angle, double> of)
    {
        var sun = new SunPosition(zenith, Angle.Zero);
        return Enumerable.Range(0, Headings).Average(i => of(sun.Incidence(tilt, Angle.FromDegrees(i * 360.0 / Headings))));
    }
}
