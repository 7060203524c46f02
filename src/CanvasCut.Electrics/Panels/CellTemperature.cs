using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>How hot cells become: King and others, SAND2004-3535.</summary>
public static class CellTemperature
{
    /// <summary>With air behind the panel.</summary>
    public static Temperature FreeBack(Irradiance sun, Temperature air, Speed wind) => Of((-3.56, -0.0750, 3), sun, air, wind);

    /// <summary>With nothing but cloth or foam behind the panel: the hotter bound, to be used for voltages.</summary>
    public static Temperature BlockedBack(Irradiance sun, Temperature air, Speed wind) => Of((-2.81, -0.0455, 0), sun, air, wind);

    /// <summary>By another published model, for a panel with air behind it: Faiman 2008.</summary>
    public static Temperature Faiman(Irradiance sun, Temperature air, Speed wind) =>
        Temperature.FromDegreesCelsius(air.DegreesCelsius + (sun.WattsPerSquareMeter / (25 + (6.84 * wind.MetersPerSecond))));

    /// <summary>With what King and others measured behind a panel of some kind.</summary>
    public static Temperature Of((double A, double B, double Step) back, Irradiance sun, Temperature air, Speed wind)
    {
        var light = sun.WattsPerSquareMeter;
        return Temperature.FromDegreesCelsius(
            (light * Math.Exp(back.A + (back.B * wind.MetersPerSecond))) + air.DegreesCelsius + (light / 1000 * back.Step));
    }
}
