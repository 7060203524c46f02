using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Takeoff;

public sealed class OrderTests
{
    private static readonly ImmutableArray<OrderLine> Order = OrderOf(SampleJobs.Plain);

    /// <summary>1300 mm is 1.4217 yd, so 1.5 yd by quarter yards (arithmetic); a whole number of steps stays as it is.</summary>
    [Theory]
    [InlineData(1300, 228.6, 1371.6)]
    [InlineData(1300, 100, 1300)]
    [InlineData(1300.001, 100, 1400)]
    [InlineData(0.1, 500, 500)]
    public void Cloth_is_ordered_in_whole_steps(double usedMm, double stepMm, double orderedMm) =>
        Assert.Equal(orderedMm, CutPlan.RoundedUp(Length.FromMillimeters(usedMm), Length.FromMillimeters(stepMm)).Millimeters, 1e-9);

    /// <summary>A yard is 0.9144 m exactly (international agreement of 1959): ten yards are 9.144 m, ten metres 10.936 yd.</summary>
    [Theory]
    [InlineData(9144, PrintUnits.Metric, "10", "10")]
    [InlineData(9144, PrintUnits.Imperial, "10", "10")]
    [InlineData(9145, PrintUnits.Imperial, "11", "10")]
    [InlineData(10000, PrintUnits.Metric, "10", "11")]
    [InlineData(10000.5, PrintUnits.Metric, "11", "11")]
    [InlineData(1, PrintUnits.Metric, "1", "1")]
    public void Tapes_are_bought_in_whole_metres_and_whole_yards(double mm, PrintUnits units, string number, string other)
    {
        var bought = Bought.Whole(Length.FromMillimeters(mm), units);

        Assert.Equal((number, other), (Text(bought.Number), Text(bought.Other!.Number)));
        Assert.Equal(units == PrintUnits.Imperial ? ("yd", "m") : ("m", "yd"), (bought.Unit, bought.Other.Unit));
    }

    /// <summary>1.3 m by tenths is 1.3 m, 1.422 yd; by quarter yards 1.5 yd, 1.372 m (1.3716).</summary>
    [Theory]
    [InlineData(1300, 100, PrintUnits.Metric, "1.3", "1.422")]
    [InlineData(1300, 228.6, PrintUnits.Imperial, "1.5", "1.372")]
    public void Cloth_is_told_in_both_systems(double mm, double stepMm, PrintUnits units, string number, string other)
    {
        var bought = Bought.InSteps(Length.FromMillimeters(mm), Length.FromMillimeters(stepMm), units);

        Assert.Equal((number, other), (Text(bought.Number), Text(bought.Other!.Number)));
    }

    [Theory]
    [InlineData(5, 5, 1, "pack")]
    [InlineData(6, 5, 2, "pack")]
    [InlineData(6, 1, 6, "piece")]
    public void Small_things_are_bought_in_whole_packs(int count, int pack, int bought, string unit) =>
        Assert.Equal(new Bought(bought, unit), Bought.InPacks(count, pack));

    [Fact]
    public void Thread_on_spools_is_bought_by_the_spool() =>
        Assert.Equal(new Bought(3, "spool"), Bought.InRolls(SampleJobs.Mm(200_001), SampleJobs.Mm(100_000), "spool"));

    [Fact]
    public void The_order_names_all_that_the_job_needs() => Assert.Equal(
        ["marine-acrylic", "tooth-10", "stop", "v92", "nm110", "basting-6", "foam-25", "webbing-25", "wipe"],
        Order.Select(line => line.Thing.Grade));

    /// <summary>Two zippers of 1100 - 50.8 = 1049.2 mm: both from stock of 48 in.</summary>
    [Fact]
    public void Zippers_come_from_stock()
    {
        var zipper = Line(Order, "tooth-10");

        Assert.Equal((2, "piece", 1219.2), (zipper.Bought.Number, zipper.Unit, zipper.Thing.Length!.Value.Millimeters));
        Assert.StartsWith("trimmed to 1049.2 mm", zipper.Also, StringComparison.Ordinal);
    }

    /// <summary>Trimming takes both stops off each of the two zippers; one that has just the right length keeps its own.</summary>
    [Fact]
    public void A_trimmed_zipper_gets_new_stops()
    {
        var fits = OrderOf(SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { Stock = [SampleJobs.Mm(1049.2)] }));

        Assert.Equal((4, "piece"), (Line(Order, "stop").Bought.Number, Line(Order, "stop").Unit));
        Assert.DoesNotContain(fits, line => line.Thing.Grade == "stop");
        Assert.EndsWith("on the left of 1 and on the right of 1, or all have a pull on both faces", Line(Order, "tooth-10").Also, StringComparison.Ordinal);
    }

    /// <summary>From the roll two pieces of 1049.2 + 2 × 25 = 1099.2 mm: 2.1984 m, so 3 m; a slider and two stops each.</summary>
    [Fact]
    public void Zippers_from_the_roll_need_sliders_and_stops()
    {
        var order = OrderOf(SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { Kind = ZipperKind.Continuous }));

        Assert.Equal((3, "m"), (Line(order, "tooth-10").Bought.Number, Line(order, "tooth-10").Unit));
        Assert.Equal((2, 4), (Line(order, "slider").Bought.Number, Line(order, "stop").Bought.Number));
    }

    /// <summary>The thread of the order is that of the seams and 15 per cent, in whole metres (witness: added up here in another way).</summary>
    [Fact]
    public void Thread_is_that_of_every_run_with_waste()
    {
        var seams = JobSeams.Of(PatternsOf(SampleJobs.Plain));
        var millimetres = 0.0;
        foreach (var seam in seams)
        {
            foreach (var run in seam.Rows.SelectMany(row => row.Runs))
            {
                var thickness = (0.5 * run.Stack.Cloth) + (0.6 * run.Stack.ZipperTape) + (0.5 * run.Stack.Binding) + (1.2 * run.Stack.Webbing);
                millimetres += seam.Copies * ((2 * run.Length.Millimeters) + (2 * run.Length.Millimeters * thickness / 4.5));
            }
        }

        Assert.Equal(Math.Ceiling(millimetres * 1.15 / 1000), (double)Line(Order, "v92").Bought.Number);
    }

    [Fact]
    public void Spare_is_added_before_the_shops_step()
    {
        // 562.9 mm used makes 0.6 m; with 10 per cent, 619.2 mm, 0.7 m.
        var used = CutPlan.Of(PatternsOf(SampleJobs.Plain), new BottomLeftSearch(50), cancellation: TestContext.Current.CancellationToken).Used.Millimeters;
        var spare = SampleJobs.Plain with { Workshop = SampleJobs.Plain.Workshop with { Buying = new(0.1m, null, []) } };

        Assert.Equal(Math.Ceiling(used / 100) / 10, (double)Line(Order, "marine-acrylic").Bought.Number, 1e-9);
        Assert.Equal(Math.Ceiling(used * 1.1 / 100) / 10, (double)Line(OrderOf(spare), "marine-acrylic").Bought.Number, 1e-9);
    }

    [Fact]
    public void Every_line_names_pieces_that_are_cut()
    {
        var keys = PatternsOf(SampleJobs.Plain).Pieces.Select(piece => piece.Key).ToHashSet();

        Assert.All(Order, line => Assert.NotEmpty(line.Use.Pieces));
        Assert.All(Order, line => Assert.Subset(keys, line.Use.Pieces.ToHashSet()));
        Assert.All(Order, line => Assert.NotEmpty(line.Rounding));
    }

    internal static ImmutableArray<OrderLine> OrderOf(CarrierJob job)
    {
        var patterns = PatternsOf(job);
        return Purchase.Of(patterns, CutPlan.Of(patterns, new BottomLeftSearch(50))).Order;
    }

    private static PatternSet PatternsOf(CarrierJob job) => PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0))));

    private static OrderLine Line(ImmutableArray<OrderLine> order, string grade) => Assert.Single(order, line => line.Thing.Grade == grade);

    private static string Text(decimal number) => number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
