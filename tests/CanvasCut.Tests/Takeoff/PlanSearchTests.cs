using CanvasCut.Design;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Job;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

/// <summary>The search behind the cut plans.</summary>
public sealed class PlanSearchTests
{
    private const long Places = 60_000;

    /// <summary>Where piece by piece is proven shortest the plan is that one, place for place.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void A_proven_plan_is_left_alone(string example)
    {
        var patterns = ExampleTests.OutcomeOf(example).Content.Patterns;
        var stop = TestContext.Current.CancellationToken;
        var quick = CutPlan.Of(patterns, new BottomLeftSearch(), cancellation: stop);
        var plan = CutPlan.Of(patterns, PlanSearch.For(patterns.Job), cancellation: stop);

        Assert.NotEqual(PlanVerdict.Open, quick.Proof.Verdict);
        Assert.All(quick.Placed.Zip(plan.Placed), pair => Assert.Equal(pair.First.Outline.Corners, pair.Second.Outline.Corners));
    }

    /// <summary>A carrier that must lie the other way round on a narrow roll leaves waste that only the thorough search uses.</summary>
    [Fact]
    public void An_open_plan_is_made_shorter_and_the_same_every_time()
    {
        var patterns = NarrowAndTurned();
        var quick = CutPlan.Of(patterns, new BottomLeftSearch(), cancellation: TestContext.Current.CancellationToken);
        CutPlan Thorough() => CutPlan.Of(patterns, new PlanSearch(quick.Roll, 0.05m, Places));
        var (once, again) = (Thorough(), Thorough());

        Assert.Equal(PlanVerdict.Open, quick.Proof.Verdict);
        Assert.True(once.Used < quick.Used, $"{quick.Used.Millimeters} to {once.Used.Millimeters}");
        Assert.True(once.Used >= once.LowerBound);
        Assert.All(once.Placed.Zip(again.Placed), pair => Assert.Equal(pair.First.Outline.Corners, pair.Second.Outline.Corners));
    }

    [Fact]
    public void Whoever_listens_is_told_the_length_and_the_bound()
    {
        var told = new List<PlanProgress>();
        var patterns = ExampleTests.OutcomeOf("two-bow-small-top").Content.Patterns;
        var plan = CutPlan.Of(patterns, PlanSearch.For(patterns.Job), told.Add, TestContext.Current.CancellationToken);

        var progress = Assert.Single(told);
        Assert.Equal((plan.Used.Millimeters, plan.LowerBound.Millimeters), (progress.Best.Millimeters, progress.Bound.Millimeters));
    }

    private static PatternSet NarrowAndTurned()
    {
        var patterns = ExampleTests.OutcomeOf("does-not-fit").Content.Patterns;
        var cloth = patterns.Job.Workshop.Cloth;
        var job = patterns.Job.On(cloth with { Roll = cloth.Roll with { Width = SampleJobs.Mm(1168.4) }, Lay = cloth.Lay with { Turns = RollTurns.Quarter } });
        return PatternSet.Of(job, patterns.Mounted);
    }
}
