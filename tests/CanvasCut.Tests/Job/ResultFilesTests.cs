using System.Text;
using System.Text.Json;
using CanvasCut.Drawing;
using CanvasCut.Job;
using CanvasCut.Sheets;

namespace CanvasCut.Tests.Job;

public sealed class ResultFilesTests
{
    [Fact]
    public void Two_runs_give_the_same_bytes_whatever_the_culture()
    {
        var first = ResultFiles.Of(ExampleTests.OutcomeOf("three-bow-middle-tube"));
        ForeignCulture.In(() =>
        {
            var second = ResultFiles.Of(ExampleTests.OutcomeOf("three-bow-middle-tube"));

            Assert.Equal(first.Select(file => file.Name), second.Select(file => file.Name));
            Assert.All(first.Zip(second), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.Name));
        });
    }

    [Fact]
    public void Every_promised_file_is_there_and_results_json_lists_all()
    {
        var files = ResultFiles.Of(ExampleTests.OutcomeOf("three-bow-middle-tube"));
        var names = files.Select(file => file.Name).ToList();

        Assert.Subset(names.ToHashSet(), new HashSet<string>
        {
            "report.pdf", "templates.pdf", "placement.svg", "placement.png", "cut-plan.svg", "cut-plan.png", "order.csv", "pieces.dxf",
            "results.json", "plot.pdf", "pieces/carrier.svg", "pieces/pocket-forward-port.svg", "pieces/weather-strip-forward.svg", "pieces/zipper-end-cap.svg",
        });
        using var json = JsonDocument.Parse(files.Single(file => file.Name == "results.json").Bytes);
        Assert.Equal(names, json.RootElement.GetProperty("files").EnumerateArray().Select(name => name.GetString()!));
    }

    [Fact]
    public void The_top_in_space_is_drawn_where_every_bow_has_its_height()
    {
        var outcome = ExampleTests.OutcomeOf("three-bow-middle-tube");
        var files = ResultFiles.Of(outcome);

        Assert.Equal(["top-shape.svg", "top-shape.png"], files.Select(file => file.Name).Where(name => name.StartsWith("top-shape", StringComparison.Ordinal)));
        Assert.Empty(ResultFiles.LeftOut(outcome, files));
        Assert.Contains("The top in space: Ketch Marigold", Report(outcome), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_heights_the_picture_is_left_out_and_the_report_names_them()
    {
        var lines = Repository.Read("patterns/two-bow-small-top/job.toml").Split('\n');
        var outcome = JobRun.Of(string.Join('\n', lines.Where(line => !line.StartsWith("height = ", StringComparison.Ordinal))), "job.toml").Value!;
        var files = ResultFiles.Of(outcome);

        Assert.DoesNotContain(files, file => file.Name.StartsWith("top-shape", StringComparison.Ordinal));
        Assert.Equal(
            ["Left out top-shape.svg and top-shape.png. The top's shape in space is not known: the job does not give top.bow[1].height, top.bow[2].height."],
            ResultFiles.LeftOut(outcome, files));
        Assert.Contains("the job does not give top.bow[1].height, top.bow[2].height.", Report(outcome), StringComparison.Ordinal);
    }

    private static string Report(JobRun outcome) =>
        string.Join(' ', ReportSheets.Of(outcome.Content, outcome.Context, ShapeSheet.Of(outcome.Content.Patterns, outcome.Context)).SelectMany(page => WordsOf(page.Figures)));

    private static IEnumerable<string> WordsOf(IEnumerable<Figure> figures) => figures.SelectMany(figure => figure switch
    {
        Lettering lettering => [lettering.Text],
        Inset inset => WordsOf(inset.Figures),
        _ => Array.Empty<string>(),
    });

    /// <summary>The things a piece must say, so that nothing is cut mirrored, twice or without its allowance.</summary>
    [Fact]
    public void Every_piece_says_all_it_must()
    {
        var outcome = ExampleTests.OutcomeOf("three-bow-middle-tube");
        var pieces = ResultFiles.Of(outcome).Where(file => file.Name.StartsWith("pieces/", StringComparison.Ordinal)).ToList();

        Assert.All(pieces, file =>
        {
            var text = Words(Encoding.UTF8.GetString(file.Bytes.Span));
            Assert.Contains("THIS SIDE UP", text, StringComparison.Ordinal);
            Assert.Contains("Job: Ketch Marigold, after top", text, StringComparison.Ordinal);
            Assert.Matches(@"Piece \d+ of \d+ · cut \d+", text);
            Assert.Contains("Outer face up", text, StringComparison.Ordinal);
            Assert.Contains("warp fore and aft", text, StringComparison.Ordinal);
            Assert.Contains("FORWARD", text, StringComparison.Ordinal);
            Assert.Contains("Finished ", text, StringComparison.Ordinal);
            Assert.Contains("Cut ", text, StringComparison.Ordinal);
            Assert.Contains("Cloth: marine acrylic, sand, 300 g/m2", text, StringComparison.Ordinal);
            Assert.Contains("Cut line includes:", text, StringComparison.Ordinal);
            Assert.Contains($"CanvasCut {JobRun.Version}", text, StringComparison.Ordinal);
        });
        Assert.Equal(2, pieces.Count(file => Words(Encoding.UTF8.GetString(file.Bytes.Span)).Contains("· PORT", StringComparison.Ordinal)));
        Assert.Equal(2, pieces.Count(file => Words(Encoding.UTF8.GetString(file.Bytes.Span)).Contains("· STARBOARD", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_failed_check_is_told_on_every_sheet()
    {
        var files = ResultFiles.Of(ExampleTests.OutcomeOf("does-not-fit"));
        var sheets = files.Where(file => file.Name.EndsWith(".svg", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(sheets);
        Assert.All(sheets, file => Assert.Contains("CHECKS FAILED", Words(Encoding.UTF8.GetString(file.Bytes.Span)), StringComparison.Ordinal));
        foreach (var name in new[] { "templates.pdf", "report.pdf", "plot.pdf" })
        {
            using var folder = new TemporaryFolder();
            var path = folder.PathOf(name);
            File.WriteAllBytes(path, files.Single(file => file.Name == name).Bytes.ToArray());
            Assert.All(
                OutsideTool.Run("pdftotext", "-layout", path, "-").Split('\f', StringSplitOptions.RemoveEmptyEntries),
                page => Assert.Contains("CHECKS FAILED", page, StringComparison.Ordinal));
        }
    }

    /// <summary>The text of a drawing, lines joined as they were before they were wrapped.</summary>
    private static string Words(string svg) => string.Join(
        ' ',
        System.Xml.Linq.XDocument.Parse(svg).Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value));
}
