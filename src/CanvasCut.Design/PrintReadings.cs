using System.Globalization;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The sides of the printed 100 mm square as measured on paper.</summary>
/// <remarks>What exists is near enough to 100 mm to be corrected; <see cref="Complaint"/> tells beforehand.</remarks>
public sealed record PrintReadings
{
    /// <summary>The most that is corrected; more is a wrong setting, which may change from page to page.</summary>
    private const double MostPart = 0.03;

    /// <summary>Further off than by so much it is not that square that was read.</summary>
    private const double ImplausiblePart = 0.3;

    private const double RoundingPart = 1e-9;

    /// <summary>Both readings.</summary>
    /// <param name="x">Along the sheet's short side.</param>
    /// <param name="y">Along its long side.</param>
    /// <exception cref="ArgumentException">One of them cannot be corrected.</exception>
    public PrintReadings(Length x, Length y)
    {
        if ((Complaint(x) ?? Complaint(y)) is { } complaint)
        {
            throw new ArgumentException($"A reading {complaint}");
        }

        (X, Y) = (x, y);
    }

    /// <summary>The true side.</summary>
    public static Length Nominal { get; } = Length.FromMillimeters(100);

    /// <summary>The side along the sheet's short side.</summary>
    public Length X { get; }

    /// <summary>The side along the sheet's long side.</summary>
    public Length Y { get; }

    /// <summary>What is wrong with a reading, to follow its name in a message; null when it can be corrected.</summary>
    public static string? Complaint(Length reading)
    {
        var part = (Nominal / reading) - 1;
        return !double.IsFinite(part) || Math.Abs((reading / Nominal) - 1) > ImplausiblePart
            ? Say.Of($"is no reading of the 100 mm square: {LengthText.Of(reading, PrintUnits.Both)}.")
            : Math.Abs(part) > MostPart + RoundingPart
            ? Say.Of($"would take a correction of {100 * part:0.0} %; 3 % is the most. Find what fits the page to the paper, print at 100 % and measure again.")
            : null;
    }

    /// <summary>A reading as typed: a plain number of millimetres, or a length with its unit.</summary>
    /// <param name="text">Such as 99.2 or "3 15/16 in".</param>
    public static LengthReading Parse(string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm)
            ? LengthText.Parse(FormattableString.Invariant($"{mm} mm"))
            : LengthText.Parse(text);
}
