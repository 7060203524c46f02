using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Checks.Weather;

public sealed class SlopeTests
{
    /// <summary>
    /// On an arc of radius R the slope at a distance s along it from the crown is s/R. Chord 1750 and crown 90:
    /// R = 1750²/720 + 45 = 4298.5 mm; the panel's corner is 550 mm out: 550/4298.5 = 0.12795 rad = 7.33 degrees.
    /// </summary>
    [Fact]
    public void A_corner_on_an_arc_slopes_as_the_circle_does()
    {
        var check = Corner(Level(90));

        Assert.Equal(7.33, QuantityWords.Plain(check.Measured.Reading!.Value).Number, 0.2);
        Assert.Equal(Verdict.Pass, check.Verdict);
    }

    /// <summary>Crown 40: R = 9590.3 mm, 550/9590.3 rad = 3.29 degrees.</summary>
    [Fact]
    public void A_corner_that_is_nearly_level_is_a_caution()
    {
        var check = Corner(Level(40));

        Assert.Equal(3.29, QuantityWords.Plain(check.Measured.Reading!.Value).Number, 0.2);
        Assert.Equal(Verdict.Caution, check.Verdict);
    }

    [Fact]
    public void Without_heights_it_is_not_checked_and_says_what_is_missing()
    {
        var check = Drain(SampleJobs.Plain);

        Assert.Equal(Verdict.NotChecked, check.Verdict);
        Assert.Contains("top.bow[1].height", check.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_runs_off_a_crowned_top() => Assert.Equal(Verdict.Pass, Drain(Level(90)).Verdict);

    /// <summary>
    /// Bows at 60 and 1540, a bay that hangs 40 mm: nearly a parabola, so that the carrier's edges, 287.7 mm from its middle
    /// at station 800, lie 40·(287.7/740)² = 6.05 mm above it.
    /// </summary>
    [Fact]
    public void Water_gathers_in_the_middle_of_a_sagging_bay()
    {
        var halves = BowHalves.Even(CircularArc.FromChordAndRise(1750, 90));
        var check = Drain(With(Bow(60, halves, 40), Bow(1540, halves, 0)));

        Assert.Equal(Verdict.Caution, check.Verdict);
        Assert.Equal(6.05, check.Measured.Value!.Value.Millimeters, 0.1);
        Assert.Contains("station 800 mm", check.Advice, StringComparison.Ordinal);
    }

    private static CarrierJob Level(double crown)
    {
        var halves = BowHalves.Even(CircularArc.FromChordAndRise(1750, crown));
        return With(Bow(60, halves, 0), Bow(1540, halves, 0));
    }

    private static Bow Bow(double station, BowHalves halves, double sag) => new(SampleJobs.Mm(station), SampleJobs.Mm(25.4), halves, SampleJobs.Mm(0), SampleJobs.Mm(sag));

    private static CarrierJob With(params ImmutableArray<Bow> bows) => SampleJobs.Plain with { Top = SampleJobs.Top(1600, 1800, bows) };

    private static CheckResult Corner(CarrierJob job) => Assert.Single(Results(job), check => check.Code == CheckCodes.SlopeCorner && check.Subject.Contains("forward port", StringComparison.Ordinal));

    private static CheckResult Drain(CarrierJob job) => Assert.Single(Results(job), check => check.Code == CheckCodes.SlopeDrain);

    private static ImmutableArray<CheckResult> Results(CarrierJob job) =>
        JobChecks.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)))));
}
