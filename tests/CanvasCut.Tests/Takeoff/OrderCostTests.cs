using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

public sealed class OrderCostTests
{
    private static readonly Money Euro = new("EUR", new(2026, 3, 1), 2);

    /// <summary>Three times 0.10 are 0.30, which binary fractions miss; 0.7 × 1.15 = 0.805 is rounded half away from zero.</summary>
    [Fact]
    public void Sums_are_exact_in_decimal()
    {
        var order = ImmutableArray.Create(Line("a", 3, "piece"), Line("b", 0.7m, "m"));
        var cost = OrderCost.Of(order, new(Euro, 0, null, [new("a", null, "piece", 0.10m), new("b", null, "m", 1.15m)]));

        Assert.Equal([0.30m, 0.81m], cost.Lines.Select(line => line.Amount!.Value));
        Assert.Equal((1.11m, 0, "1.11"), (cost.Total, cost.Unpriced, cost.Text(cost.Total)));
    }

    /// <summary>10 × 12.34 = 123.40; 5 per cent of it 6.17; 9.5 h at 18 are 171; in all 300.57.</summary>
    [Fact]
    public void Waste_and_labour_are_added()
    {
        var cost = OrderCost.Of([Line("a", 10, "piece")], new(Euro, 0.05m, new(9.5m, 18), [new("a", null, "piece", 12.34m)]));

        Assert.Equal((123.40m, 6.17m, 171m, 300.57m), (cost.Materials, cost.Waste, cost.Labour, cost.Total));
        Assert.Equal("Total EUR 300.57; prices of 2026-03-01; labour counted.", cost.Summary);
    }

    [Fact]
    public void A_line_without_a_price_is_said_to_be_without()
    {
        var cost = OrderCost.Of([Line("a", 1, "piece"), Line("b", 1, "piece")], new(Euro, 0, null, [new("a", null, "piece", 2)]));

        Assert.Null(cost.Lines[1].Amount);
        Assert.Equal("Total EUR 2.00 WITHOUT 1 line that has no price; prices of 2026-03-01; labour not counted.", cost.Summary);
    }

    /// <summary>What is bought in yards may be priced by the metre: then the metres count, as the shop rounds them.</summary>
    [Fact]
    public void A_price_by_the_metre_counts_metres()
    {
        var cost = OrderCost.Of([Line("a", 11, "yd", new(10, "m"))], new(Euro, 0, null, [new("a", null, "m", 1.5m)]));

        Assert.Equal(15m, cost.Total);
    }

    [Fact]
    public void A_zipper_is_priced_by_its_length()
    {
        var zipper = new OrderLine(new("tooth-10", "zipper", SampleJobs.Mm(1219.2)), new(2, "piece"), string.Empty, "counted", new("edges", []));
        var prices = new PriceList(Euro, 0, null, [new("tooth-10", SampleJobs.Mm(914.4), "piece", 1), new("tooth-10", SampleJobs.Mm(1219.2), "piece", 9), new("tooth-10", null, "m", 4)]);

        Assert.Equal(18m, OrderCost.Of([zipper], prices).Total);
    }

    /// <summary>However many lines, the total is the sum of whole cents (witness: integers).</summary>
    [Fact]
    public void The_total_is_the_sum_of_whole_cents() => Gen.Select(Gen.Int[0, 100_000], Gen.Int[1, 99]).Array[1, 30].Sample(lines =>
    {
        var order = lines.Select((line, i) => Line(i.ToString(CultureInfo.InvariantCulture), line.Item2, "piece")).ToImmutableArray();
        var prices = lines.Select((line, i) => new Price(i.ToString(CultureInfo.InvariantCulture), null, "piece", line.Item1 / 100m)).ToImmutableArray();

        Assert.Equal(lines.Sum(line => (long)line.Item1 * line.Item2), OrderCost.Of(order, new(Euro, 0, null, prices)).Total * 100);
    });

    internal static OrderLine Line(string grade, decimal number, string unit, Bought? other = null) =>
        new(new(grade, grade), new(number, unit, other), string.Empty, "counted", new("a test", []));
}
