using System.Globalization;

namespace CanvasCut.Design;

/// <summary>To which side a printed number is rounded.</summary>
public enum RoundTo
{
    /// <summary>The nearest step, half away from zero: for what is measured and cut.</summary>
    Nearest,

    /// <summary>Never more: for what may be at most so much.</summary>
    Down,

    /// <summary>Never less: for what must be at least so much.</summary>
    Up,
}

/// <summary>The one place where printed numbers are rounded.</summary>
internal static class Rounded
{
    /// <summary>A number that lies on a step but for what its units have lost stays on it.</summary>
    private const decimal RoundOff = 1e-7m;

    /// <summary>Whole steps.</summary>
    public static decimal Steps(decimal steps, RoundTo way) => way switch
    {
        RoundTo.Down => Math.Floor(steps + RoundOff),
        RoundTo.Up => Math.Ceiling(steps - RoundOff),
        _ => Math.Round(steps, MidpointRounding.AwayFromZero),
    };

    /// <summary>A number with so many decimals.</summary>
    public static decimal Decimals(double number, int decimals, RoundTo way)
    {
        var step = 1m / (decimal)Math.Pow(10, decimals);
        return Steps((decimal)number / step, way) * step;
    }

    /// <summary>The same as a text, without the minus of a zero.</summary>
    public static string Text(double number, int decimals, RoundTo way, string format) =>
        (Decimals(number, decimals, way) + 0m).ToString(format, CultureInfo.InvariantCulture);
}
