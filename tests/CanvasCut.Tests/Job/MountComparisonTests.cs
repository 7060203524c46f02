using System.Text.Json;
using CanvasCut.Checks;
using CanvasCut.Cli;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Takeoff;

namespace CanvasCut.Tests.Job;

public sealed class MountComparisonTests
{
    private static readonly JobRun Zipped = ExampleTests.OutcomeOf("priced-own-materials");
    private static readonly MountComparison Comparison = MountComparison.Of(Zipped);

    [Fact]
    public void Every_kind_stands_beside_the_jobs_own() => Assert.Equal(
        ["zipper", "snaps", "twist fasteners", "hook-and-loop", "lacing", "rod sleeve"],
        Comparison.Choices.Select(choice => choice.Name));

    /// <summary>Each row says what the whole program says of the same job with that fastening.</summary>
    [Theory]
    [InlineData(MountKind.Zipper)]
    [InlineData(MountKind.Snaps)]
    [InlineData(MountKind.HookAndLoop)]
    [InlineData(MountKind.Sleeve)]
    public void A_row_says_what_the_job_itself_would(MountKind kind)
    {
        var own = Zipped.Content.Patterns.Job;
        var job = own with { Fastenings = own.Fastenings with { Mount = own.Fastenings.Mount.Both(kind) } };
        var patterns = PatternSet.Of(job, FitChoice.For(job).Mounted);
        var order = Purchase.Of(patterns, CutPlan.Of(patterns, PlanSearch.For(job), cancellation: TestContext.Current.CancellationToken)).Order;
        var found = Comparison.Choices.Single(choice => choice.Mount == job.Fastenings.Mount).Figures!;

        Assert.Equal(patterns.Pieces.Sum(piece => piece.Title.Quantity), found.Pieces);
        Assert.Equal(OrderCost.Of(order, job.Workshop.Buying.Prices!).Total, found.Cost!.Total);
        Assert.Equal(WorkOrder.Of(patterns).Bench.Minutes, found.Work.Bench.Minutes, 1e-9);
        Assert.Equal(HoldDown.Of(job, patterns.Mounted).OffAt.Knots, found.Wind.OffAt.Knots, 1e-9);
    }

    /// <summary>24 months of hook-and-loop in the sun; of thread the 24 of polyester (docs/work-order.md).</summary>
    [Theory]
    [InlineData(MountKind.HookAndLoop, 24, "Replace the hook-and-loop")]
    [InlineData(MountKind.Snaps, 24, "Sew the seams again")]
    [InlineData(MountKind.Lacing, 24, "Replace the lacing line")]
    public void What_wears_out_first_is_told(MountKind kind, int months, string what)
    {
        var wear = MountComparison.Of(ExampleTests.OutcomeOf("snaps-and-lacing")).Choices.Single(choice => choice.Name == Words.Of(kind)).Figures!.Wear;

        Assert.Equal((months, what), (wear.Months, wear.What));
    }

    /// <summary>A panel 200 mm wide, fore and aft: an edge of 250.8 mm with its borders; 2 x 25.4 and 2 x 152.4 leave nothing for a lacing.</summary>
    [Fact]
    public void What_does_not_fit_is_said_and_not_worked_out()
    {
        var outcome = JobRun.Of(JobFiles.Sample.Least.Replace("width = \"500 mm\"", "width = \"200 mm\"\nlong_side = \"fore-aft\"", StringComparison.Ordinal), "job.toml").Value!;
        var choices = MountComparison.Of(outcome).Choices;

        Assert.Null(choices.Single(choice => choice.Name == "lacing").Figures);
        Assert.NotNull(choices.Single(choice => choice.Name == "hook-and-loop").Figures);
    }

    [Fact]
    public void The_command_prints_a_table_and_a_form_for_programs()
    {
        var path = Repository.PathOf("patterns/snaps-and-lacing/job.toml");
        var (code, table) = Run("compare-mounts", path);
        var (jsonCode, json) = Run("compare-mounts", path, "--json");
        using var document = JsonDocument.Parse(json);
        var choices = document.RootElement.GetProperty("choices").EnumerateArray().ToList();

        Assert.Equal((0, 0), (code, jsonCode));
        Assert.Contains("hook-and-loop", table, StringComparison.Ordinal);
        Assert.Equal(MountComparisonJson.Format, document.RootElement.GetProperty("format").GetString());
        Assert.Equal(("snaps", "lacing", true), (choices[0].GetProperty("forward").GetString(), choices[0].GetProperty("aft").GetString(), choices[0].GetProperty("is_the_jobs").GetBoolean()));
        Assert.Equal(7, choices.Count);
        Assert.Equal(25, choices[0].GetProperty("figures").GetProperty("removal_actions").GetInt32());
    }

    /// <summary>The sides stay as the job has them in every row, and programs are told of them only where they are held.</summary>
    [Fact]
    public void Held_sides_stand_in_every_row()
    {
        var choices = MountComparison.Of(ExampleTests.OutcomeOf("rod-and-held-sides")).Choices;
        var (_, json) = Run("compare-mounts", Repository.PathOf("patterns/rod-and-held-sides/job.toml"), "--json");
        using var document = JsonDocument.Parse(json);

        Assert.Equal("rod sleeve forward, zipper aft, snaps on the port side, snaps on the starboard side", choices[0].Name);
        Assert.All(choices, choice => Assert.Equal((MountKind.Snaps, MountKind.Snaps), (choice.Mount.Port, choice.Mount.Starboard)));
        Assert.All(document.RootElement.GetProperty("choices").EnumerateArray(), choice => Assert.Equal("snaps", choice.GetProperty("port").GetString()));
        Assert.Equal("sleeve", document.RootElement.GetProperty("choices")[0].GetProperty("forward").GetString());
    }

    private static (int Code, string Output) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false)), output.ToString());
    }
}
