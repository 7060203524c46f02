using System.Text.Json;
using CanvasCut.Cli;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;
using CanvasCut.Sheets;

namespace CanvasCut.Tests.Cli;

public sealed class MeasureCommandTests
{
    private static readonly string Example = Repository.PathOf("patterns/measured-top/measures.toml");

    [Fact]
    public void Measures_that_disagree_are_told_of_and_end_with_1()
    {
        var (code, output, errors) = Run("measure", Example);

        Assert.Equal((1, string.Empty), (code, errors));
        Assert.Contains("Most likely wrong: middle bow, diagonal from starboard, reading 2. It reads 2038 mm", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_holds_every_reading()
    {
        var (code, output, _) = Run("measure", Example, "--json");
        var root = JsonDocument.Parse(output).RootElement;

        Assert.Equal(1, code);
        Assert.Equal("canvascut-measures-1", root.GetProperty("format").GetString());
        Assert.Equal(51, root.GetProperty("readings").GetArrayLength());
        Assert.Equal("middle bow, diagonal from starboard, reading 2", root.GetProperty("suspects")[0].GetString());
        Assert.Equal(3, root.GetProperty("bows").GetArrayLength());
    }

    [Fact]
    public void A_wrong_file_tells_all_its_problems_and_ends_with_2()
    {
        var (code, output, errors) = Run("measure", Repository.PathOf("patterns/invalid/measures-first-bow/measures.toml"));

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains("measures.toml(6,8): CC131: bow[1].port: ", errors, StringComparison.Ordinal);
        Assert.Equal(3, Run("measure", "no-such.toml").Code);
    }

    [Theory]
    [InlineData("A4", "595")]
    [InlineData("letter", "612")]
    public void Print_writes_one_page_and_never_over_a_file(string paper, string width)
    {
        using var folder = new TemporaryFolder();
        var file = folder.PathOf("sheet.pdf");

        Assert.Equal(0, Run("measure", "--print", "--paper", paper, "--out", file).Code);
        Assert.Equal(3, Run("measure", "--print", "--out", file).Code);
        var told = OutsideTool.Run("pdfinfo", file);
        Assert.Matches(@"Pages:\s+1\n", told);
        Assert.Matches($@"Page size:\s+{width}\b", told);
        Assert.Contains("Keep-outs, from both sides", OutsideTool.Run("pdftotext", "-layout", file, "-"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("needs a file", "measure")]
    [InlineData("takes no file", "measure", "--print", "a.toml")]
    [InlineData("are for measures", "measure", "--print", "--json")]
    [InlineData("do not go together", "measure", "a.toml", "--json", "--top")]
    [InlineData("--into needs", "measure", "a.toml", "--into", "")]
    [InlineData("go with --print", "measure", "a.toml", "--paper", "A4")]
    [InlineData("none of A4, Letter", "measure", "--print", "--paper", "A3")]
    [InlineData("--out needs", "measure", "--print", "--out", " ")]
    public void What_cannot_be_is_told_in_one_line(string complaint, params string[] arguments)
    {
        var (code, output, errors) = Run(arguments);

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(complaint, Assert.Single(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void On_the_sheet_no_text_lies_on_another_or_off_the_paper(string paper)
    {
        var sheet = MeasuringSheet.Of(PaperSize.Named(paper)!, "CanvasCut");
        var words = sheet.Figures.OfType<Lettering>().Where(text => text.Text.Length > 0).Select(text => (text.Text, Box: Figures.BoundsOf(text))).ToList();

        Assert.All(sheet.Figures.Where(figure => figure is not Lettering { Text: "" }), figure => Assert.True(new Box(5, 5, sheet.WidthMm - 5, sheet.HeightMm - 5).Holds(Figures.BoundsOf(figure))));
        Assert.All(words.SelectMany((first, i) => words.Skip(i + 1).Select(second => (first, second))), pair =>
        {
            var (one, other) = (pair.first.Box, pair.second.Box);
            var isApart = one.Right <= other.Left || other.Right <= one.Left || one.Top <= other.Bottom + 0.3 || other.Top <= one.Bottom + 0.3;
            Assert.True(isApart, $"{pair.first.Text} / {pair.second.Text}");
        });
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
