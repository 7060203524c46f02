using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

/// <summary>One order for several carriers and several sets: every sum is exact, and rounded once to what a shop sells.</summary>
public sealed class TogetherOrderTests
{
    private static readonly CarrierJob FromRoll = SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { Kind = ZipperKind.Continuous });

    /// <summary>
    /// By hand: a carrier takes two pieces of 1049.2 + 2 × 25 = 1099.2 mm, 2198.4 mm together, 3 m when it is bought for alone. Two take
    /// 4396.8 mm, 5 m and not 6; three sets of two take 13190.4 mm, 14 m and not 18.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 3)]
    [InlineData(2, 1, 5)]
    [InlineData(2, 3, 14)]
    public void Zippers_from_the_roll_are_added_up_before_they_are_rounded(int carriers, int sets, int metres)
    {
        var order = OrderOf(sets, [.. Carriers(FromRoll, carriers)]);

        Assert.Equal((metres, "m"), (Line(order, "tooth-10").Bought.Number, Line(order, "tooth-10").Unit));
        Assert.Equal((2 * carriers * sets, 4 * carriers * sets), (Line(order, "slider").Bought.Number, Line(order, "stop").Bought.Number));
    }

    /// <summary>By hand: two edges of 1049.2 mm and 15 % are 2413.16 mm, so 3 m; twice that is 4826.32 mm, 5 m.</summary>
    [Fact]
    public void Tapes_are_added_up_before_they_are_rounded()
    {
        var held = SampleJobs.Plain.Held(MountKind.HookAndLoop, MountKind.HookAndLoop);

        Assert.Equal(5, Line(OrderOf(1, [.. Carriers(held, 2)]), "hook-loop-25").Bought.Number);
    }

    /// <summary>Thread and needles are those of all rows: the thread of one carrier exactly (witness: its seams added up here) times four, then 15 % and whole metres.</summary>
    [Fact]
    public void Thread_and_needles_are_those_of_all_rows()
    {
        var one = PatternsOf(SampleJobs.Plain, "port");
        var order = OrderOf(2, [.. Carriers(SampleJobs.Plain, 2)]);
        var seams = JobSeams.Of(one);
        var thread = seams.Sum(seam => seam.Thread(one.Job.Workshop.Supplies, SampleJobs.Mm(4.5)).Meters);
        var rows = seams.Sum(seam => seam.Sewn.Meters);

        Assert.Equal(Math.Ceiling(4 * thread * 1.15), (double)Line(order, "v92").Bought.Number);
        Assert.Equal(Math.Ceiling((1 + Math.Ceiling(4 * rows / 20)) / one.Job.Workshop.Supplies.Sewing.Needle.Pack), (double)Line(order, "nm110").Bought.Number);
    }

    /// <summary>
    /// A panel of 800 mm has a carrier 825.4 mm long with zippers of 825.4 - 76.2 = 749.2 mm: from stock of 36 in. That of 1100 mm takes 48 in.
    /// Each length is a line of its own, and says whose it is.
    /// </summary>
    [Fact]
    public void What_is_not_alike_is_not_added_up()
    {
        var small = SampleJobs.Plain with { Panel = SampleJobs.Panel(800, 550) };
        var lines = OrderOf(1, PatternsOf(SampleJobs.Plain, "port"), PatternsOf(small, "starboard")).Where(line => line.Thing.Grade == "tooth-10").ToList();

        Assert.Equal([(2, 1219.2), (2, 914.4)], lines.Select(line => (line.Bought.Number, line.Thing.Length!.Value.Millimeters)));
        Assert.Equal(["port: forward and aft edge, one half on the carrier, one on the top", "starboard: forward and aft edge, one half on the carrier, one on the top"], lines.Select(line => line.Use.Text));
    }

    [Fact]
    public void What_is_alike_is_told_once_with_the_names_of_all()
    {
        var line = Line(OrderOf(3, [.. Carriers(FromRoll, 2)]), "slider");

        Assert.Equal("port, starboard: one a zipper; all of it for 3 sets", line.Also);
        Assert.Equal(["port-carrier", "starboard-carrier"], line.Use.Pieces.Select(key => key.Id));
    }

    /// <summary>One carrier's order has nobody's name on it.</summary>
    [Fact]
    public void One_carrier_is_told_of_without_its_name() =>
        Assert.Equal("one a zipper", Line(OrderOf(1, PatternsOf(FromRoll, "port")), "slider").Also);

    /// <summary>All pieces of all sets are cut from one roll: three sets of two carriers, each piece so often.</summary>
    [Fact]
    public void All_sets_are_cut_from_one_roll()
    {
        var made = new MadeTogether([.. Carriers(SampleJobs.Plain, 2)], 3);
        var plan = PlanOf(made);

        Assert.Equal(3 * 2 * PatternsOf(SampleJobs.Plain, "port").Pieces.Sum(piece => piece.Title.Quantity), plan.Placed.Length);
        Assert.Equal((double)Line(Purchase.Of(made, plan).Order, "marine-acrylic").Bought.Number, Math.Ceiling(plan.Used.Millimeters / 100) / 10, 1e-9);
    }

    private static IEnumerable<PatternSet> Carriers(CarrierJob job, int count) => new[] { "port", "starboard" }.Take(count).Select(name => PatternsOf(job, name));

    private static PatternSet PatternsOf(CarrierJob job, string name)
    {
        var named = job with { Mounting = new(name) };
        return PatternSet.Of(named, MountedShape.Of(named, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0))));
    }

    private static ImmutableArray<OrderLine> OrderOf(int sets, params ImmutableArray<PatternSet> carriers)
    {
        var made = new MadeTogether(carriers, sets);
        return Purchase.Of(made, PlanOf(made)).Order;
    }

    private static CutPlan PlanOf(MadeTogether made) => CutPlan.Of(made.PiecesOfAllSets, made.Job.Workshop, new BottomLeftSearch(50));

    private static OrderLine Line(ImmutableArray<OrderLine> order, string grade) => Assert.Single(order, line => line.Thing.Grade == grade);
}
