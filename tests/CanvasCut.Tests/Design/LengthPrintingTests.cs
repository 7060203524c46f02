using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Tests.Design;

public sealed class LengthPrintingTests
{
    private static readonly Gen<Length> AnyLength = Gen.Int[-30_000_000, 30_000_000].Select(parts => Length.FromMillimeters(parts / 10_000d));

    [Theory]
    [InlineData(1040, "1040 mm")]
    [InlineData(38.1, "38.1 mm")]
    [InlineData(0.05, "0.1 mm")]
    [InlineData(-0.05, "-0.1 mm")]
    [InlineData(-0.04, "0 mm")]
    [InlineData(12.96, "13 mm")]
    public void Millimetres_have_one_decimal_or_none(double mm, string text) =>
        Assert.Equal(text, LengthText.Millimetres(Length.FromMillimeters(mm)));

    [Theory]
    [InlineData(41.5, "41 1/2 in")]
    [InlineData(0.9375, "15/16 in")]
    [InlineData(0, "0 in")]
    [InlineData(-2.25, "-2 1/4 in")]
    [InlineData(0.96875, "1 in")]
    [InlineData(11.96875, "12 in")]
    [InlineData(0.03125, "1/16 in")]
    [InlineData(-0.03125, "-1/16 in")]
    [InlineData(-0.01, "0 in")]
    public void Inches_are_rounded_reduced_and_carried(double inches, string text) =>
        Assert.Equal(text, LengthText.Inches(Length.FromMillimeters(inches * 25.4), InchFraction.Sixteenth));

    [Fact]
    public void Parts_that_mate_are_printed_to_a_thirty_second() =>
        Assert.Equal("12.7 mm (1/2 in), 15.1 mm (19/32 in)", $"{LengthText.OfMating(Length.FromMillimeters(12.7), PrintUnits.Both)}, {LengthText.OfMating(Length.FromMillimeters(15.08125), PrintUnits.Both)}");

    /// <summary>Rounded to the nearest sixteenth as inch rules are divided: 100 mm = 3.937 in, between 3 7/8 and 4.</summary>
    [Fact]
    public void A_hundred_millimetres_are_three_and_fifteen_sixteenths() =>
        Assert.Equal("100 mm (3 15/16 in)", LengthText.Of(Length.FromMillimeters(100), PrintUnits.Both));

    [Theory]
    [InlineData(PrintUnits.Both, "1040 mm (40 15/16 in)")]
    [InlineData(PrintUnits.Metric, "1040 mm")]
    [InlineData(PrintUnits.Imperial, "40 15/16 in")]
    public void The_units_asked_for_are_printed(PrintUnits units, string text) =>
        Assert.Equal(text, LengthText.Of(Length.FromMillimeters(1040), units));

    [Theory]
    [InlineData(41.5, "3 ft 5 1/2 in")]
    [InlineData(11.96875, "1 ft")]
    [InlineData(36, "3 ft")]
    [InlineData(5.5, "5 1/2 in")]
    [InlineData(-41.5, "-3 ft 5 1/2 in")]
    [InlineData(0, "0 in")]
    public void Feet_are_printed_with_the_inches_that_are_left(double inches, string text) =>
        Assert.Equal(text, LengthText.FeetAndInches(Length.FromMillimeters(inches * 25.4)));

    [Theory]
    [InlineData("1040 mm")]
    [InlineData("1 1/2 in")]
    [InlineData("5/64 in")]
    [InlineData("2.5 mm")]
    [InlineData("-57.2 mm")]
    [InlineData("0 mm")]
    public void An_exact_text_is_the_plain_one(string text) =>
        Assert.Equal(text, LengthText.Exact(LengthText.Parse(text).Value!.Value));

    [Fact]
    public void An_exact_text_reads_back_as_the_same_length() =>
        AnyLength.Sample(length => LengthText.Parse(LengthText.Exact(length)).Value!.Value.Millimeters == length.Millimeters);

    [Fact]
    public void Printed_inches_are_never_more_than_half_a_sixteenth_off() =>
        AnyLength.Sample(length => Error(length, LengthText.Inches(length, InchFraction.Sixteenth)) <= (25.4 / 32) + 1e-9);

    [Fact]
    public void Feet_and_inches_are_never_more_than_half_a_sixteenth_off() =>
        AnyLength.Sample(length => Error(length, LengthText.FeetAndInches(length)) <= (25.4 / 32) + 1e-9);

    [Fact]
    public void Printed_millimetres_are_never_more_than_half_a_tenth_off() =>
        AnyLength.Sample(length => Error(length, LengthText.Millimetres(length)) <= 0.05 + 1e-9);

    private static double Error(Length length, string printed) =>
        Math.Abs(LengthText.Parse(printed).Value!.Value.Millimeters - length.Millimeters);
}
