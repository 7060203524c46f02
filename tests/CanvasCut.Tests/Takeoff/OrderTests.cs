using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Takeoff;

public sealed class OrderTests
{
    /// <summary>
    /// C = 2 + 2·T·S: thickness 0.01 in at 10 stitches an inch takes 2.2 in of thread an inch (textilecalculations.com);
    /// 2 mm at 6 an inch takes 2.945 (the same formula, worked by hand).
    /// </summary>
    [Theory]
    [InlineData(0.254, 2.54, 2.2)]
    [InlineData(2, 25.4 / 6, 2.945)]
    public void A_lockstitch_takes_the_published_thread(double thicknessMm, double stitchMm, double ratio) =>
        Assert.Equal(ratio, SewnLengths.LockstitchRatio(Length.FromMillimeters(thicknessMm), Length.FromMillimeters(stitchMm)), 5e-4);

    /// <summary>1300 mm is 1.4217 yd, so 1.5 yd by quarter yards (arithmetic); a whole number of steps stays as it is.</summary>
    [Theory]
    [InlineData(1300, 228.6, 1371.6)]
    [InlineData(1300, 100, 1300)]
    [InlineData(1300.001, 100, 1400)]
    [InlineData(0.1, 500, 500)]
    public void Cloth_is_ordered_in_whole_steps(double usedMm, double stepMm, double orderedMm) =>
        Assert.Equal(orderedMm, CutPlan.RoundedUp(Length.FromMillimeters(usedMm), Length.FromMillimeters(stepMm)).Millimeters, 1e-9);

    [Fact]
    public void The_order_names_cloth_zippers_thread_and_tape()
    {
        var patterns = PatternSet.Of(SampleJobs.Plain, MountedShape.Of(SampleJobs.Plain, CanvasCut.Design.LongSide.Athwart));
        var plan = CutPlan.Of(patterns, new CanvasCut.Nesting.BottomLeftSearch(50));
        var order = OrderList.Of(patterns, plan);

        Assert.Equal(["test cloth", "separating zipper", "thread, thread", "basting tape"], order.Select(line => line.Item.Split(", c")[0].Split(", roll")[0].Split(", 1/4")[0]));
        Assert.Equal((plan.Ordered.Meters, "m"), (double.Parse(order[0].Quantity, System.Globalization.CultureInfo.InvariantCulture), order[0].Unit));

        // Two zippers of 1100 - 50.8 = 1049.2 mm: both from stock of 48 in.
        Assert.Equal(("2", "piece"), (order[1].Quantity, order[1].Unit));
        Assert.StartsWith("1219.2 mm (48 in) long, trimmed to 1049.2 mm", order[1].Also, StringComparison.Ordinal);
    }
}
