using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

/// <summary>
/// Worked by hand for the plain job: carrier 1100 by 575.4 mm (0.63294 m²), zippers of 1049.2 mm, panel 1100 by 550 mm
/// (0.605 m²); 35 kn = 18.00556 m/s, q = 0.6125 × 324.200 = 198.573 Pa; uplift 198.573 × 1.4 × 0.63294 = 175.96 N.
/// </summary>
public sealed class HoldDownTests
{
    [Fact]
    public void The_uplift_is_pressure_times_coefficient_times_area() =>
        Assert.Equal(175.96, Of(SampleJobs.Plain).UpliftAt(Speed.FromKnots(35)).Newtons, 0.01);

    /// <summary>25 m/s, 1.2 m² and a coefficient of 1.5: 382.8125 × 1.5 × 1.2 = 689.06 N.</summary>
    [Fact]
    public void An_uplift_worked_by_hand_comes_out()
    {
        var job = SampleJobs.Plain with { Panel = SampleJobs.Panel(1200, 1000), Carrier = SampleJobs.Carrier with { Border = Sides.All(SampleJobs.Mm(0)) } };

        Assert.Equal(689.06, Of(WithFactors(job, 1.5)).UpliftAt(Speed.FromMetersPerSecond(25)).Newtons, 0.01);
    }

    /// <summary>175.96 / 2 / 1.0492 × 2 = 167.71 N/m; 250 N over 25 mm by 3 are 3333 N/m; it holds to 35·√(3333.3/167.71) = 156.0 kn.</summary>
    [Fact]
    public void Each_zipper_bears_half_and_its_worst_stretch_twice_the_mean()
    {
        var chain = Single(Of(SampleJobs.Plain), CheckCodes.WindZipper, "forward zipper's chain");

        Assert.Equal((167.71, 3333.33), Rounded(chain));
        Assert.Equal(156.0, chain.HoldsTo.Knots, 0.1);
    }

    /// <summary>167.71 N/m over 25.4 mm of setback and 25 mm of jaw are 8.45 N; 90 N by 3 are 30 N.</summary>
    [Fact]
    public void The_end_bears_the_setback_too() =>
        Assert.Equal((8.45, 30), Rounded(Single(Of(SampleJobs.Plain), CheckCodes.WindZipperEnd, "aft zipper's end")));

    /// <summary>
    /// 175.96 / 4 × 2 = 87.98 N. Thread 5.8 lbf = 25.800 N at 4.5 mm: 1.5 × 25.8 / 0.0045 = 8599.9 N/m, by 3 2866.6; two ends
    /// of 25 mm bear 143.33 N.
    /// </summary>
    [Fact]
    public void A_pocket_bears_its_part_of_an_open_zipper() =>
        Assert.Equal((87.98, 143.33), Rounded(Of(SampleJobs.Plain).Holds.Single(part => part.Code == CheckCodes.WindPocket)));

    [Fact]
    public void One_row_of_stitches_is_counted() =>
        Assert.Equal((167.71, 2866.63), Rounded(Of(SampleJobs.Plain).Holds.Single(part => part.Code == CheckCodes.WindSeam)));

    /// <summary>
    /// Panel 198.573 × 1.4 × 0.605 = 168.191 N; the strips of BondPlanTests, 2 × 1090 + 5 × 489.2 = 4626 mm of 25.4 mm, 0.1175004 m²:
    /// 1431.41 Pa. 0.25 psi are 1723.69 Pa, which it reaches at 35·√(1723.69/1431.41) = 38.41 kn.
    /// </summary>
    [Fact]
    public void The_adhesive_bears_the_panel()
    {
        var bond = Of(SampleJobs.Plain).Weakest;

        Assert.Equal(CheckCodes.WindBond, bond.Code);
        Assert.Equal((1431.41, 1723.69), Rounded(bond));
        Assert.Equal(38.41, bond.HoldsTo.Knots, 0.01);
    }

    /// <summary>4 square inches to the pound are 56.9 cm² to the kilogram, as the tape maker's answer has it.</summary>
    [Fact]
    public void The_adhesives_figure_is_the_published_one() =>
        Assert.Equal(56.9, 9.80665 / Of(SampleJobs.Plain).Weakest.Load.Reading!.Limit!.As(UnitsNet.Units.PressureUnit.Pascal) * 1e4, 0.1);

    [Theory]
    [InlineData(null, 35)]
    [InlineData(39.0, 35)]
    [InlineData(30.0, 30)]
    public void It_comes_off_at_the_makers_limit_or_the_jobs_whichever_is_lower(double? maker, double off) =>
        Assert.Equal(off, Of(WithMaker(SampleJobs.Plain, maker)).OffAt.Knots, 1e-9);

    /// <summary>
    /// Tape of 10 mm fits into the dead border of 15 and lies at 5 mm: 2 × 1090 + 2 × (540 − 20) = 3220 mm and three strips
    /// (1070 − 300) / 310 = 2.48, of 520: 4780 mm, 0.0478 m²; 168.191 / 0.0478 = 3518.6 Pa; 35·√(1723.69/3518.6) = 24.50 kn.
    /// </summary>
    [Fact]
    public void What_gives_first_brings_it_off()
    {
        var job = Narrow(10);
        var off = Assert.Single(Results(job), check => check.Code == CheckCodes.WindOff);

        Assert.Equal(24.50, Of(job).OffAt.Knots, 0.01);
        Assert.Equal(Verdict.Caution, off.Verdict);
        Assert.Contains("adhesive", off.Advice, StringComparison.Ordinal);
    }

    /// <summary>Three strips of 6 mm: 2 × 1090 + 5 × 528 = 4820 mm, 0.02892 m²; 35·√(1723.69/5815.7) = 19.05 kn, which is force 5.</summary>
    [Fact]
    public void A_panel_that_must_come_off_below_force_6_fails() =>
        Assert.Equal(Verdict.Fail, Assert.Single(Results(Narrow(6)), check => check.Code == CheckCodes.WindOff).Verdict);

    /// <summary>35 kn in gusts over 1.4 is a mean of 25 kn, force 6.</summary>
    [Fact]
    public void The_mean_wind_is_told() =>
        Assert.Contains("mean wind of about 25 kn, force 6", Assert.Single(Results(SampleJobs.Plain), check => check.Code == CheckCodes.WindOff).Advice, StringComparison.Ordinal);

    [Fact]
    public void A_class_without_a_figure_is_not_checked()
    {
        var job = SampleJobs.Plain with { Conditions = SampleJobs.Conditions with { Strength = SampleJobs.Conditions.Strength with { Zipper = new(ZipperClass.B, null, null) } } };

        Assert.Equal(2, Results(job).Count(check => check.Code is CheckCodes.WindZipper or CheckCodes.WindZipperEnd && check.Verdict == Verdict.NotChecked));
    }

    /// <summary>
    /// EN 1991-1-4:2005, table 7.6, overall coefficients cf of a canopy from 0 to 30 degrees, blocked beneath, as a public
    /// calculation and its test have them: the default coefficient covers them all.
    /// </summary>
    [Theory]
    [InlineData(0, -1.3)]
    [InlineData(5, -1.4)]
    [InlineData(10, -1.4)]
    [InlineData(15, -1.4)]
    [InlineData(20, -1.4)]
    [InlineData(25, -1.4)]
    [InlineData(30, -1.4)]
    public void The_default_coefficient_covers_the_published_canopies(double degrees, double coefficient)
    {
        var job = JobFiles.Sample.Job(JobFiles.Sample.Least);

        Assert.InRange(degrees, 0, 30);
        Assert.True(job.Conditions.Wind.Factors.Coefficient.DecimalFractions >= -coefficient);
    }

    /// <summary>EN 1991-1-4, 4.5: 3 m over the sea (z0 = 0.003 m) Iv = 1/ln(1000) = 0.1448; √(1 + 7·0.1448) = 1.419.</summary>
    [Fact]
    public void The_default_gust_is_that_of_the_standard() =>
        Assert.Equal(Math.Sqrt(1 + (7 / Math.Log(3 / 0.003))), JobFiles.Sample.Job(JobFiles.Sample.Least).Conditions.Wind.Factors.Gust.DecimalFractions, 0.02);

    private static HoldDown Of(CarrierJob job) => HoldDown.Of(job, Mounted(job));

    private static MountedShape Mounted(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)));

    private static ImmutableArray<CheckResult> Results(CarrierJob job) => JobChecks.Of(PatternSet.Of(job, Mounted(job)));

    private static WindHold Single(HoldDown hold, string code, string subject) => Assert.Single(hold.Holds, part => part.Code == code && part.Subject == subject);

    private static (double Load, double Allowed) Rounded(WindHold part) =>
        (Math.Round(QuantityWords.Plain(part.Load.Reading!.Value).Number, 2), Math.Round(QuantityWords.Plain(part.Load.Reading.Limit!).Number, 2));

    private static CarrierJob WithFactors(CarrierJob job, double coefficient) => job with
    {
        Conditions = job.Conditions with { Wind = job.Conditions.Wind with { Factors = job.Conditions.Wind.Factors with { Coefficient = SampleJobs.Times(coefficient) } } },
    };

    private static CarrierJob WithMaker(CarrierJob job, double? knots) => job with
    {
        Panel = job.Panel with { Limits = job.Panel.Limits with { MaxWind = knots is { } known ? Speed.FromKnots(known) : null } },
    };

    private static CarrierJob Narrow(double tapeMm) => SampleJobs.Plain with
    {
        Conditions = SampleJobs.Conditions with { Bonding = SampleJobs.Conditions.Bonding with { TapeWidth = SampleJobs.Mm(tapeMm) } },
    };
}
