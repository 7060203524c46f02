using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Tests.Design;

/// <summary>What is printed as a limit is never beyond the limit, in any unit.</summary>
public sealed partial class LimitPrintingTests
{
    /// <summary>A number that lies on the last printed digit but for what its units have lost stays there.</summary>
    private const double RoundOff = 1e-6;

    private const long Draws = 10_000;

    /// <summary>What each printed unit is in the first one, by its definition: knot 1852/3600 m/s, pound force 4.4482216152605 N, inch 25.4 mm.</summary>
    private static readonly Dictionary<string, Func<double, double>> ToFirst = new(StringComparer.Ordinal)
    {
        ["kn"] = number => number,
        ["m/s"] = number => number * 3600 / 1852,
        ["N"] = number => number,
        ["lbf"] = number => number * 4.4482216152605,
        ["N/m"] = number => number,
        ["lbf/in"] = number => number * 4.4482216152605 / 0.0254,
        ["Pa"] = number => number,
        ["psi"] = number => number * 4.4482216152605 / 0.0254 / 0.0254,
        ["h"] = number => number,
        ["°"] = number => number,
        ["°C"] = number => number,
        ["°F"] = number => (number - 32) / 1.8,
    };

    private static readonly Gen<(double Number, int Kind)> AnyLimit = Gen.Select(Gen.Double[0.01, 5000], Gen.Int[0, 6]);

    [Fact]
    public void A_printed_limit_read_back_is_never_beyond_the_limit() => AnyLimit.Sample(
        draw =>
        {
            var limit = Of(draw.Kind, draw.Number);
            var (most, least) = (ReadBack(LimitWords.Most(limit)), ReadBack(LimitWords.Least(limit)));

            Assert.NotEmpty(most);
            Assert.All(most, number => Assert.True(number <= draw.Number + RoundOff, $"{LimitWords.Most(limit)} is more than {limit}"));
            Assert.All(least, number => Assert.True(number >= draw.Number - RoundOff, $"{LimitWords.Least(limit)} is less than {limit}"));
        },
        iter: Draws);

    [Fact]
    public void A_printed_length_read_back_is_never_beyond_the_limit() =>
        Gen.Select(Gen.Double[0.01, 20_000], Gen.Enum<PrintUnits>(), Gen.Enum<InchFraction>()).Sample(
            (millimetres, units, finest) =>
            {
                var limit = Length.FromMillimeters(millimetres);

                Assert.All(Lengths(LimitWords.Most(limit, units, finest)), length => Assert.True(length.Millimeters <= millimetres + RoundOff));
                Assert.All(Lengths(LimitWords.Least(limit, units, finest)), length => Assert.True(length.Millimeters >= millimetres - RoundOff));
            },
            iter: Draws);

    [Fact]
    public void Whole_numbers_on_a_card_are_never_beyond_the_limit() => Gen.Double[0.1, 120].Sample(
        knots =>
        {
            var limit = Speed.FromKnots(knots);

            Assert.InRange(LimitWords.Knots(limit), knots - 1, knots + RoundOff);
            Assert.InRange(LimitWords.MetersPerSecond(limit) * 3600.0 / 1852, knots - (3600.0 / 1852), knots + RoundOff);
        },
        iter: Draws);

    [Fact]
    public void Whole_degrees_of_a_step_are_never_below_the_limit() => Gen.Select(Gen.Double[-10, 60], Gen.Enum<PrintUnits>()).Sample(
        (celsius, units) =>
        {
            Assert.All(ReadBack(LimitWords.Least(Temperature.FromDegreesCelsius(celsius), units)), number => Assert.True(number >= celsius - RoundOff));
            Assert.All(
                Marks().Matches(LimitWords.Least(TemperatureDelta.FromDegreesCelsius(celsius), units)),
                mark => Assert.True(Number(mark) / (mark.Groups[2].Value == "°F" ? 1.8 : 1) >= celsius - RoundOff));
        },
        iter: Draws);

    /// <summary>40 kn are 20.578 m/s; 24.95 kn are 12.835 m/s; 610 mm are 24.016 in; 35 kn through metres a second and back stay 35.</summary>
    [Fact]
    public void Limits_worked_by_hand_are_on_the_safe_side()
    {
        Assert.Equal((24, 12), (LimitWords.Knots(Speed.FromKnots(24.95)), LimitWords.MetersPerSecond(Speed.FromKnots(24.95))));
        Assert.Equal(20, LimitWords.MetersPerSecond(Speed.FromKnots(40)));
        Assert.Equal(35, LimitWords.Knots(Speed.FromMetersPerSecond(Speed.FromKnots(35).MetersPerSecond)));
        Assert.Equal("40 kn (20.5 m/s)", LimitWords.Most(Speed.FromKnots(40)));
        Assert.Equal("610 mm (24 1/16 in)", LimitWords.Least(Length.FromMillimeters(610), PrintUnits.Both));
        Assert.Equal("610 mm (24 in)", LimitWords.Most(Length.FromMillimeters(610), PrintUnits.Both));
        Assert.Equal("15 °C (59 °F)", LimitWords.Least(Temperature.FromDegreesCelsius(15), PrintUnits.Both));
        Assert.Equal("16 °C (60 °F)", LimitWords.Least(Temperature.FromDegreesCelsius(15.2), PrintUnits.Both));
    }

    private static IQuantity Of(int kind, double number) => kind switch
    {
        0 => Speed.FromKnots(number),
        1 => Force.FromNewtons(number),
        2 => ForcePerLength.FromNewtonsPerMeter(number),
        3 => Pressure.FromPascals(number),
        4 => Duration.FromHours(number),
        5 => Angle.FromDegrees(number),
        _ => Temperature.FromDegreesCelsius(number),
    };

    private static double[] ReadBack(string text) => [.. Marks().Matches(text).Select(mark => ToFirst[mark.Groups[2].Value](Number(mark)))];

    private static double Number(Match mark) => double.Parse(mark.Groups[1].Value, CultureInfo.InvariantCulture);

    private static Length[] Lengths(string text) =>
        [.. text.TrimEnd(')').Split(" (").Select(part => LengthText.Parse(part).Value ?? throw new InvalidOperationException(part))];

    [GeneratedRegex(@"(-?[0-9.]+) ?(kn|m/s|N/m|N|lbf/in|lbf|Pa|psi|h|°C|°F|°)")]
    private static partial Regex Marks();
}
