using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>A straight scale: millimetres on its left side, inches on its right.</summary>
/// <param name="Name">Which axis of the sheet it lies along: x or y.</param>
/// <param name="LengthMm">From end to end.</param>
internal sealed record Ruler(string Name, double LengthMm)
{
    /// <summary>The longest: a tape measure's metre.</summary>
    public const double LongestMm = 1000;

    /// <summary>How far it reaches to either side of its line, words included.</summary>
    public const double SideMm = 6.5;

    private const double InchMm = 25.4;
    private const int MostInches = 36;
    private const double NumberHeightMm = 1.8;
    private const double NumberAwayMm = 3.6;
    private const double InsetMm = 2;

    /// <summary>The inch side's whole inches.</summary>
    private int Inches => Math.Min(MostInches, (int)(LengthMm / InchMm));

    /// <summary>The length in both units, the inches to the nearest 1/32.</summary>
    public string LengthText => FormattableString.Invariant($"{LengthMm:0.#} mm = {InchText(LengthMm)} in");

    /// <summary>The scale with its words at both ends.</summary>
    /// <param name="start">Its zero.</param>
    /// <param name="along">A unit step to its other end.</param>
    public ImmutableArray<Figure> At(Point start, Step along)
    {
        var (up, turnDegrees) = (along.Left, Math.Atan2(along.Y, along.X) * 180 / Math.PI);
        Point On(double alongMm, double upMm) => start + (along * alongMm) + (up * upMm);
        Lettering Word(string text, double alongMm, bool isInch, TextAnchor anchor) =>
            new(text, On(alongMm, isInch ? -NumberAwayMm - NumberHeightMm : NumberAwayMm), NumberHeightMm, anchor, turnDegrees);
        return
        [
            Stroke.Open(LineRole.Note, start, On(LengthMm, 0)),
            .. Ticks().Select(tick => Stroke.Open(LineRole.Note, On(tick.AlongMm, 0), On(tick.AlongMm, tick.UpMm))),
            .. Words().Select(word => Word(word.Text, word.AlongMm, word.IsInch, word.Anchor)),
        ];
    }

    private IEnumerable<(double AlongMm, double UpMm)> Ticks()
    {
        var (metric, quarters) = ((int)LengthMm, Inches * 4);
        for (var mm = 0; mm <= metric; mm++)
        {
            yield return (mm, mm == 0 || mm == metric ? NumberAwayMm + NumberHeightMm : mm % 10 == 0 ? 3 : mm % 5 == 0 ? 2 : 1.2);
        }

        for (var quarter = 0; quarter <= quarters; quarter++)
        {
            yield return (quarter * InchMm / 4, -(quarter == 0 || quarter == quarters ? NumberAwayMm + NumberHeightMm : quarter % 4 == 0 ? 3 : 1.5));
        }
    }

    /// <summary>Numbers, and at both ends how long it is; a number that would stand in those words is left out.</summary>
    private IEnumerable<(string Text, double AlongMm, bool IsInch, TextAnchor Anchor)> Words()
    {
        var metric = Say.Of($"long scale {Name}: {LengthText}");
        var inches = FormattableString.Invariant($"{Inches} in = {Inches * InchMm:0.#} mm");
        foreach (var (text, endMm, isInch) in new[] { (metric, LengthMm, false), (inches, Inches * InchMm, true) })
        {
            var roomMm = TextWidth.Of(text, NumberHeightMm, isBold: false) + (2 * InsetMm);
            yield return (text, InsetMm, isInch, TextAnchor.Left);
            if (endMm > 2 * roomMm)
            {
                yield return (text, endMm - InsetMm, isInch, TextAnchor.Right);
            }

            var (pitchMm, first) = isInch ? (InchMm, 3) : (10.0, 10);
            for (var number = first; number * pitchMm < endMm - roomMm; number += first)
            {
                if (number * pitchMm > roomMm)
                {
                    yield return ((isInch ? number : number * 10).ToString(CultureInfo.InvariantCulture), number * pitchMm, isInch, TextAnchor.Middle);
                }
            }
        }
    }

    private static string InchText(double mm)
    {
        const int Finest = 32;
        var parts = (int)Math.Round(mm / InchMm * Finest);
        var (whole, rest, of) = (parts / Finest, parts % Finest, Finest);
        while (rest > 0 && rest % 2 == 0)
        {
            (rest, of) = (rest / 2, of / 2);
        }

        return FormattableString.Invariant(rest == 0 ? (FormattableString)$"{whole}" : $"{whole} {rest}/{of}");
    }
}
