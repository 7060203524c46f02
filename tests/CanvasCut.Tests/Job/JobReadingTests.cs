using CanvasCut.Drawing;
using CanvasCut.Job;
using CanvasCut.JobFiles;
using CanvasCut.Tests.JobFiles;

namespace CanvasCut.Tests.Job;

/// <summary>A job half filled in gives what can be known of it.</summary>
public sealed class JobReadingTests
{
    private const string TopAlone = """
        format = 1
        name = "Half"
        [top]
        length = "2000 mm"
        width = "1800 mm"
        [[top.bow]]
        station = "300 mm"
        chord = "1700 mm"
        crown = "120 mm"
        [[top.keep_out]]
        name = "hatch"
        station = ["900 mm", "1200 mm"]
        offset = ["-200 mm", "200 mm"]

        """;

    /// <summary>As typed so far: no panel, a panel with one measure, a wrong one, an unknown field, and a line broken off.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("[panel]\nlength = \"1000 mm\"\n")]
    [InlineData("[panel]\nlength = \"1000 mm\"\nwidth = \"5 miles\"\n")]
    [InlineData("[panel]\nlength = \"1000 mm\"\nwidth = \"500 mm\"\n[panle]\nlength = \"1 m\"\n")]
    [InlineData("[panel]\nlength = \"1000 mm\"\nwidth = \"500 m")]
    public void The_top_is_drawn_before_the_panel_is_complete(string panel)
    {
        var reading = JobReading.Of(TopAlone + panel, "job.toml", RunSettings.Usual);

        Assert.Null(reading.Run);
        Assert.NotEmpty(reading.Problems);
        var texts = Texts(reading.Placement!);
        Assert.Contains("The top: Half", texts);
        Assert.Contains("bow 1", texts);
        Assert.Contains("hatch", texts);
        Assert.Contains(texts, text => text.Contains("2000 mm", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, text => text.Contains("carrier", StringComparison.Ordinal));
    }

    /// <summary>Missing, of the wrong kind, out of any range, and against a rule between fields: then there is no top to draw.</summary>
    [Theory]
    [InlineData("length = \"2000 mm\"\n", "")]
    [InlineData("length = \"2000 mm\"", "length = 2000")]
    [InlineData("width = \"1800 mm\"", "width = \"90 m\"")]
    [InlineData("station = \"300 mm\"", "station = \"2300 mm\"")]
    [InlineData("offset = [\"-200 mm\", \"200 mm\"]\n", "")]
    public void A_top_that_is_wrong_itself_is_not_drawn(string right, string wrong)
    {
        var text = (TopAlone + "[panel]\nlength = \"1000 mm\"\nwidth = \"500 mm\"\n").Replace(right, wrong, StringComparison.Ordinal);
        var reading = JobReading.Of(text, "job.toml", RunSettings.Usual);

        Assert.NotEmpty(reading.Problems);
        Assert.Null(reading.Draft.Top);
        Assert.Null(reading.Placement);
    }

    [Fact]
    public void A_whole_job_gives_its_run_and_its_placement()
    {
        var reading = JobReading.Of(TopAlone + "[panel]\nlength = \"1000 mm\"\nwidth = \"500 mm\"\n", "job.toml", RunSettings.Usual);

        Assert.Empty(reading.Problems);
        Assert.Equal(reading.Draft.Top, reading.Run!.Job.Top);
        Assert.Same(reading.Run.Placement, reading.Placement);
    }

    /// <summary>The top of a draft is that of the job, in every example; whatever is left off behind, reading never throws.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void A_job_typed_line_by_line_shows_its_top_and_never_throws(string example)
    {
        var (lines, side) = (Repository.Read($"patterns/{example}/job.toml").Split('\n'), Sample.Beside($"patterns/{example}"));
        var drafts = Enumerable.Range(0, lines.Length + 1).Select(count => JobFile.ReadDraft(string.Join('\n', lines.Take(count)), "job.toml", side)).ToList();

        Assert.Null(drafts[0].Top);
        var (last, first) = (drafts[^1], drafts.FindIndex(draft => draft.Top is not null));
        Assert.Equal(last.Job.Value!.First.Top.Width, last.Top!.Width);
        Assert.Equal(last.Job.Value.First.Top.Bows, last.Top.Bows);
        Assert.InRange(first, 1, drafts.FindIndex(draft => draft.Job.IsValid));
    }

    private static List<string> Texts(Sheet sheet) => [.. sheet.Figures.OfType<Lettering>().Select(text => text.Text)];
}
