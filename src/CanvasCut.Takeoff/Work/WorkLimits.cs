using System.Globalization;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Limits of temperature in the words of a step, in the job's units, rounded to the safe side.</summary>
internal static class WorkLimits
{
    /// <summary>What is lost when a number is carried from one unit to another.</summary>
    private const double RoundOff = 1e-6;

    /// <summary>Not colder than this.</summary>
    public static string AtLeast(Temperature limit, PrintUnits units) => Of(Up(limit.DegreesCelsius, 10), Up(limit.DegreesFahrenheit, 1), units);

    /// <summary>No less above something than this.</summary>
    public static string AtLeast(TemperatureDelta limit, PrintUnits units) => Of(Up(limit.DegreesCelsius, 10), Up(limit.DegreesFahrenheit, 10), units);

    /// <summary>Not hotter than this.</summary>
    public static string AtMost(Temperature limit, PrintUnits units) => Of(-Up(-limit.DegreesCelsius, 10), -Up(-limit.DegreesFahrenheit, 1), units);

    private static double Up(double number, int parts) => Math.Ceiling((number * parts) - RoundOff) / parts;

    private static string Of(double celsius, double fahrenheit, PrintUnits units) => units switch
    {
        PrintUnits.Metric => string.Create(CultureInfo.InvariantCulture, $"{celsius:0.#} °C"),
        PrintUnits.Imperial => string.Create(CultureInfo.InvariantCulture, $"{fahrenheit:0.#} °F"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{celsius:0.#} °C ({fahrenheit:0.#} °F)"),
    };
}
