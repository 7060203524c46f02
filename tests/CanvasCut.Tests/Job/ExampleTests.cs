using System.Text;
using System.Text.Json;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>The example jobs in patterns/, against results that a person has looked at.</summary>
public sealed class ExampleTests
{
    /// <summary>The files whose text is compared; pictures and paper are looked at instead.</summary>
    private static readonly string[] Compared = ["order.csv", "pieces.dxf"];

    /// <summary>The one example whose results.json is kept whole; of the others tables are kept that a person can read.</summary>
    private const string KeptWhole = "three-bow-middle-tube";

    public static TheoryData<string> Examples { get; } = [.. Directory.EnumerateDirectories(Repository.PathOf("patterns"))
        .Select(folder => Path.GetFileName(folder)!)
        .Where(name => File.Exists(Repository.PathOf($"patterns/{name}/job.toml")))
        .Order(StringComparer.Ordinal)];

    [Fact]
    public void There_are_at_least_four_examples() => Assert.True(Examples.Count >= 4);

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_gives_the_approved_results(string example)
    {
        var files = ResultFiles.Of(OutcomeOf(example)).ToDictionary(file => file.Name, file => Encoding.UTF8.GetString(file.Bytes.Span));

        foreach (var name in Compared)
        {
            Golden.Matches($"patterns/{example}/expected/{name}", files[name]);
        }

        var results = JsonSerializer.Deserialize(files["results.json"], ResultsContext.Default.ResultsDocument)!;
        Golden.Matches($"patterns/{example}/expected/results.txt", ExampleTable.Of(results));
        if (example == KeptWhole)
        {
            Golden.Matches($"patterns/{example}/expected/results.json", files["results.json"]);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_tells_of_itself(string example) =>
        Assert.Contains("by hand", Repository.Read($"patterns/{example}/README.md"), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void The_built_in_example_is_one_of_them() =>
        Assert.Equal(Repository.Read("patterns/three-bow-middle-tube/job.toml"), BuiltInExample.Text);

    [Theory]
    [InlineData("two-bow-small-top", false)]
    [InlineData("three-bow-middle-tube", false)]
    [InlineData("inch-wide-panel", false)]
    [InlineData("does-not-fit", true)]
    public void Only_the_job_that_does_not_fit_fails(string example, bool fails) => Assert.Equal(fails, OutcomeOf(example).HasFailed);

    internal static JobRun OutcomeOf(string example)
    {
        var outcome = JobRun.Of(Repository.Read($"patterns/{example}/job.toml"), "job.toml", new() { Side = JobFiles.Sample.Beside($"patterns/{example}") });
        Assert.True(outcome.IsValid, string.Join('\n', outcome.Problems));
        return outcome.Value;
    }
}
