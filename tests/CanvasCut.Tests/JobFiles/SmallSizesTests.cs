using CanvasCut.Design;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Sizes are nought, or at least what a tape can show; nought has no sign.</summary>
public sealed class SmallSizesTests
{
    [Theory]
    [InlineData("-0 mm")]
    [InlineData("-0.0 in")]
    [InlineData("-0.0000000001 mm")]
    [InlineData("- 0/8 in")]
    public void Nought_has_no_sign(string text)
    {
        var reading = LengthText.Parse(text);

        Assert.True(reading.IsLength, reading.Reason);
        Assert.False(double.IsNegative(reading.Value!.Value.Millimeters));
        Assert.Equal(0, reading.Value!.Value.Millimeters);
    }

    [Theory]
    [InlineData("[paper]\noverlap = \"0.000001 mm\"", "paper.overlap: is less than 0.01 mm and yet not nought")]
    [InlineData("[pocket]\nease = \"0.009 mm\"", "pocket.ease: is less than 0.01 mm and yet not nought")]
    [InlineData("[pocket]\nleg = \"0.000001 mm\"", "pocket.leg: is less than 0.01 mm; write a size")]
    [InlineData("[panel.cable_exit]\ndiameter = \"0.000001 mm\"\nfrom_port = \"100 mm\"\nfrom_forward = \"100 mm\"", "diameter: is less than 0.01 mm; write a size")]
    public void A_size_that_no_tape_shows_is_a_problem(string table, string told)
    {
        Assert.Contains(told, Sample.Problems($"{Sample.Least}{table}\n"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[paper]\noverlap = \"-0 mm\"")]
    [InlineData("[cloth]\ngap = \"-0 mm\"")]
    [InlineData("[cloth]\ngap = \"0 mm\"")]
    public void Nought_is_allowed_where_it_was(string table) => Assert.Empty(Sample.Problems(Sample.Least + table + "\n"));
}
