using System.Globalization;

namespace CanvasCut.Export.Svg;

/// <summary>Numbers as SVG wants them.</summary>
internal static class SvgNumber
{
    /// <summary>A number with up to four decimals, never with an exponent and never "-0".</summary>
    public static string Text(double value)
    {
        var rounded = Math.Round(value, 4);
        return rounded == 0 ? "0" : rounded.ToString("0.####", CultureInfo.InvariantCulture);
    }
}
