using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Checks;

/// <summary>Water against a weather strip's free edge and its open ends.</summary>
public sealed class StripWaterTests
{
    private static readonly BowHalves Arc = BowHalves.Even(CircularArc.FromChordAndRise(1750, 90));

    /// <summary>
    /// 1000 mm of cloth rise by 100 mm from bow to bow: asin(0.1) = 5.739 degrees. A forward strip is sewn forward and free aft, an aft
    /// strip the other way round; where the top rises toward the free edge the water comes down to it.
    /// </summary>
    [Theory]
    [InlineData(0, 100, Side.Forward, -5.74, Verdict.Caution)]
    [InlineData(0, 100, Side.Aft, 5.74, Verdict.Pass)]
    [InlineData(100, 0, Side.Forward, 5.74, Verdict.Pass)]
    [InlineData(100, 0, Side.Aft, -5.74, Verdict.Caution)]
    [InlineData(0, 0, Side.Forward, 0, Verdict.Pass)]
    public void Water_runs_off_a_free_edge_or_under_it(double forward, double aft, Side edge, double fall, Verdict verdict)
    {
        var check = Of(Job(Bow(60, forward), Bow(1060, aft)), edge, 0, CheckCodes.StripWater);

        Assert.Equal((fall, verdict), (Degrees(check), check.Verdict));
    }

    /// <summary>
    /// On an arc of radius 1750²/720 + 45 = 4298.5 the slope at a distance s from the crown is s/R. A carrier 500 wide has a strip
    /// of 550.8: about the centreline both ends lie 275.4 out and fall outward 275.4/4298.5 rad = 3.67 degrees; 400 to port the
    /// starboard end lies 124.6 to port of the crown and falls inward 1.66 degrees.
    /// </summary>
    [Theory]
    [InlineData(0, 3.67, Verdict.Pass)]
    [InlineData(-400, -1.66, Verdict.Caution)]
    [InlineData(400, -1.66, Verdict.Caution)]
    public void An_end_that_lies_uphill_lets_water_in(double offset, double fall, Verdict verdict)
    {
        var check = Of(Job(Bow(60, 0), Bow(1060, 0)), Side.Forward, offset, CheckCodes.StripEnds);

        Assert.Equal((fall, verdict), (Degrees(check), check.Verdict));
        Assert.Equal(offset != 0, check.Advice.StartsWith(offset < 0 ? "Its starboard end" : "Its port end", StringComparison.Ordinal));
    }

    /// <summary>The same falls with the strip on the carrier, free the other way: what was a caution passes, and the advice of one names the other.</summary>
    [Theory]
    [InlineData(0, 100, Side.Forward, 5.74, Verdict.Pass)]
    [InlineData(0, 100, Side.Aft, -5.74, Verdict.Caution)]
    [InlineData(100, 0, Side.Forward, -5.74, Verdict.Caution)]
    [InlineData(100, 0, Side.Aft, 5.74, Verdict.Pass)]
    public void Sewn_to_the_carrier_the_water_must_run_outward(double forward, double aft, Side edge, double fall, Verdict verdict)
    {
        var check = Of(Job(Bow(60, forward), Bow(1060, aft)), edge, 0, CheckCodes.StripWater, StripGround.Carrier);
        var other = Of(Job(Bow(60, forward), Bow(1060, aft)), edge, 0, CheckCodes.StripWater);

        Assert.Equal((fall, verdict), (Degrees(check), check.Verdict));
        Assert.Contains($"weather_strip.sewn_to.{Words.Id(edge)} = \"{(verdict == Verdict.Pass ? "carrier" : "top")}\"", (verdict == Verdict.Pass ? other : check).Advice, StringComparison.Ordinal);
    }

    /// <summary>
    /// A carrier 500 wide 400 to port has its port edge 650 out. There a strip on the top is free 15.9 further in, 634.1 out, where the arc of 4298.5
    /// falls to port 634.1/4298.5 rad = 8.45 degrees, against it; one on the carrier is free 28.55 + 15.9 further out, 694.45, and falls with it 9.26.
    /// </summary>
    [Theory]
    [InlineData(StripGround.Top, -8.45, Verdict.Caution)]
    [InlineData(StripGround.Carrier, 9.26, Verdict.Pass)]
    public void A_strip_at_a_side_is_judged_by_the_fall_across(StripGround ground, double fall, Verdict verdict)
    {
        var job = Job(Bow(60, 0), Bow(1060, 0)).HeldAtSides(MountKind.Zipper, null);
        var check = Of(job, Side.Port, -400, CheckCodes.StripWater, ground);

        Assert.Equal((fall, verdict), (Degrees(check), check.Verdict));
    }

    [Fact]
    public void Without_heights_neither_is_checked() =>
        Assert.All(
            JobChecks.Of(PatternSet.Of(SampleJobs.Plain, MountedShape.Of(SampleJobs.Plain, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0))))).Where(check => check.Code is CheckCodes.StripWater or CheckCodes.StripEnds),
            check => Assert.Equal((Verdict.NotChecked, true), (check.Verdict, check.Advice.Contains("top.bow[1].height", StringComparison.Ordinal))));

    private static double Degrees(CheckResult check) => Math.Round(QuantityWords.Plain(check.Measured.Reading!.Value).Number, 2);

    private static CheckResult Of(CarrierJob job, Side edge, double offset, string code, StripGround ground = StripGround.Top)
    {
        var with = job.With(strip: SampleJobs.Strip with { Edges = [edge], SewnTo = Sides.All(ground) });
        var mounted = MountedShape.Of(with, LongSide.Athwart).At(new(SampleJobs.Mm(560), SampleJobs.Mm(offset)));
        return Assert.Single(JobChecks.Of(PatternSet.Of(with, mounted)), check => check.Code == code);
    }

    private static Bow Bow(double station, double height) => new(SampleJobs.Mm(station), SampleJobs.Mm(25.4), Arc, SampleJobs.Mm(height), SampleJobs.Mm(0));

    private static CarrierJob Job(params ImmutableArray<Bow> bows) => SampleJobs.Plain with { Top = SampleJobs.Top(1200, 1800, bows), Panel = SampleJobs.Panel(500, 300) };
}
