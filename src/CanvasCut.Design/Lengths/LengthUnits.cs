using CanvasCut.Language;

namespace CanvasCut.Design;

/// <summary>The units that a length may be written in.</summary>
internal static class LengthUnits
{
    public const decimal Inch = LengthText.MillimetresPerInch;
    public const decimal Foot = 12 * Inch;

    private static readonly Dictionary<string, decimal> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mm"] = 1,
        ["millimetre"] = 1,
        ["millimetres"] = 1,
        ["millimeter"] = 1,
        ["millimeters"] = 1,
        ["cm"] = 10,
        ["centimetre"] = 10,
        ["centimetres"] = 10,
        ["centimeter"] = 10,
        ["centimeters"] = 10,
        ["m"] = 1000,
        ["metre"] = 1000,
        ["metres"] = 1000,
        ["meter"] = 1000,
        ["meters"] = 1000,
        ["in"] = Inch,
        ["inch"] = Inch,
        ["inches"] = Inch,
        ["\""] = Inch,
        ["ft"] = Foot,
        ["foot"] = Foot,
        ["feet"] = Foot,
        ["'"] = Foot,
        ["yd"] = 3 * Foot,
        ["yard"] = 3 * Foot,
        ["yards"] = 3 * Foot,
    };

    /// <summary>How many millimetres a unit has, or null for an unknown one.</summary>
    public static decimal? MillimetresIn(string unit) => Known.TryGetValue(unit.TrimEnd('.'), out var size) ? size : null;

    /// <summary>What is wrong with an unknown unit.</summary>
    public static string Unknown(string unit) => NearestWord.To(unit, Known.Keys) is { } near
        ? Say.Of($"has the unknown unit {unit}; did you mean {near}?")
        : Say.Of($"has the unknown unit {unit}; write mm, cm, m, in, ft or yd");
}
