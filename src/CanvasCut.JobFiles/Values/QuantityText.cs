using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Reads quantities that are not lengths, and tells any quantity's size for comparing.</summary>
internal static partial class QuantityText
{
    /// <summary>A quantity that is no length, as the kind says; null when the text is none.</summary>
    public static object? Parse(FieldKind kind, string text) => kind switch
    {
        FieldKind.Mass => Mass(text),
        FieldKind.Speed => Speed(text),
        FieldKind.Force => Force(text),
        FieldKind.Pressure => Pressure(text),
        FieldKind.Temperature => TemperatureText.Of(text),
        FieldKind.TemperatureStep => TemperatureText.Step(text),
        FieldKind.Angle => Angle(text),
        FieldKind.Duration => Duration(text),
        FieldKind.Humidity => Percent(text) is { } part ? RelativeHumidity.FromPercent(part * 100) : null,
        _ => Percent(text),
    };

    /// <summary>A force in N, lbf or kgf; null when the text is none.</summary>
    public static Force? Force(string text) => Split(text) switch
    {
        (var number, "N") => UnitsNet.Force.FromNewtons(number),
        (var number, "lbf") => UnitsNet.Force.FromPoundsForce(number),
        (var number, "kgf") => UnitsNet.Force.FromKilogramsForce(number),
        _ => null,
    };

    /// <summary>A pressure in kPa, Pa or psi; null when the text is none.</summary>
    public static Pressure? Pressure(string text) => Split(text) switch
    {
        (var number, "kPa") => UnitsNet.Pressure.FromKilopascals(number),
        (var number, "Pa") => UnitsNet.Pressure.FromPascals(number),
        (var number, "psi") => UnitsNet.Pressure.FromPoundsForcePerSquareInch(number),
        _ => null,
    };

    /// <summary>An angle in degrees; null when the text is none.</summary>
    public static Angle? Angle(string text) => Split(text) is (var number, "deg" or "°") ? UnitsNet.Angle.FromDegrees(number) : null;

    /// <summary>A mass in kg, g, lb or oz; null when the text is none.</summary>
    public static Mass? Mass(string text) => Split(text) switch
    {
        (var number, "kg") => UnitsNet.Mass.FromKilograms(number),
        (var number, "g") => UnitsNet.Mass.FromGrams(number),
        (var number, "lb" or "lbs") => UnitsNet.Mass.FromPounds(number),
        (var number, "oz") => UnitsNet.Mass.FromOunces(number),
        _ => null,
    };

    /// <summary>A speed in kn, m/s, mph or km/h; null when the text is none.</summary>
    public static Speed? Speed(string text) => Split(text) switch
    {
        (var number, "kn" or "kt" or "knots") => UnitsNet.Speed.FromKnots(number),
        (var number, "m/s") => UnitsNet.Speed.FromMetersPerSecond(number),
        (var number, "mph") => UnitsNet.Speed.FromMilesPerHour(number),
        (var number, "km/h") => UnitsNet.Speed.FromKilometersPerHour(number),
        _ => null,
    };

    /// <summary>A time in h, min or days; null when the text is none.</summary>
    public static Duration? Duration(string text) => Split(text) switch
    {
        (var number, "h" or "hours" or "hour") => UnitsNet.Duration.FromHours(number),
        (var number, "min" or "minutes") => UnitsNet.Duration.FromMinutes(number),
        (var number, "days" or "day" or "d") => UnitsNet.Duration.FromDays(number),
        _ => null,
    };

    /// <summary>A percentage as a part of one; null when the text is none.</summary>
    public static double? Percent(string text) => Split(text) is (var number, "%") ? number / 100 : null;

    /// <summary>A size to compare within one kind: millimetres, kilograms, metres a second, newtons, kilopascals, degrees, hours, per cent of humidity, parts of one, or the number itself.</summary>
    public static double SizeOf(object value) => value switch
    {
        Length length => length.Millimeters,
        Mass mass => mass.Kilograms,
        Speed speed => speed.MetersPerSecond,
        Force force => force.Newtons,
        Pressure pressure => pressure.Kilopascals,
        Temperature temperature => temperature.DegreesCelsius,
        TemperatureDelta step => step.DegreesCelsius,
        RelativeHumidity humidity => humidity.Percent,
        Angle angle => angle.Degrees,
        Duration duration => duration.Hours,
        int count => count,
        _ => (double)value,
    };

    /// <summary>The size of an end of a usual range, which is written as in a file.</summary>
    public static double SizeOf(FieldKind kind, string text) => kind switch
    {
        FieldKind.Mass or FieldKind.Speed or FieldKind.Percent or FieldKind.Share or FieldKind.Force or FieldKind.Pressure or FieldKind.Temperature
            or FieldKind.TemperatureStep or FieldKind.Duration or FieldKind.Humidity or FieldKind.Angle => SizeOf(Parse(kind, text)!),
        FieldKind.Count or FieldKind.Factor => double.Parse(text, CultureInfo.InvariantCulture),
        _ => SizeOf(LengthText.Parse(text).Value!.Value),
    };

    /// <summary>A number and what stands behind it; null when the text is not so.</summary>
    public static (double Number, string Unit)? Split(string text)
    {
        var match = NumberAndUnit().Match(text);
        return match.Success
            ? (double.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture), match.Groups[2].Value)
            : null;
    }

    [GeneratedRegex(@"^\s*(-?[0-9]{1,9}(?:\.[0-9]{1,9})?)\s*([a-zA-Z/%°]+)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberAndUnit();
}
