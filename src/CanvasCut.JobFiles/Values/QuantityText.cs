using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Reads quantities that are not lengths, and tells any quantity's size for comparing.</summary>
internal static partial class QuantityText
{
    /// <summary>A mass, a speed or a percentage, as the kind says; null when the text is none.</summary>
    public static object? Parse(FieldKind kind, string text) =>
        kind == FieldKind.Mass ? Mass(text)
        : kind == FieldKind.Speed ? Speed(text)
        : Percent(text);

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

    /// <summary>A percentage as a part of one; null when the text is none.</summary>
    public static double? Percent(string text) => Split(text) is (var number, "%") ? number / 100 : null;

    /// <summary>A size to compare within one kind: millimetres, kilograms, metres a second, parts of one, or the number itself.</summary>
    public static double SizeOf(object value) => value switch
    {
        Length length => length.Millimeters,
        Mass mass => mass.Kilograms,
        Speed speed => speed.MetersPerSecond,
        int count => count,
        _ => (double)value,
    };

    /// <summary>The size of an end of a usual range, which is written as in a file.</summary>
    public static double SizeOf(FieldKind kind, string text) => kind switch
    {
        FieldKind.Mass => SizeOf(Mass(text)!.Value),
        FieldKind.Speed => SizeOf(Speed(text)!.Value),
        FieldKind.Percent or FieldKind.Share => Percent(text)!.Value,
        FieldKind.Count or FieldKind.Factor => double.Parse(text, CultureInfo.InvariantCulture),
        _ => SizeOf(LengthText.Parse(text).Value!.Value),
    };

    private static (double Number, string Unit)? Split(string text)
    {
        var match = NumberAndUnit().Match(text);
        return match.Success
            ? (double.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture), match.Groups[2].Value)
            : null;
    }

    [GeneratedRegex(@"^\s*(-?[0-9]{1,9}(?:\.[0-9]{1,9})?)\s*([a-z/%]+)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberAndUnit();
}
