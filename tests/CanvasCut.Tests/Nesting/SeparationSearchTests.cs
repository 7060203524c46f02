using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class SeparationSearchTests
{
    private static readonly SeparationSearch Search = new();

    /// <summary>Hollow shapes whose corners lie in order around the middle, so that they never cross themselves.</summary>
    private static readonly Gen<Outline> Star =
        Gen.Double[8, 40].Array[5, 14].Select(radii => new Outline(radii.Select((radius, i) =>
            new Point(radius * Math.Cos(2 * Math.PI * i / radii.Length), radius * Math.Sin(2 * Math.PI * i / radii.Length)))));

    private static readonly Gen<NestingTask> Task =
        Gen.Select(
            Gen.Select(Star, Gen.Int[1, 3], Gen.Int[0, 2], (shape, demand, turns) => new NestingItem("star", shape, demand, (AllowedTurns)turns)).Array[2, 4],
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 8]),
            Gen.OneOf(Gen.Const(0.0), Gen.Const(25.0)),
            (items, gapMm, repeatMm) => new NestingTask([.. items], 100, gapMm, [new(30, 20, 50, 45)], repeatMm));

    /// <summary>NetTopologySuite is the witness: overlap, gap, strip, zone, repeat, turns and number of copies.</summary>
    [Fact]
    public void A_layout_has_no_fault_and_is_no_longer_than_the_first_one_and_the_same_every_time() =>
        Task.Sample(
            task =>
            {
                var control = new NestingControl(NestingBudget.OfSteps(4000), Seed: 7);
                var layout = Search.Find(task, control)!;

                Assert.Empty(LayoutCheck.Faults(layout));
                Assert.InRange(layout.LengthMm, LowerBound.LengthMm(task) - 1e-6, new BottomLeftSearch().Find(task)!.LengthMm);
                Assert.Equal(layout.Placements.AsEnumerable(), Search.Find(task, control)!.Placements);
            },
            iter: 8,
            threads: 1);

    /// <summary>
    /// Four angles, 50 on a side and 10 thick, on a strip of 60. Worked by hand: two, the one turned by half, lie in a
    /// square of 60, so that 120 is enough for all; by area none is shorter than 4 · 900 / 60 = 60.
    /// </summary>
    [Fact]
    public void Hollow_pieces_lie_in_one_another()
    {
        var angle = new NestingItem("angle", new([new(0, 0), new(50, 0), new(50, 10), new(10, 10), new(10, 50), new(0, 50)]), 4, AllowedTurns.Half);
        var layout = Search.Find(Tasks.Of(60, 0, angle), new(NestingBudget.OfSteps(100_000)))!;

        Assert.Empty(LayoutCheck.Faults(layout));
        Assert.InRange(layout.LengthMm, 60, 120 + 1e-6);
    }

    [Fact]
    public void A_search_that_is_ended_gives_the_best_layout_so_far()
    {
        using var source = new CancellationTokenSource();
        var angle = new NestingItem("angle", new([new(0, 0), new(50, 0), new(50, 10), new(10, 10), new(10, 50), new(0, 50)]), 7, AllowedTurns.Quarter);
        var reported = new List<double>();
        var control = new NestingControl(NestingBudget.OfTime(TimeSpan.FromMinutes(5)), 1, progress => End(progress.BestMm), source.Token);
        var layout = Search.Find(Tasks.Of(70, 2, angle), control)!;

        Assert.Equal(Assert.Single(reported), layout.LengthMm);
        Assert.Empty(LayoutCheck.Faults(layout));

        void End(double bestMm)
        {
            reported.Add(bestMm);
            source.Cancel();
        }
    }

    /// <summary>Turns by any multiple of 15 degrees and mirrored, with a zone; rectangles with a zone and a repeat go the same way.</summary>
    [Fact]
    public void Free_turns_mirrors_zones_and_a_repeat_are_kept()
    {
        var hook = new Outline([new(0, 0), new(50, 0), new(50, 10), new(10, 10), new(10, 30), new(0, 30)]);
        var mirrored = new NestingItem("mirrored", hook, 2, [new Pose(0, isMirrored: true)]);
        var free = new NestingItem("free", hook, 2, AllowedTurns.Free, mayMirror: true);
        Box zone = new(20, 15, 40, 30);
        NestingTask[] tasks =
        [
            new([mirrored, free], 60, 2, [zone]),
            new([Tasks.Rectangle(20, 14, 5, AllowedTurns.Quarter)], 60, 2, [zone], 25),
        ];
        foreach (var layout in tasks.Select(task => new ThoroughSearch().Find(task, new(NestingBudget.OfSteps(20_000)))!))
        {
            Assert.Empty(LayoutCheck.Faults(layout));
            Assert.All(layout.Placements.Where(place => layout.Task.Items[place.Item] == mirrored), place => Assert.True(place.Pose.IsMirrored));
        }
    }

    [Fact]
    public void What_cannot_be_placed_has_no_layout() => Assert.Null(Search.Find(Tasks.Of(25, 0, Tasks.Rectangle(20, 30))));
}
