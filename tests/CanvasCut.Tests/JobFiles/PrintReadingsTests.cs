using CanvasCut.Design;
using CanvasCut.Drawing.Pages;
using CanvasCut.Job;
using UnitsNet;

namespace CanvasCut.Tests.JobFiles;

public sealed class PrintReadingsTests
{
    public static TheoryData<string> Papers { get; } = new(PaperSize.Standard.Select(paper => paper.Name));

    [Theory]
    [MemberData(nameof(Papers))]
    public void The_job_file_knows_every_paper_at_the_size_it_is_printed(string name)
    {
        var (paper, printed) = (Sample.Job(Sample.Least + $"[paper]\nsize = \"{name}\"\n").Workshop.Paper, PaperSize.Named(name)!);

        Assert.Equal((printed.Name, printed.WidthMm, printed.HeightMm), (paper.Name, paper.Width.Millimeters, paper.Height.Millimeters));
        Assert.NotNull(ScaleTest.Pdf(name));
    }

    [Fact]
    public void The_job_file_knows_no_other_paper()
    {
        var problem = Sample.Problems(Sample.Least + "[paper]\nsize = \"A9\"\n");

        Assert.Contains($"none of {string.Join(", ", PaperSize.Standard.Select(paper => $"\"{paper.Name}\""))}, \"roll 914 mm\"", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("99.2", 99.2)]
    [InlineData("9.92 cm", 99.2)]
    [InlineData("3 15/16 in", 100.0125)]
    [InlineData("10 cm", 100)]
    public void A_reading_is_a_plain_number_of_millimetres_or_a_length(string text, double mm) =>
        Assert.Equal(mm, PrintReadings.Parse(text).Value!.Value.Millimeters, 1e-9);

    [Theory]
    [InlineData("")]
    [InlineData("ninety-nine")]
    [InlineData("99.2.1")]
    [InlineData("NaN")]
    [InlineData("1e2")]
    public void Anything_else_is_no_reading(string text) => Assert.NotNull(PrintReadings.Parse(text).Reason);

    /// <summary>Worked by hand: 100/1.03 = 97.087 and 100/0.97 = 103.093.</summary>
    [Theory]
    [InlineData(97.08, "correction of 3.0 %")]
    [InlineData(97.09, null)]
    [InlineData(100, null)]
    [InlineData(103.09, null)]
    [InlineData(103.10, "correction of -3.0 %")]
    [InlineData(95, "correction of 5.3 %")]
    [InlineData(9.92, "no reading")]
    [InlineData(992, "no reading")]
    [InlineData(0, "no reading")]
    [InlineData(-99.2, "no reading")]
    public void Only_what_a_printer_can_be_off_is_corrected(double mm, string? complaint)
    {
        var found = PrintReadings.Complaint(Length.FromMillimeters(mm));

        Assert.Equal(complaint is null, found is null);
        Assert.Contains(complaint ?? string.Empty, found ?? string.Empty, StringComparison.Ordinal);
        Assert.Equal(complaint is null, Record.Exception(() => new PrintReadings(Length.FromMillimeters(100), Length.FromMillimeters(mm))) is null);
    }
}
