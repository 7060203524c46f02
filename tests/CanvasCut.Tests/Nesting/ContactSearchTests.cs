using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class ContactSearchTests
{
    private static readonly Gen<NestingTask> Task =
        Gen.Select(
            Gen.Select(Gen.Double[5, 60], Gen.Double[5, 60], Gen.Double[5, 60], Gen.Int[1, 2], Gen.Int[0, 2]).Array[2, 4],
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 8]),
            Gen.OneOf(Gen.Const(0.0), Gen.Const(40.0)),
            (items, gapMm, repeatMm) => new NestingTask(
                [.. items.Select(item => new NestingItem("dented", Dented(item.Item1, item.Item2, item.Item3), item.Item4, (AllowedTurns)item.Item5))],
                150,
                gapMm,
                [new(30, 20, 50, 45)],
                repeatMm));

    /// <summary>NetTopologySuite is the witness: overlap, gap, strip, zone, repeat, turns and number of copies.</summary>
    [Fact]
    public void A_layout_has_no_fault_and_is_no_longer_than_the_first_one_and_the_same_every_time() =>
        Task.Sample(
            task =>
            {
                var control = new NestingControl(NestingBudget.OfSteps(3000));
                var layout = new ContactSearch().Find(task, control)!;

                Assert.Empty(LayoutCheck.Faults(layout));
                Assert.InRange(layout.LengthMm, LowerBound.LengthMm(task) - 1e-6, new BottomLeftSearch().Find(task)!.LengthMm);
                Assert.Equal(layout.Placements.AsEnumerable(), new ContactSearch().Find(task, control)!.Placements);
            },
            iter: 4,
            threads: 1);

    /// <summary>A sheet of 100 by 60 cut into five pieces, one of them with a dent; by area no layout on a strip of 60 is shorter than 100.</summary>
    [Theory]
    [InlineData(AllowedTurns.None)]
    [InlineData(AllowedTurns.Half)]
    public void A_sheet_cut_up_is_put_together_again(AllowedTurns turns)
    {
        Point[][] pieces =
        [
            [new(0, 0), new(100, 0), new(40, 25)],
            [new(100, 0), new(100, 60), new(70, 40), new(40, 25)],
            [new(100, 60), new(0, 60), new(70, 40)],
            [new(0, 60), new(0, 0), new(40, 25)],
            [new(0, 60), new(40, 25), new(70, 40)],
        ];
        var task = Tasks.Of(60, 0, [.. pieces.Select((corners, i) => new NestingItem($"piece {i}", new(corners), 1, turns))]);

        Assert.Equal(6000, task.AreaMm2, 1e-9);
        Assert.Equal(100, new ContactSearch().Find(task, new(NestingBudget.OfSteps(200_000)))!.LengthMm, 1e-9);
        Assert.Equal(100, new ThoroughSearch().Find(task, new(NestingBudget.OfSteps(500_000)))!.LengthMm, 1e-9);
    }

    /// <summary>
    /// The sixteen pieces of R. Dighe, M. Jakiela, "Solving pattern nesting problems with genetic algorithms employing
    /// task decomposition and contact detection", Evolutionary Computation 3 (1996), as the ESICUP data sets give them
    /// (dighe1). They are a square of 100 cut up, so that no layout on a strip of 100 is shorter than 100. By hulls
    /// alone they lie about a fifth longer.
    /// </summary>
    [Fact]
    public void The_pieces_of_a_square_cut_up_are_laid_as_a_square_again()
    {
        var items = PublishedPieces.Dighe1.Select((corners, i) => new NestingItem($"piece {i}", new(corners), 1, AllowedTurns.None));
        var task = new NestingTask([.. items], 100, 0);
        var layout = new ContactSearch().Find(task, new(NestingBudget.OfSteps(4_000_000)))!;

        Assert.Equal(10000, task.AreaMm2, 1e-9);
        Assert.Empty(LayoutCheck.Faults(layout));
        Assert.Equal(100, layout.LengthMm, 1e-9);
    }

    [Fact]
    public void A_search_that_is_ended_at_once_gives_the_first_layout()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var task = Tasks.Of(100, 2, new NestingItem("dented", Dented(20, 30, 10), 6, AllowedTurns.Half));
        var layout = new ThoroughSearch().Find(task, new(NestingBudget.OfTime(TimeSpan.FromMinutes(5)), Cancellation: source.Token))!;

        Assert.Empty(LayoutCheck.Faults(layout));
    }

    [Fact]
    public void What_cannot_be_placed_has_no_layout() => Assert.Null(new ContactSearch().Find(Tasks.Of(25, 0, Tasks.Rectangle(20, 30))));

    private static Outline Dented(double a, double b, double c) =>
        new([new(0, 0), new(40 + a, 0), new(40 + a, 50 + b), new(20 + (a / 3), 5 + (c / 2)), new(0, 45 + c)]);
}
