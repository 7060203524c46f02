using System.Globalization;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How somebody writes lengths, so that a new length can be written in the same way.</summary>
/// <remarks>Rounded to 0.1 mm, to 0.01 in, or to the finest fraction that was used, at least 1/16 in: none coarser than a tape is read.</remarks>
public sealed class LengthForm
{
    private const int SmallestUsual = 16;
    private readonly Style _style;
    private readonly InchFraction _finest;

    private LengthForm(Style style, InchFraction finest = InchFraction.Sixteenth) => (_style, _finest) = (style, finest);

    private enum Style
    {
        Millimetres,
        Centimetres,
        Metres,
        InchDecimals,
        InchFractions,
        FeetAndInches,
    }

    /// <summary>Millimetres.</summary>
    public static LengthForm Millimetres { get; } = new(Style.Millimetres);

    /// <summary>The form of a text that is a length.</summary>
    public static LengthForm Of(string text)
    {
        var tokens = LengthToken.AllOf(text);
        var units = tokens.Where(token => token.Kind == LengthTokenKind.Unit).Select(token => LengthUnits.MillimetresIn(token.Text)).ToList();
        return units.Contains(LengthUnits.Foot) ? new(Style.FeetAndInches, FinestIn(tokens))
            : units.Contains(LengthUnits.Inch) ? OfInches(tokens)
            : units.Contains(1000) ? new(Style.Metres)
            : units.Contains(10) ? new(Style.Centimetres)
            : units.Contains(1) ? Millimetres
            : new(Style.FeetAndInches);
    }

    /// <summary>A length in this form.</summary>
    public string Write(Length length) => _style switch
    {
        Style.Millimetres => LengthText.Millimetres(length),
        Style.Centimetres => Number(length.Centimeters, 2) + " cm",
        Style.Metres => Number(length.Meters, 4) + " m",
        Style.InchDecimals => Number(length.Inches, 2) + " in",
        Style.InchFractions => LengthText.Inches(length, _finest),
        _ => LengthText.FeetAndInches(length, _finest),
    };

    private static LengthForm OfInches(List<LengthToken> tokens) => tokens.Exists(token => token.Kind == LengthTokenKind.Number && token.Text.Contains('.', StringComparison.Ordinal))
        ? new(Style.InchDecimals)
        : new(Style.InchFractions, FinestIn(tokens));

    private static InchFraction FinestIn(List<LengthToken> tokens)
    {
        var stroke = tokens.FindIndex(token => token.Kind == LengthTokenKind.Slash);
        var parts = stroke >= 0 && stroke + 1 < tokens.Count && int.TryParse(tokens[stroke + 1].Text, CultureInfo.InvariantCulture, out var below) ? below : SmallestUsual;
        return parts switch
        {
            > 2 * SmallestUsual => InchFraction.SixtyFourth,
            > SmallestUsual => InchFraction.ThirtySecond,
            _ => InchFraction.Sixteenth,
        };
    }

    private static string Number(double value, int decimals)
    {
        var rounded = Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.####", CultureInfo.InvariantCulture);
    }
}
