using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

/// <summary>
/// The bow of a strip against routes that share no formula with it: the pendulum equation of the elastica stepped out point by point,
/// published tables of the complete elliptic integrals, and the sine bow of small shortenings.
/// </summary>
public sealed class BowedStripTests
{
    /// <summary>
    /// θ″ = −λ² sin θ from the middle, where the strip is level and bent to κ, to its end, where it is straight: by Runge and Kutta, no
    /// elliptic integral anywhere. λ follows from the length by trying; then the ends' distance and the rise are added up.
    /// </summary>
    [Theory]
    [InlineData(1290, 46)]
    [InlineData(1100, 3)]
    [InlineData(655, 120)]
    [InlineData(1000, 500)]
    public void A_bow_is_what_stepping_out_the_curve_gives(double length, double shortening)
    {
        var radius = BowedStrip.SharpestRadiusMm(length, shortening);
        var (low, high) = (0.0, 4.8 / length);
        while (high - low > 1e-15)
        {
            var middle = (low + high) / 2;
            (low, high) = SteppedOut(radius, middle, length).Bend > 0 ? (middle, high) : (low, middle);
        }

        var half = SteppedOut(radius, low, length);
        Assert.Equal(length - shortening, 2 * half.X, 1e-3);
        Assert.Equal(half.Fall, BowedStrip.RiseMm(length, shortening), 1e-3);
    }

    /// <summary>
    /// Abramowitz and Stegun, table 17.1, m = k² = 0.5: K = 1.854074677, E = 1.350643881. So a strip of 1000 whose ends are 2(1 − E/K) of
    /// it nearer, 543.0532, has in its middle 1000/(4·0.707106781·1.854074677) = 190.6899, and rises by 0.707106781·1000/1.854074677 = 381.3799.
    /// </summary>
    [Fact]
    public void A_bow_of_the_published_integrals_has_their_radius()
    {
        const double K = 1.854074677, E = 1.350643881;
        var shortening = 1000 * 2 * (1 - (E / K));

        Assert.Equal(543.0532, shortening, 1e-3);
        Assert.Equal(190.6899, BowedStrip.SharpestRadiusMm(1000, shortening), 1e-3);
        Assert.Equal(381.3799, BowedStrip.RiseMm(1000, shortening), 1e-3);
    }

    /// <summary>A flat sine bow of rise a is shortened by π²a²/4L and bent to L²/π²a; of 1 in 1000: a = 20.13 and R = 5033.</summary>
    [Fact]
    public void A_flat_bow_is_a_sine()
    {
        Assert.Equal(5033, BowedStrip.SharpestRadiusMm(1000, 1), 5.0);
        Assert.Equal(20.13, BowedStrip.RiseMm(1000, 1), 0.02);
        Assert.Equal(double.PositiveInfinity, BowedStrip.SharpestRadiusMm(1000, 0));
    }

    [Theory]
    [InlineData(1290, 900)]
    [InlineData(550, 3000)]
    [InlineData(1000, 150)]
    public void What_a_radius_allows_is_bent_to_that_radius(double length, double radius) =>
        Assert.Equal(radius, BowedStrip.SharpestRadiusMm(length, BowedStrip.MostShorteningMm(length, radius)), 1e-6 * radius);

    [Fact]
    public void Ends_that_would_meet_are_no_bow()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BowedStrip.SharpestRadiusMm(1000, 1000));
        Assert.Equal(1000, BowedStrip.MostShorteningMm(1000, 10), 1e-6);
    }

    /// <summary>Half the strip from its middle: how far its end lies along and below, and what bend is left there.</summary>
    private static (double X, double Fall, double Bend) SteppedOut(double radius, double lambda, double length)
    {
        const int Steps = 4000;
        var (angle, bend, x, fall, step) = (0.0, 1 / radius, 0.0, 0.0, length / 2 / Steps);
        double Slack(double at) => -lambda * lambda * Math.Sin(at);
        for (var i = 0; i < Steps; i++)
        {
            var (a1, b1) = (bend, Slack(angle));
            var (a2, b2) = (bend + (step / 2 * b1), Slack(angle + (step / 2 * a1)));
            var (a3, b3) = (bend + (step / 2 * b2), Slack(angle + (step / 2 * a2)));
            var (a4, b4) = (bend + (step * b3), Slack(angle + (step * a3)));
            var middle = angle + (step / 2 * a2);
            var next = angle + (step / 6 * (a1 + (2 * a2) + (2 * a3) + a4));
            (x, fall) = (x + (step / 6 * (Math.Cos(angle) + (4 * Math.Cos(middle)) + Math.Cos(next))), fall + (step / 6 * (Math.Sin(angle) + (4 * Math.Sin(middle)) + Math.Sin(next))));
            (angle, bend) = (next, bend + (step / 6 * (b1 + (2 * b2) + (2 * b3) + b4)));
        }

        return (x, fall, bend);
    }
}
