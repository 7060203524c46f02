using CanvasCut.Design;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

public sealed class MountOrderTests
{
    /// <summary>What is ordered is what is marked: one for each cross on the carrier's flaps, two for a lacing's, which has two rows.</summary>
    [Theory]
    [InlineData(MountKind.Snaps, MountKind.Snaps, "snap", 22)]
    [InlineData(MountKind.Zipper, MountKind.Twist, "twist-fastener", 6)]
    [InlineData(MountKind.Lacing, MountKind.HookAndLoop, "eyelet", 20)]
    public void Fasteners_are_ordered_as_they_are_marked(MountKind forward, MountKind aft, string grade, int pieces)
    {
        var patterns = PatternsOf(forward, aft);
        var marked = patterns.Mounted.Fastened.Flaps
            .Where(flap => flap.Kind != MountKind.HookAndLoop)
            .Sum(flap => flap.CentresOnCarrier.Length + (flap.Kind == MountKind.Lacing ? flap.CentresOnTop.Length : 0));

        Assert.Equal((new Bought(pieces, "piece"), marked), (Line(patterns, grade).Bought, pieces));
    }

    /// <summary>Two edges of 1049.2 mm and 15 %: 2413.16 mm, so 3 m.</summary>
    [Fact]
    public void Hook_and_loop_is_ordered_by_length() =>
        Assert.Equal(3, Line(PatternsOf(MountKind.HookAndLoop, MountKind.HookAndLoop), "hook-loop-25").Bought.Number);

    /// <summary>
    /// By hand: rows of eyelets 12.7 + 25.4 + 12.7 = 50.8 apart, 10 of them in 9 spaces of 91.178. Straight across at each of the ten:
    /// 508. Aslant to the next nine times: √(50.8² + 91.178²) = 104.374, together 939.37. And 600 for the ends.
    /// </summary>
    [Fact]
    public void A_lacing_line_goes_straight_across_and_aslant_by_turns() =>
        Assert.Equal(508 + 939.37 + 600, MountOrder.LineOf(PatternsOf(MountKind.Lacing, MountKind.Zipper).Mounted.Fastened.Flaps[0]).Millimeters, 0.02);

    [Fact]
    public void Without_zippers_none_are_ordered()
    {
        var order = OrderOf(PatternsOf(MountKind.Snaps, MountKind.Lacing));

        Assert.DoesNotContain(order, line => line.Thing.Grade is "tooth-10" or "slider" or "stop");
        Assert.Equal(["snap", "eyelet", "lacing-4"], order.Select(line => line.Thing.Grade).Skip(1).Take(3));
    }

    /// <summary>A separating zipper at one edge alone: one, of 48 in.</summary>
    [Fact]
    public void One_edge_takes_one_zipper() => Assert.Equal(new Bought(1, "piece"), Line(PatternsOf(MountKind.Zipper, MountKind.Snaps), "tooth-10").Bought);

    private static OrderLine Line(PatternSet patterns, string grade) => Assert.Single(OrderOf(patterns), line => line.Thing.Grade == grade);

    private static IEnumerable<OrderLine> OrderOf(PatternSet patterns) => [.. Purchase.Of(patterns, CutPlan.Of(patterns, new BottomLeftSearch())).Order];

    private static PatternSet PatternsOf(MountKind forward, MountKind aft)
    {
        var job = SampleJobs.Plain.Held(forward, aft);
        return PatternSet.Of(job, FitChoice.For(job).Mounted);
    }
}
