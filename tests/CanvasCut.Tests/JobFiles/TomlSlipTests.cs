namespace CanvasCut.Tests.JobFiles;

/// <summary>Each slip has its own sentence with the form that would be right, and hides no other.</summary>
public sealed class TomlSlipTests
{
    [Theory]
    [InlineData("length = 6' 6\"", "signs of feet and inches are taken for quotes; write \"6 ft 6 in\".")]
    [InlineData("length = \"6' 6 1/2\"\"", "signs of feet and inches are taken for quotes; write \"6 ft 6 1/2 in\".")]
    [InlineData("length = '41' # along", "")]
    [InlineData("length = 2000 mm # along", "needs quotes round it; write \"2000 mm\".")]
    [InlineData("length = “2000 mm”", "curly quotes are not its quotes; write straight ones, \"2000 mm\".")]
    [InlineData("length = „2000 mm“", "curly quotes are not its quotes; write straight ones, \"2000 mm\".")]
    [InlineData("length = 2000,5 mm", "decimals have a point; write \"2000.5 mm\".")]
    [InlineData("length = 2,000 mm", "a comma may part thousands or decimals; write \"2000 mm\", or \"2.000 mm\".")]
    [InlineData("length = \"2000,5 mm\"", "decimals have a point, \"2000.5 mm\".")]
    [InlineData("length = \"2000 mm", "the quote that closes the text is missing; write \"2000 mm\".")]
    [InlineData("length \"2000 mm\"", "stands an equals sign; write length = \"2000 mm\".")]
    [InlineData("length: \"2000 mm\"", "stands an equals sign; write length = \"2000 mm\".")]
    [InlineData("length = [\"2000 mm\"", "something that begins here is not closed")]
    public void A_slip_is_named_and_the_next_one_too(string line, string told)
    {
        var problems = Sample.Problems(Sample.Least.Replace("length = \"2000 mm\"", line, StringComparison.Ordinal)
            .Replace("[panel]", "[panel", StringComparison.Ordinal)
            .Replace("width = \"500 mm\"", "widht = \"500 mm\"", StringComparison.Ordinal));

        Assert.Contains("job.toml(4,", problems, StringComparison.Ordinal);
        Assert.Contains(told, problems, StringComparison.Ordinal);
        Assert.Contains("write [panel].", problems, StringComparison.Ordinal);
        Assert.Contains("panel.widht: There is no such field here; did you mean width?", problems, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_without_quotes_is_read_as_it_is_meant_and_missing_fields_are_told_of_too()
    {
        var problems = Sample.Problems("format = 1\nname = Sea Breeze, first\n[top]\nlength = 2 m\nwidth = “1,5 m”\n[panel]\nlength = \"1 m\"\n");

        Assert.Equal(["(2,", "(4,", "(5,", "(5,", "(6,"], problems.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line["job.toml".Length..][..3]));
        Assert.Contains("a name or word needs quotes round it; write \"Sea Breeze, first\".", problems, StringComparison.Ordinal);
        Assert.Contains("CC103: panel.width: is missing", problems, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cloth_sag = 0,025", "decimals have a point; write 0.025.")]
    [InlineData("shrink = \"1,5 %\"", "\"1,5 %\" has a comma; decimals have a point, \"1.5 %\".")]
    public void A_decimal_comma_is_told_of_with_the_number_it_should_be(string line, string told) =>
        Assert.Contains(told, Assert.Single(Sample.Problems($"{Sample.Least}[limits]\n{line}\n").Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);

    [Fact]
    public void A_list_over_several_lines_is_no_slip() =>
        Assert.Equal(2, Sample.Job($"{Sample.Least}[zipper]\nstock = [\n  \"36 in\", # one [\n  \"48 in\",\n]\nreveal = \"10 mm\"\n").Fastenings.Zipper.Stock.Length);

    /// <summary>A field below, and one within a text, do not look alike.</summary>
    [Fact]
    public void What_was_not_closed_does_not_swallow_what_follows()
    {
        var problems = Sample.Problems($"{Sample.Least}[zipper]\nstock = [\"36 in\",\n  \"48 in\"\nreveel = \"10 mm\"\n[pocket]\nleg = 120 mm\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(3, problems.Length);
        Assert.StartsWith("job.toml(10,", problems[0], StringComparison.Ordinal);
        Assert.Contains("zipper.reveel", problems[1], StringComparison.Ordinal);
        Assert.Contains("write \"120 mm\"", problems[2], StringComparison.Ordinal);
    }
}
