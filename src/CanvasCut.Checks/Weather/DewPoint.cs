using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>The temperature at which dew falls.</summary>
public static class DewPoint
{
    private const double A = 17.62;
    private const double B = 243.12;

    /// <summary>
    /// The Magnus formula over water, with the coefficients of D. Sonntag, 1990, that the World Meteorological
    /// Organization's Guide (WMO-No. 8) gives; good from about -45 to 60 °C.
    /// </summary>
    /// <param name="air">The air.</param>
    /// <param name="humidity">Relative humidity; above 0, at most 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such humidity.</exception>
    public static Temperature Of(Temperature air, RelativeHumidity humidity)
    {
        if (humidity.Percent is not (> 0 and <= 100))
        {
            throw new ArgumentOutOfRangeException(nameof(humidity), humidity, "Must be above 0 and at most 100 %.");
        }

        var t = air.DegreesCelsius;
        var gamma = Math.Log(humidity.Percent / 100) + (A * t / (B + t));
        return Temperature.FromDegreesCelsius(B * gamma / (A - gamma));
    }
}
