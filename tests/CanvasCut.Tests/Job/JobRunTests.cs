using System.Collections.Concurrent;
using System.Text.Json;
using CanvasCut.Cli;
using CanvasCut.Drawing;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using CanvasCut.Tests.JobFiles;

namespace CanvasCut.Tests.Job;

/// <summary>The stages of a run: each once, none before it is asked for, cancelled whole, and in one language.</summary>
public sealed class JobRunTests
{
    /// <summary>A text whose cut plan is searched for thoroughly, so that there is something to break off.</summary>
    private static readonly string Example = Repository.Read("patterns/three-bow-middle-tube/job.toml");

    [Fact]
    public void Every_stage_is_worked_out_once_however_many_ask()
    {
        var counts = new Counts();
        var run = RunOf(Sample.Least, counts);

        Parallel.For(0, 8, _ =>
        {
            Assert.NotEmpty(run.Content.Checks);
            Assert.NotEmpty(run.Drawings);
            Assert.Same(run.Placement, run.Placement);
            Assert.Null(run.Shape);
        });

        Assert.Equal(Enum.GetValues<RunStage>().Select(stage => (stage, 1)), counts.Begun.OrderBy(each => each.Key).Select(each => (each.Key, each.Value)));
        Assert.Equal(counts.Begun.Order(ByStage), counts.Ended.Order(ByStage));
    }

    [Fact]
    public void Nothing_is_worked_out_before_it_is_asked_for()
    {
        var counts = new Counts();
        var run = RunOf(Sample.Least, counts);
        Assert.Empty(counts.Begun);

        Assert.Equal(run.Placed.Mounted.CarrierBox, run.Placed.Mounted.CarrierBox);
        Assert.Equal([RunStage.Placed], counts.Begun.Keys);
    }

    [Fact]
    public void Checks_previews_and_work_do_not_wait_for_the_cut_plan()
    {
        var counts = new Counts();
        var run = RunOf(Sample.Least, counts);
        using var output = new StringWriter();
        using var errors = new StringWriter();

        CheckTable.Write(run, isEveryOne: true, new(output, errors, IsTerminal: false));
        Assert.NotEmpty(run.Placement.Figures);
        Assert.NotEmpty(run.Work.Steps);

        Assert.Contains("fit.margin", output.ToString(), StringComparison.Ordinal);
        Assert.Equal([RunStage.Placed, RunStage.Pieces, RunStage.Checks, RunStage.Work, RunStage.Placement], counts.Begun.Keys.Order());
    }

    /// <summary>What check --json prints is results.json without the plan and what hangs on it, and the plan is never begun.</summary>
    [Fact]
    public void Checks_for_programs_do_not_wait_for_the_cut_plan()
    {
        var counts = new Counts();
        var run = RunOf(Repository.Read("patterns/two-bow-small-top/job.toml"), counts);

        using var printed = JsonDocument.Parse(ResultsJson.OfChecks(run));
        Assert.DoesNotContain(RunStage.Plan, counts.Begun.Keys);

        using var whole = JsonDocument.Parse(ResultsJson.Of(run, []));
        var (few, all) = (Members(printed), Members(whole));
        string[] waiting = ["cut_plan", "order"];
        Assert.Equal(all.Keys, few.Keys);
        Assert.All(waiting, name => Assert.Equal((JsonValueKind.Null, false), (few[name].ValueKind, all[name].ValueKind == JsonValueKind.Null)));
        Assert.All(few.Where(member => !waiting.Contains(member.Key)), member => Assert.True(JsonElement.DeepEquals(all[member.Key], member.Value), member.Key));
    }

    private static Dictionary<string, JsonElement> Members(JsonDocument json) => json.RootElement.EnumerateObject().ToDictionary(member => member.Name, member => member.Value);

    [Fact]
    public void A_plan_broken_off_gives_no_plan_and_nothing_that_hangs_on_it()
    {
        using var source = new CancellationTokenSource();
        var counts = new Counts { OnPlan = source.Cancel, Cancellation = source.Token };
        var run = RunOf(Example, counts);
        var checks = run.Checks;

        Assert.ThrowsAny<OperationCanceledException>(() => run.Plan);
        Assert.ThrowsAny<OperationCanceledException>(() => run.Plan);
        Assert.ThrowsAny<OperationCanceledException>(() => run.Purchase);
        Assert.ThrowsAny<OperationCanceledException>(() => run.Content);
        Assert.ThrowsAny<OperationCanceledException>(() => ResultFiles.Of(run));
        Assert.ThrowsAny<OperationCanceledException>(() => run.ClothChoices());

        Assert.True(counts.Planned, "The search was never begun, so nothing was broken off.");
        Assert.Equal(checks, run.Checks);
    }

    [Fact]
    public void A_run_after_a_cancelled_one_gives_the_plan_it_always_gives()
    {
        using var source = new CancellationTokenSource();
        var cancelled = RunOf(Example, new Counts { OnPlan = source.Cancel, Cancellation = source.Token });
        Assert.ThrowsAny<OperationCanceledException>(() => cancelled.Plan);

        var (again, own) = (RunOf(Example, new Counts()).Plan, RunOf(Example, new Counts()).Pieces);
        var alone = CutPlan.Of(own, PlanSearch.For(own.Job), cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(alone.Placed.Select(placed => placed.Outline.Bounds), again.Placed.Select(placed => placed.Outline.Bounds));
    }

    [Theory]
    [InlineData("en", "de")]
    [InlineData("de", "en")]
    public void A_run_speaks_the_language_it_was_begun_in_whoever_asks(string begun, string asking)
    {
        JobRun run, same;
        using (Languages.Speak(begun))
        {
            (run, same) = (RunOf(Sample.Least, new Counts()), RunOf(Sample.Least, new Counts()));
            Assert.NotEmpty(same.Purchase.Order);
            Assert.NotEmpty(same.Placement.Figures);
        }

        using var other = Languages.Speak(asking);
        Assert.Equal(same.Checks.Select(check => check.Advice), run.Checks.Select(check => check.Advice));
        Assert.Equal(same.Work.Steps.Select(step => step.Step.Task.Name), run.Work.Steps.Select(step => step.Step.Task.Name));
        Assert.Equal(same.Purchase.Order.Select(line => line.Item), run.Purchase.Order.Select(line => line.Item));
        Assert.Equal(Texts(same.Placement), Texts(run.Placement));
        Assert.NotEqual(Texts(RunOf(Sample.Least, new Counts()).Placement), Texts(run.Placement));
        Assert.Equal(asking, Languages.Code);
    }

    private static JobRun RunOf(string text, Counts counts)
    {
        var run = JobRun.Of(text, "job.toml", new() { Watch = counts, Cancellation = counts.Cancellation });
        Assert.True(run.IsValid, string.Join('\n', run.Problems));
        return run.Value;
    }

    private static IEnumerable<string> Texts(Sheet sheet) => sheet.Figures.OfType<Lettering>().Select(text => text.Text);

    private static Comparer<KeyValuePair<RunStage, int>> ByStage => Comparer<KeyValuePair<RunStage, int>>.Create((one, other) => one.Key.CompareTo(other.Key));

    /// <summary>Counts how often each stage is begun and ended.</summary>
    private sealed class Counts : IRunWatch
    {
        public ConcurrentDictionary<RunStage, int> Begun { get; } = [];

        public ConcurrentDictionary<RunStage, int> Ended { get; } = [];

        /// <summary>Done when a first plan was found.</summary>
        public Action? OnPlan { get; init; }

        /// <summary>Ends the run.</summary>
        public CancellationToken Cancellation { get; init; }

        public bool Planned { get; private set; }

        public void Begins(RunStage stage) => Begun.AddOrUpdate(stage, 1, (_, count) => count + 1);

        public void Ends(RunStage stage) => Ended.AddOrUpdate(stage, 1, (_, count) => count + 1);

        public void Plans(PlanProgress progress)
        {
            Planned = true;
            OnPlan?.Invoke();
        }
    }
}
