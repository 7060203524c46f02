using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting.Bounds;

public sealed class DualFeasibleTests
{
    private static readonly Gen<DualFeasible> Function = Gen.OneOf(
        Gen.Double[0, 0.5].Select(threshold => (DualFeasible)new TallCountsWhole(threshold)),
        Gen.Int[1, 8].Select(most => (DualFeasible)new RoundedShares(most)),
        Gen.Double[0.02, 0.5].Select(threshold => (DualFeasible)new RoomBeside(threshold)));

    /// <summary>
    /// Values worked by hand from the definitions of S. Fekete and J. Schepers, arXiv cs/0402044: u to the (k) is x where
    /// (k + 1) x is whole, else floor((k + 1) x) / k; U to the (e) is 1 above 1 - e, x from e to 1 - e, else 0; phi to the
    /// (e) is 1 - floor((1 - x) / e) / floor(1 / e) above 1/2, 1 / floor(1 / e) from e to 1/2, else 0.
    /// </summary>
    [Fact]
    public void The_three_families_have_the_published_values()
    {
        Assert.Equal([0, 0.25, 0.5, 2 / 3.0, 0.75, 1], new[] { 0.2, 0.25, 0.5, 0.6, 0.75, 0.8 }.Select(new RoundedShares(3).At));
        Assert.Equal([0, 0.3, 0.7, 1], new[] { 0.29, 0.3, 0.7, 0.71 }.Select(new TallCountsWhole(0.3).At));
        Assert.Equal([0, 1 / 3.0, 1 / 3.0, 2 / 3.0, 1], new[] { 0.29, 0.3, 0.5, 0.6, 0.71 }.Select(new RoomBeside(0.3).At), Close);
    }

    /// <summary>What the name promises: parts that add up to 1 are kept at 1.</summary>
    [Fact]
    public void What_fits_is_never_more_than_one() => Gen.Select(Function, Gen.Double[0.01, 1].Array[1, 7]).Sample((function, parts) =>
    {
        var sum = parts.Sum();
        Assert.True(parts.Sum(part => function.At(part / sum * (1 - 1e-12))) <= 1 + 1e-9);
    });

    /// <summary>Against the mean of many samples, which knows nothing of the breaks.</summary>
    [Fact]
    public void A_mean_is_that_of_many_samples() => Gen.Select(Function, Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
        (function, from, to) =>
        {
            const int Samples = 4000;
            var sampled = Enumerable.Range(0, Samples).Average(i => function.At(from + ((to - from) * (i + 0.5) / Samples)));
            Assert.Equal(sampled, function.Mean(from, to), 0.01);
        },
        iter: 100);

    private static bool Close(double one, double other) => Math.Abs(one - other) < 1e-12;
}
