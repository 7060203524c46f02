using CanvasCut.Design;

namespace CanvasCut.Tests.Design;

/// <summary>Source of the sizes: international yard and pound agreement, 1959 (yard 0.9144 m, foot a third of it, inch 25.4 mm).</summary>
public sealed class LengthReadingTests
{
    [Theory]
    [InlineData("1040 mm", 1040)]
    [InlineData("104 cm", 1040)]
    [InlineData("1.04 m", 1040)]
    [InlineData("1040mm", 1040)]
    [InlineData(" 1040 Millimetres ", 1040)]
    [InlineData("0 mm", 0)]
    [InlineData(".5 mm", 0.5)]
    [InlineData("1 in", 25.4)]
    [InlineData("41 in", 1041.4)]
    [InlineData("41 in.", 1041.4)]
    [InlineData("41\"", 1041.4)]
    [InlineData("41″", 1041.4)]
    [InlineData("41”", 1041.4)]
    [InlineData("41''", 1041.4)]
    [InlineData("41 1/2 in", 1054.1)]
    [InlineData("41-1/2 in", 1054.1)]
    [InlineData("41½ in", 1054.1)]
    [InlineData("41-½\"", 1054.1)]
    [InlineData("41.5 in", 1054.1)]
    [InlineData("5/2 in", 63.5)]
    [InlineData("1 ft", 304.8)]
    [InlineData("3 ft", 914.4)]
    [InlineData("3 ft 5-1/2 in", 1054.1)]
    [InlineData("3' 5 1/2\"", 1054.1)]
    [InlineData("3′ 5½″", 1054.1)]
    [InlineData("3'-5 1/2\"", 1054.1)]
    [InlineData("3’ 5⁄8”", 930.275)]
    [InlineData("1 yd", 914.4)]
    [InlineData("1/4 yd", 228.6)]
    [InlineData("¼ yard", 228.6)]
    [InlineData("-2 1/4 in", -57.15)]
    [InlineData("−120 mm", -120)]
    [InlineData("+120 mm", 120)]
    [InlineData("-3 ft 6 in", -1066.8)]
    [InlineData("⅛ in", 3.175)]
    [InlineData("⅞ in", 22.225)]
    public void A_length_is_read_as_it_is_written(string text, double mm)
    {
        var reading = LengthText.Parse(text);

        Assert.Null(reading.Reason);
        Assert.Equal(mm, reading.Value!.Value.Millimeters);
    }

    [Theory]
    [InlineData("", "is empty; write a number and a unit, such as \"1040 mm\" or \"41 in\"")]
    [InlineData("1040", "needs a unit, such as \"1040 mm\" or \"41 in\"")]
    [InlineData("41 1/2", "needs a unit, such as \"1040 mm\" or \"41 in\"")]
    [InlineData("3 ft 5", "needs a unit, such as \"1040 mm\" or \"41 in\"")]
    [InlineData("mm", "is not a length; write a number and a unit, such as \"1040 mm\" or \"41 in\"")]
    [InlineData("--5 mm", "is not a length; write a number and a unit, such as \"1040 mm\" or \"41 in\"")]
    [InlineData("12 milimetres", "has the unknown unit milimetres; did you mean millimetres?")]
    [InlineData("12 fathoms", "has the unknown unit fathoms; write mm, cm, m, in, ft or yd")]
    [InlineData("NaN mm", "is not a number; write one and a unit, such as \"1040 mm\"")]
    [InlineData("Infinity", "is not a number; write one and a unit, such as \"1040 mm\"")]
    [InlineData("1e400 mm", "has an exponent; write the number out")]
    [InlineData("3 ft 20 mm", "mixes units that do not go together; only feet and inches do")]
    [InlineData("1 m 20 cm", "mixes units that do not go together; only feet and inches do")]
    [InlineData("3 in 2 ft", "has inches before feet; write the feet first")]
    [InlineData("5 mm in", "has two units, and the second, in, has no number; write one")]
    [InlineData("3 ft 14 in", "has 12 inches or more after the feet; write the inches below 12")]
    [InlineData("3 ft 12 in", "has 12 inches or more after the feet; write the inches below 12")]
    [InlineData("3 ft 5 in 2 in", "has \"2\" after the inches; write one length")]
    [InlineData("3.5 ft 2 in", "has a part of a foot and inches as well; write whole feet before inches")]
    [InlineData("1/0 in", "divides by zero")]
    [InlineData("1.5/2 in", "has decimals in a fraction; write whole numbers above and below the stroke")]
    [InlineData("41.5 1/2 in", "has decimals and a fraction; write one of them")]
    [InlineData("41 3/2 in", "has a fraction of one or more after the whole number; write it below one")]
    [InlineData("104,5 cm", "has a comma; decimals have a point, \"104.5 cm\"")]
    [InlineData("1,040 mm", "has a comma that may part thousands or decimals; write \"1040 mm\" or \"1.040 mm\"")]
    [InlineData("1.040.000 mm", "has more than one point in a number; do not part thousands")]
    [InlineData("1 040 mm", "has two numbers before the unit; leave out spaces inside a number")]
    [InlineData("99999999999999999999999999999999999 mm", "has a number that cannot be read, 99999999999999999999999999999999999")]
    [InlineData("20000 m", "is longer than ten kilometres")]
    public void What_is_not_a_length_is_refused_with_one_reason(string text, string reason) =>
        Assert.Equal(reason, LengthText.Parse(text).Reason);

    [Fact]
    public void Every_sixty_fourth_of_an_inch_is_read_exactly() =>
        Gen.Int[0, 64 * 200].Sample(parts =>
            LengthText.Parse($"{parts}/64 in").Value!.Value.Millimeters == (double)(parts * 0.396875m));

    [Fact]
    public void Every_tenth_of_a_millimetre_is_read_as_the_nearest_number_there_is() =>
        Gen.Int[0, 60000].Sample(tenths =>
            LengthText.Parse($"{tenths / 10}.{tenths % 10} mm").Value!.Value.Millimeters == tenths / 10d);

    [Fact]
    public void No_text_at_all_makes_it_throw() =>
        Gen.String[Gen.Char["0123456789 ./-'\"½,mcinftydeE+∞\u0000″"], 0, 14].Sample(text =>
            LengthText.Parse(text) is var reading && (reading.Value is null) == (reading.Reason is not null));
}
