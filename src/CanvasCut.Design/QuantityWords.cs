using System.Globalization;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Quantities that are not lengths, as people read them and as programs read them.</summary>
public static class QuantityWords
{
    /// <summary>As in "35 kn (18 m/s)"; rounded for reading, never for reckoning.</summary>
    public static string Of(IQuantity quantity) => quantity switch
    {
        Speed speed => Text($"{speed.Knots:0.#} kn ({speed.MetersPerSecond:0.#} m/s)"),
        Force force => Text($"{force.Newtons:0.#} N ({force.PoundsForce:0.#} lbf)"),
        ForcePerLength line => Text($"{line.NewtonsPerMeter:0} N/m ({line.PoundsForcePerInch:0.##} lbf/in)"),
        Pressure pressure => Text($"{pressure.Pascals:0} Pa ({pressure.PoundsForcePerSquareInch:0.###} psi)"),
        Temperature temperature => Text($"{Near(temperature.DegreesCelsius):0.#} °C ({Near(temperature.DegreesFahrenheit):0} °F)"),
        TemperatureDelta delta => Text($"{Near(delta.DegreesCelsius):0.#} °C ({Near(delta.DegreesFahrenheit):0.#} °F)"),
        Duration duration => Text($"{duration.Hours:0.#} h"),
        Angle angle => Text($"{Near(angle.Degrees):0.0}°"),
        Scalar count => Text($"{count.Amount:0.##}"),
        Length length => LengthText.Of(length, PrintUnits.Both),
        _ => throw new ArgumentException($"{quantity.QuantityInfo.Name} has no words.", nameof(quantity)),
    };

    /// <summary>The number in the unit that results.json gives, with that unit.</summary>
    public static (double Number, string Unit) Plain(IQuantity quantity) => quantity switch
    {
        Speed speed => (speed.Knots, "kn"),
        Force force => (force.Newtons, "N"),
        ForcePerLength line => (line.NewtonsPerMeter, "N/m"),
        Pressure pressure => (pressure.Pascals, "Pa"),
        Temperature temperature => (temperature.DegreesCelsius, "C"),
        TemperatureDelta delta => (delta.DegreesCelsius, "C"),
        Duration duration => (duration.Hours, "h"),
        Angle angle => (angle.Degrees, "deg"),
        Scalar count => (count.Amount, "count"),
        Length length => (length.Millimeters, "mm"),
        _ => throw new ArgumentException($"{quantity.QuantityInfo.Name} has no plain unit.", nameof(quantity)),
    };

    /// <summary>Without a minus before a zero.</summary>
    private static double Near(double number) => Math.Round(number, 1) + 0.0;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
