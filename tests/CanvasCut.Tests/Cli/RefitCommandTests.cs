using System.Text.Json;
using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

public sealed class RefitCommandTests
{
    private const string Folder = "patterns/refit-larger-panel";

    private static readonly string NewJob = Repository.PathOf($"{Folder}/new-job.toml");

    [Fact]
    public void The_example_gives_the_approved_answer_and_carrier()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Run("make", Repository.PathOf($"{Folder}/old-job.toml"), "--out", folder.PathOf("first")).Code);

        var (code, output, errors) = Run("refit", folder.PathOf("first/results.json"), NewJob, "--out", folder.PathOf("second"));

        Assert.Equal((0, string.Empty), (code, errors));
        Golden.Matches($"{Folder}/expected/answer.txt", output.Replace(folder.PathOf("second"), "my-refit", StringComparison.Ordinal));
        foreach (var name in new[] { "order.csv", "pieces.dxf" })
        {
            Golden.Matches($"{Folder}/expected/{name}", File.ReadAllText(folder.PathOf($"second/{name}")));
        }

        Assert.Equal(0, Run("compare", folder.PathOf("second")).Code);
    }

    /// <summary>By hand in the example's README: 890 to 1060 mm by 370 to 540 mm.</summary>
    [Fact]
    public void The_answer_for_programs_has_the_range_in_figures()
    {
        using var folder = new TemporaryFolder();
        Run("make", Repository.PathOf($"{Folder}/old-job.toml"), "--out", folder.PathOf("first"));

        var (code, output, errors) = Run("refit", folder.PathOf("first"), NewJob, "--json");
        var answer = JsonDocument.Parse(output).RootElement;
        var range = answer.GetProperty("ranges").EnumerateArray().First();

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.True(answer.GetProperty("fits").GetBoolean());
        Assert.Equal([890, 1060], range.GetProperty("length_mm").EnumerateArray().Select(each => each.GetDouble()));
        Assert.Equal([370, 540], range.GetProperty("width_mm").EnumerateArray().Select(each => each.GetDouble()));
        Assert.Equal("anew", Assert.Single(answer.GetProperty("pieces").EnumerateArray(), piece => piece.GetProperty("id").GetString() == "carrier").GetProperty("fate").GetString());
        Assert.Equal(2, Run("refit", folder.PathOf("first"), NewJob, "--json", "--out", folder.PathOf("second")).Code);
        Assert.False(Directory.Exists(folder.PathOf("second")));
    }

    [Fact]
    public void A_panel_that_does_not_fit_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        Run("make", Repository.PathOf("patterns/two-bow-small-top/job.toml"), "--out", folder.PathOf("first"));

        var large = folder.PathOf("large.toml");
        File.WriteAllText(large, File.ReadAllText(NewJob).Replace("1056 mm", "1200 mm", StringComparison.Ordinal));
        var (code, output, _) = Run("refit", folder.PathOf("first"), large, "--out", folder.PathOf("third"));

        Assert.Equal(1, code);
        Assert.Contains("DOES NOT FIT", output, StringComparison.Ordinal);
        Assert.Contains("The smallest change after which it fits:", output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.PathOf("third")));
    }

    [Theory]
    [InlineData("nothing-there", 3, "CC180")]
    [InlineData("patterns/two-bow-small-top/job.toml", 2, "CC181")]
    public void What_is_no_results_file_is_told(string old, int code, string told)
    {
        using var folder = new TemporaryFolder();

        var (ended, output, errors) = Run("refit", Repository.PathOf(old), NewJob, "--out", folder.PathOf("out"));

        Assert.Equal((code, string.Empty), (ended, output));
        Assert.Contains(told, errors, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.PathOf("out")));
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
