using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

public sealed class CutPlanTests
{
    public static TheoryData<WarpDirection, RollTurns, bool> Lays { get; } = new()
    {
        { WarpDirection.ForeAft, RollTurns.None, false },
        { WarpDirection.ForeAft, RollTurns.Half, false },
        { WarpDirection.ForeAft, RollTurns.Half, true },
        { WarpDirection.Athwart, RollTurns.Half, false },
        { WarpDirection.ForeAft, RollTurns.Quarter, false },
    };

    /// <summary>By NetTopologySuite: no two pieces overlap, the gap is kept, all lie between the selvages and before the cut.</summary>
    [Theory]
    [MemberData(nameof(Lays))]
    public void Pieces_lie_on_the_roll_without_overlap(WarpDirection warp, RollTurns turns, bool oneWay)
    {
        var plan = PlanOf(warp, turns, oneWay);
        var usable = Outline.Of(new Box(0, 12.7, plan.Used.Millimeters, 1524 - 12.7));

        Assert.All(plan.Placed, placed => Assert.True(Witness.OutsideMm2(placed.Outline, usable) < 1e-6));
        foreach (var (first, second) in plan.Placed.SelectMany((first, i) => plan.Placed.Skip(i + 1).Select(second => (first, second))))
        {
            Assert.True(Witness.DistanceMm(first.Outline, second.Outline) >= 5 - 1e-6, $"{first.Piece.Title.Id} and {second.Piece.Title.Id}");
        }

        Assert.True(plan.Used >= plan.LowerBound);
        Assert.Equal(plan.Placed.Sum(placed => placed.Piece.Shape.Cut.AreaMm2) / (1524 * plan.Ordered.Millimeters), plan.Use, 1e-12);
    }

    /// <summary>Every piece has its warp along the roll unless quarter turns are allowed; one-way cloth keeps its head.</summary>
    [Theory]
    [MemberData(nameof(Lays))]
    public void Grain_is_kept(WarpDirection warp, RollTurns turns, bool oneWay)
    {
        var plan = PlanOf(warp, turns, oneWay);

        foreach (var forward in plan.Placed.Select(placed => placed.Forward).Where(_ => turns != RollTurns.Quarter))
        {
            Assert.Equal(warp == WarpDirection.ForeAft ? 1 : 0, Math.Abs(forward.X), 1e-12);
            Assert.True(!oneWay || forward == new Step(1, 0));
        }
    }

    [Fact]
    public void Every_piece_is_placed_as_often_as_it_is_cut()
    {
        var plan = PlanOf(WarpDirection.ForeAft, RollTurns.Half, oneWay: false);

        Assert.Equal(4, plan.Placed.Count(placed => placed.Piece.Title.Id == "zipper-end-cap"));
        Assert.Equal(Enumerable.Range(1, plan.Placed.Length), plan.Placed.Select(placed => placed.Number));
    }

    private static CutPlan PlanOf(WarpDirection warp, RollTurns turns, bool oneWay)
    {
        var job = SampleJobs.Plain.On(SampleJobs.Cloth with { Lay = new(warp, turns, SampleJobs.Mm(5), oneWay) });
        return CutPlan.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart)), new BottomLeftSearch(50));
    }
}
