using System.Globalization;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Quantities that are not lengths, as people read them and as programs read them.</summary>
public static class QuantityWords
{
    /// <summary>As in "35 kn (18 m/s)"; rounded for reading, never for reckoning.</summary>
    public static string Of(IQuantity quantity) => Of(quantity, RoundTo.Nearest);

    /// <summary>The same, rounded to a side in every unit.</summary>
    internal static string Of(IQuantity quantity, RoundTo way)
    {
        string Number(double number, int decimals, string format = "0.###") =>
            (Rounded.Decimals(number, decimals, way) + 0m).ToString(format, CultureInfo.InvariantCulture);
        return quantity switch
        {
            Speed speed => $"{Number(speed.Knots, 1)} kn ({Number(speed.MetersPerSecond, 1)} m/s)",
            Force force => $"{Number(force.Newtons, 1)} N ({Number(force.PoundsForce, 1)} lbf)",
            ForcePerLength line => $"{Number(line.NewtonsPerMeter, 0)} N/m ({Number(line.PoundsForcePerInch, 2)} lbf/in)",
            Pressure pressure => $"{Number(pressure.Pascals, 0)} Pa ({Number(pressure.PoundsForcePerSquareInch, 3)} psi)",
            Temperature temperature => $"{Number(temperature.DegreesCelsius, 1)} °C ({Number(temperature.DegreesFahrenheit, 0)} °F)",
            TemperatureDelta delta => $"{Number(delta.DegreesCelsius, 1)} °C ({Number(delta.DegreesFahrenheit, 1)} °F)",
            Duration duration => $"{Number(duration.Hours, 1)} h",
            Angle angle => $"{Number(angle.Degrees, 1, "0.0")}°",
            Scalar count => Number(count.Amount, 2),
            Length length => LengthText.InUnits(length, PrintUnits.Both, InchFraction.Sixteenth, way),
            _ => throw new ArgumentException($"{quantity.QuantityInfo.Name} has no words.", nameof(quantity)),
        };
    }

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
}
