using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Reads temperatures, in job files and on the command line.</summary>
public static class TemperatureText
{
    /// <summary>A temperature in C or F, as in "20 C", "68F" or "20 °C"; null when the text is none.</summary>
    public static Temperature? Of(string text) => QuantityText.Split(text) switch
    {
        (var number, "C" or "°C") => Temperature.FromDegreesCelsius(number),
        (var number, "F" or "°F") => Temperature.FromDegreesFahrenheit(number),
        _ => null,
    };

    /// <summary>A difference of temperature in C or F; null when the text is none.</summary>
    internal static TemperatureDelta? Step(string text) => QuantityText.Split(text) switch
    {
        (var number, "C" or "°C") => TemperatureDelta.FromDegreesCelsius(number),
        (var number, "F" or "°F") => TemperatureDelta.FromDegreesFahrenheit(number),
        _ => null,
    };
}
