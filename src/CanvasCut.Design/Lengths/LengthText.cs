using System.Globalization;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Lengths as people write and read them.</summary>
/// <remarks>
/// An inch is 25.4 mm, a foot 304.8 mm and a yard 914.4 mm, exactly (international yard and pound agreement, 1959).
/// Printed lengths are rounded half away from zero, limits as <see cref="LimitWords"/> has it, and never depend on the culture.
/// </remarks>
public static class LengthText
{
    internal const decimal MillimetresPerInch = 25.4m;

    /// <summary>Reads a length such as 1040 mm, 41 1/2 in or 3' 5 1/2"; a sign may stand before it.</summary>
    /// <remarks>Exact to a billionth of a millimetre, hence exact at every 1/64 in.</remarks>
    public static LengthReading Parse(string text) => LengthParser.Parse(text);

    /// <summary>In millimetres to one decimal, as in 1040 mm or 38.1 mm.</summary>
    public static string Millimetres(Length length) => Millimetres(length, RoundTo.Nearest);

    private static string Millimetres(Length length, RoundTo way)
    {
        var rounded = Rounded.Decimals(length.Millimeters, 1, way);
        return Invariant(rounded == 0 ? 0 : rounded, "0.#") + " mm";
    }

    /// <summary>In inches and a reduced fraction, as in 41 1/2 in.</summary>
    public static string Inches(Length length, InchFraction finest) => Inches(length, finest, RoundTo.Nearest);

    private static string Inches(Length length, InchFraction finest, RoundTo way)
    {
        var parts = Parts(length, finest, way);
        return Sign(parts) + Mixed(Math.Abs(parts), PerInch(finest)) + " in";
    }

    /// <summary>In feet, inches and a reduced fraction, as in 3 ft 5 1/2 in; inches alone below a foot, feet alone when whole.</summary>
    public static string FeetAndInches(Length length, InchFraction finest = InchFraction.Sixteenth)
    {
        var parts = Parts(length, finest, RoundTo.Nearest);
        var (feet, rest) = Math.DivRem(Math.Abs(parts), 12 * PerInch(finest));
        var inches = Mixed(rest, PerInch(finest)) + " in";
        return Sign(parts) + (feet == 0 ? inches : rest == 0 ? Whole(feet) + " ft" : $"{Whole(feet)} ft {inches}");
    }

    /// <summary>In the units asked for, as in 1040 mm (40 15/16 in); inches to 1/16.</summary>
    public static string Of(Length length, PrintUnits units) => InUnits(length, units, InchFraction.Sixteenth, RoundTo.Nearest);

    /// <summary>In the units asked for, inches to 1/32: for parts that mate.</summary>
    public static string OfMating(Length length, PrintUnits units) => InUnits(length, units, InchFraction.ThirtySecond, RoundTo.Nearest);

    /// <summary>A plain text that reads back as the same length: whole millimetres, else inches to 1/64, else millimetres with decimals.</summary>
    /// <remarks>The same to a billionth of a millimetre.</remarks>
    public static string Exact(Length length)
    {
        var millimetres = Math.Round((decimal)length.Millimeters, LengthParser.Decimals);
        var isOnRule = millimetres % (MillimetresPerInch / 64) == 0;
        return isOnRule && millimetres != decimal.Truncate(millimetres)
            ? Inches(length, InchFraction.SixtyFourth)
            : Invariant(millimetres == 0 ? 0 : millimetres, "0.#########") + " mm";
    }

    internal static string InUnits(Length length, PrintUnits units, InchFraction finest, RoundTo way) => units switch
    {
        PrintUnits.Metric => Millimetres(length, way),
        PrintUnits.Imperial => Inches(length, finest, way),
        _ => $"{Millimetres(length, way)} ({Inches(length, finest, way)})",
    };

    private static long Parts(Length length, InchFraction finest, RoundTo way) =>
        (long)Rounded.Steps((decimal)length.Millimeters * PerInch(finest) / MillimetresPerInch, way);

    private static int PerInch(InchFraction finest) => 16 << (int)finest;

    private static string Sign(long parts) => parts < 0 ? "-" : string.Empty;

    private static string Mixed(long parts, int perInch)
    {
        var (whole, numerator) = Math.DivRem(parts, perInch);
        if (numerator == 0)
        {
            return Whole(whole);
        }

        var common = (long)System.Numerics.BigInteger.GreatestCommonDivisor(numerator, perInch);
        var fraction = $"{Whole(numerator / common)}/{Whole(perInch / common)}";
        return whole == 0 ? fraction : $"{Whole(whole)} {fraction}";
    }

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Invariant(decimal number, string format) => number.ToString(format, CultureInfo.InvariantCulture);
}
