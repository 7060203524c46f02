using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class RectangleSearchTests
{
    private static readonly RectangleSearch Search = new();

    private static readonly Gen<NestingTask> Task =
        Gen.Select(
            Gen.Select(Gen.Double[5, 190], Gen.Double[5, 190], Gen.Int[1, 4], Gen.Int[0, 2]).Array[1, 8],
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 25]),
            (items, gapMm) => Tasks.Of(200, gapMm, [.. items.Select(item => Tasks.Rectangle(item.Item1, item.Item2, item.Item3, (AllowedTurns)item.Item4))]));

    [Fact]
    public void A_layout_has_no_fault_is_never_below_the_bound_and_is_the_same_every_time() =>
        Task.Sample(
            task =>
            {
                var control = new NestingControl(NestingBudget.OfSteps(5000), Seed: 3);
                var layout = Search.Find(task, control)!;

                Assert.Empty(LayoutCheck.Faults(layout));
                Assert.True(layout.LengthMm >= new LengthBounds(task).Best(layout.LengthMm * 2).LengthMm - 1e-6);
                Assert.Equal(layout.Placements.AsEnumerable(), Search.Find(task, control)!.Placements);
            },
            iter: 40);

    /// <summary>
    /// By brute force on a grid, which misses nothing: whole-numbered rectangles pushed left and down lie on it (the normal
    /// patterns of N. Christofides and C. Whitlock, Operations Research 25, 1977).
    /// </summary>
    [Theory]
    [InlineData(2, 40)]
    [InlineData(3, 40)]
    [InlineData(4, 20)]
    [InlineData(5, 6)]
    public void Up_to_five_rectangles_lie_as_short_as_can_be_and_that_is_proven(int count, int tries) =>
        Gen.Select(Gen.Select(Gen.Int[1, 5], Gen.Int[1, 5]).Array[count], Gen.Bool).Sample(
            (sizes, turned) =>
            {
                var turns = turned ? AllowedTurns.Quarter : AllowedTurns.None;
                var task = Tasks.Of(6, 0, [.. sizes.Select(size => Tasks.Rectangle(size.Item1, size.Item2, 1, turns))]);
                var shortestMm = BruteForce.ShortestLength([.. sizes], turned, 6);
                var proof = new RectangleProof();

                Assert.Equal(shortestMm, Search.Find(task)!.LengthMm, 1e-9);
                Assert.True(new LengthBounds(task).Best(shortestMm * 2).LengthMm <= shortestMm);
                Assert.Equal(LengthAnswer.Possible, proof.Try(task, shortestMm));
                Assert.Equal(LengthAnswer.Impossible, proof.Try(task, shortestMm - 0.01));
            },
            iter: tries);

    /// <summary>Two lie side by side with a gap of 10 across 210, the third behind them: 100 + 10 + 100, worked by hand.</summary>
    [Fact]
    public void The_gap_is_between_the_pieces_alone()
    {
        var task = Tasks.Of(210, 10, Tasks.Rectangle(100, 100, 3));
        var proof = new RectangleProof();

        Assert.Equal(210, Search.Find(task)!.LengthMm, 1e-9);
        Assert.Equal(LengthAnswer.Impossible, proof.Try(task, 209.999));
        Assert.Equal(LengthAnswer.Possible, proof.Try(task, 210));
    }

    [Fact]
    public void A_proof_that_takes_too_long_is_given_up()
    {
        var task = Tasks.Of(1000, 0, [.. Enumerable.Range(1, 12).Select(i => Tasks.Rectangle(101 + (17.3 * i), 97 + (29.1 * i)))]);

        Assert.Equal(LengthAnswer.Unknown, new RectangleProof(mostSteps: 100).Try(task, task.AreaMm2 / 1000 * 1.05));
    }

    [Fact]
    public void Pieces_that_are_not_rectangles_zones_and_a_repeat_are_left_to_other_searches()
    {
        var rectangle = Tasks.Rectangle(20, 30);
        var triangle = new NestingItem("triangle", new([new(0, 0), new(20, 0), new(0, 20)]), 1, AllowedTurns.Half);
        NestingTask[] others =
        [
            Tasks.Of(100, 0, rectangle, triangle),
            new([rectangle], 100, 0, [new(0, 0, 10, 10)]),
            new([rectangle], 100, 0, default, 25),
            Tasks.Of(100, 0, new NestingItem("free", rectangle.Shape, 1, AllowedTurns.Free)),
        ];

        Assert.True(RectangleSearch.IsFor(Tasks.Of(100, 0, rectangle)));
        Assert.All(others, task => Assert.False(RectangleSearch.IsFor(task)));
        Assert.All(others, task => Assert.Throws<ArgumentException>(() => Search.Find(task)));
        Assert.All(others, task => Assert.Equal(LengthAnswer.Unknown, new RectangleProof().Try(task, 1000)));
        Assert.Null(Search.Find(Tasks.Of(25, 0, rectangle)));
    }

    [Fact]
    public void A_search_that_is_ended_at_once_gives_a_layout_all_the_same()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var task = Tasks.Of(1000, 5, [.. Enumerable.Range(1, 20).Select(i => Tasks.Rectangle(101 + (17.3 * i), 97 + (29.1 * i)))]);
        var layout = Search.Find(task, new(NestingBudget.OfTime(TimeSpan.FromMinutes(5)), Cancellation: source.Token))!;

        Assert.Empty(LayoutCheck.Faults(layout));
    }
}
