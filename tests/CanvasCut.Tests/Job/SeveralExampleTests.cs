using System.Text.Json;
using CanvasCut.Checks;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>The examples with several panels, against approved results and the hand calculations in their READMEs; every figure here stands there.</summary>
public sealed class SeveralExampleTests
{
    private const double ReadmeMm = 0.06;

    private static readonly TopRun Mirrored = Of("two-mirrored-panels");

    private static readonly TopRun Three = Of("three-small-panels");

    [Theory]
    [InlineData("two-mirrored-panels")]
    [InlineData("three-small-panels")]
    public void An_example_gives_the_approved_results(string example)
    {
        var top = example == "two-mirrored-panels" ? Mirrored : Three;
        var results = JsonSerializer.Deserialize(ResultsJson.Of(top, []), ResultsContext.Default.ResultsDocument)!;

        Golden.Matches($"patterns/{example}/expected/order.csv", OrderCsv.Of(top.Purchase));
        Golden.Matches($"patterns/{example}/expected/results.txt", ExampleTable.Of(results));
        Assert.Contains("by hand", Repository.Read($"patterns/{example}/README.md"), StringComparison.OrdinalIgnoreCase);
        Assert.False(top.HasFailed);
    }

    [Fact]
    public void Two_mirrored_panels_have_the_sizes_worked_out_by_hand()
    {
        Assert.All(Mirrored.Mountings, run =>
        {
            var (carrier, zippers) = (run.Pieces.WholeCarrier, run.Pieces.Mounted.Fastened.Zippers);
            Assert.Equal((590.8, 1050.8), (carrier.FinishedSize.Athwart.Millimeters, carrier.FinishedSize.ForeAft.Millimeters), new Within(ReadmeMm));
            Assert.Equal((667, 1127), (carrier.CutSize.Athwart.Millimeters, carrier.CutSize.ForeAft.Millimeters), new Within(ReadmeMm));
            Assert.All(zippers, zipper => Assert.Equal((486.825, 609.6), (zipper.Choice.Run.Millimeters, zipper.Choice.Buy.Millimeters), new Within(ReadmeMm)));
        });
        Assert.Equal((-560, 560), (Mirrored.Mountings[0].Pieces.Mounted.CarrierBox.Center.X, Mirrored.Mountings[1].Pieces.Mounted.CarrierBox.Center.X), new Within(ReadmeMm));
    }

    [Fact]
    public void Two_mirrored_panels_have_the_distances_worked_out_by_hand()
    {
        Assert.All(Mirrored.Mountings, run =>
        {
            Assert.Equal(140.28, run.Checks.Where(check => check.Code == CheckCodes.Margin).Min(check => check.Measured.Value!.Value.Millimeters), ReadmeMm);
            Assert.Equal(114.6, Assert.Single(run.Checks, check => check.Code == CheckCodes.KeepOut).Measured.Value!.Value.Millimeters, ReadmeMm);
        });
        Assert.Equal(478.4, Between(Mirrored, CheckCodes.Between)[0], ReadmeMm);
        Assert.Equal(504.5, Between(Mirrored, CheckCodes.BetweenPockets)[0], ReadmeMm);
        Assert.Equal(1016.025, Between(Mirrored, CheckCodes.BetweenPulls)[0], ReadmeMm);
    }

    /// <summary>The carriers lie side by side and the strips behind them.</summary>
    [Fact]
    public void Two_mirrored_panels_take_the_cloth_worked_out_by_hand()
    {
        Assert.Equal(1242.25, Mirrored.Plan.Used.Millimeters, ReadmeMm);
        Assert.Equal([1.4m, 4, 8, 9], Quantities(Mirrored, "marine-acrylic", "tooth-10", "stop", "foam-25"));
    }

    [Fact]
    public void Three_small_panels_are_as_worked_out_by_hand()
    {
        Assert.All(Three.Mountings, run =>
        {
            var (carrier, zippers) = (run.Pieces.WholeCarrier, run.Pieces.Mounted.Fastened.Zippers);
            Assert.Equal((450.8, 590.8), (carrier.FinishedSize.Athwart.Millimeters, carrier.FinishedSize.ForeAft.Millimeters), new Within(ReadmeMm));
            Assert.Equal((527, 667), (carrier.CutSize.Athwart.Millimeters, carrier.CutSize.ForeAft.Millimeters), new Within(ReadmeMm));
            Assert.All(zippers, zipper => Assert.Equal((346.825, 609.6), (zipper.Choice.Run.Millimeters, zipper.Choice.Buy.Millimeters), new Within(ReadmeMm)));
        });
        Assert.Equal([798.4, 148.4, 148.4], Between(Three, CheckCodes.Between), (one, other) => Math.Abs(one - other) < ReadmeMm);
        Assert.Equal([12, 24, 6, 15, 26], Quantities(Three, "tooth-10", "stop", "coated-patch", "foam-25", "wipe"));
    }

    /// <summary>The cloth is no less than the six carriers take, two beside each other.</summary>
    [Fact]
    public void Three_small_panels_take_no_less_cloth_than_six_carriers() => Assert.True(Three.Plan.Used.Millimeters >= 2011 && Three.Plan.Placed.Length == 2 * Three.Made.Pieces.Sum(piece => piece.Title.Quantity));

    private static double[] Between(TopRun top, string code) => [.. top.Between.Where(check => check.Code == code).Select(check => check.Measured.Value!.Value.Millimeters)];

    private static decimal[] Quantities(TopRun top, params string[] grades) => [.. grades.Select(grade => Assert.Single(top.Purchase.Order, line => line.Thing.Grade == grade).Bought.Number)];

    private static TopRun Of(string example)
    {
        var top = TopRun.Of(Repository.Read($"patterns/{example}/top.toml"), "top.toml", RunSettings.Usual);
        Assert.True(top.IsValid, string.Join('\n', top.Problems));
        return top.Value;
    }

    private sealed class Within(double mm) : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) < mm && Math.Abs(x.Item2 - y.Item2) < mm;

        public int GetHashCode((double, double) obj) => 0;
    }
}
