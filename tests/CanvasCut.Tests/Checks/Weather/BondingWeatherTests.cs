using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

public sealed class BondingWeatherTests
{
    [Theory]
    [InlineData(9.9, Verdict.Caution, "far too cold")]
    [InlineData(14.9, Verdict.Caution, "too cold")]
    [InlineData(15, Verdict.Pass, "")]
    [InlineData(38, Verdict.Pass, "")]
    [InlineData(38.1, Verdict.Caution, "Too hot")]
    public void The_surface_must_lie_in_its_window(double surface, Verdict verdict, string says)
    {
        var check = Of(new(null, null, SampleJobs.Celsius(surface), null), CheckCodes.BondingSurface);

        Assert.Equal(verdict, check.Verdict);
        Assert.Contains(says, check.Advice, StringComparison.Ordinal);
    }

    /// <summary>
    /// A painting manual's examples (scribd.com/document/146044552): air 16 °C at 71 % has its dew point at 11 °C, and a
    /// surface of 13 °C is too near; air of 21 °C with a wet bulb of 17 °C has it at 15 °C (that is 68.7 %), and 19 °C passes.
    /// </summary>
    [Theory]
    [InlineData(16, 71, 13, Verdict.Caution)]
    [InlineData(21, 68.7, 19, Verdict.Pass)]
    public void The_surface_must_be_3_degrees_above_the_dew_point(double air, double humidity, double surface, Verdict verdict) =>
        Assert.Equal(verdict, Of(new(SampleJobs.Celsius(air), RelativeHumidity.FromPercent(humidity), SampleJobs.Celsius(surface), null), CheckCodes.BondingDew).Verdict);

    [Theory]
    [InlineData(71, Verdict.Caution)]
    [InlineData(72, Verdict.Pass)]
    public void It_must_stay_dry_for_the_curing_hours(double hours, Verdict verdict) =>
        Assert.Equal(verdict, Of(new(null, null, null, Duration.FromHours(hours)), CheckCodes.BondingClear).Verdict);

    [Fact]
    public void What_is_not_given_is_named()
    {
        var dew = Of(new(null, RelativeHumidity.FromPercent(50), null, null), CheckCodes.BondingDew);

        Assert.Equal((Verdict.NotChecked, "Not given: bonding.air, bonding.surface."), (dew.Verdict, dew.Advice));
    }

    [Fact]
    public void Bonded_cold_is_answered() =>
        Assert.Contains("begin the curing hours anew", Of(new(null, null, SampleJobs.Celsius(8), null), CheckCodes.BondingSurface).Advice, StringComparison.Ordinal);

    /// <summary>
    /// By hand: warm from hour 10 on, rain in hour 100. 60 min to lay the panel, 20 before it may be moved and 10 to weight it
    /// are 90, so two hours of a forecast; with 72 of cure 74 hours must be dry: hours 10 to 26 have them. Hours 15 and 16 are the driest;
    /// hour 22 is as dry, but not the next.
    /// </summary>
    [Fact]
    public void The_best_start_has_the_driest_surface_while_the_work_lasts()
    {
        var hours = Hours(120, hour => (hour < 10 ? 12 : 20, hour is 15 or 16 or 22 ? 40 : 50, hour == 100));
        var starts = BondingStart.In(hours, BondingLimits.Usual);

        Assert.Equal(Enumerable.Range(10, 17), starts.Index().Where(start => start.Item.IsGood).Select(start => start.Index));
        Assert.Equal(hours[15].Time, BondingStart.Best(starts)!.Time);
    }

    [Fact]
    public void An_hour_before_a_damp_one_is_no_good_start()
    {
        var starts = BondingStart.In(Hours(100, hour => (20, hour == 1 ? 90 : 50, false)), BondingLimits.Usual);

        Assert.False(starts[0].IsGood);
        Assert.Equal(Verdict.Caution, Assert.Single(starts[0].Checks, check => check.Code == CheckCodes.BondingDew).Verdict);
        Assert.True(starts[2].IsGood);
    }

    [Fact]
    public void Of_equal_starts_the_first_is_the_best()
    {
        var hours = Hours(100, _ => (20, 50, false));

        Assert.Equal(hours[0].Time, BondingStart.Best(BondingStart.In(hours, BondingLimits.Usual))!.Time);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(71)]
    public void A_forecast_that_is_damp_or_short_has_no_good_start(int length) =>
        Assert.Null(BondingStart.Best(BondingStart.In(Hours(length, _ => (20, length == 71 ? 50 : 95, false)), BondingLimits.Usual)));

    /// <summary>The cure is broken by a surface below the hard stop as by rain; by hand, two hours of work are taken off the 30 and the 69 that are clear.</summary>
    [Fact]
    public void A_cold_hour_ends_the_clear_time()
    {
        var starts = BondingStart.In(Hours(100, hour => (hour == 30 ? 9.9 : 20, 50, false)), BondingLimits.Usual);

        Assert.Equal(28, starts[0].Day.Clear!.Value.Hours, 1e-9);
        Assert.Equal(67, starts[31].Day.Clear!.Value.Hours, 1e-9);
    }

    /// <summary>What lies there counts, not what onto says. A coated patch is as large as the panel, so all of an adhesive back meets it (BondPlanTests has the areas); webbing would leave cloth between, so none is drawn or ordered.</summary>
    [Theory]
    [InlineData(true, false, BondSurface.SewnTape, Verdict.Caution)]
    [InlineData(true, false, BondSurface.CoatedPatch, Verdict.Pass)]
    [InlineData(true, true, BondSurface.SewnTape, Verdict.Pass)]
    [InlineData(false, false, BondSurface.SewnTape, Verdict.Pass)]
    [InlineData(false, false, BondSurface.RawCloth, Verdict.Caution)]
    public void Adhesive_on_raw_woven_cloth_is_caught(bool hasAdhesive, bool isSmooth, BondSurface onto, Verdict verdict)
    {
        var plain = SampleJobs.Plain;
        var job = plain with
        {
            Panel = plain.Panel with { Limits = plain.Panel.Limits with { HasAdhesive = hasAdhesive } },
            Workshop = plain.Workshop with { Supplies = plain.Workshop.Supplies with { Cloth = plain.Workshop.Supplies.Cloth with { IsSmooth = isSmooth } } },
            Conditions = plain.Conditions with { Bonding = plain.Conditions.Bonding with { Onto = onto } },
        };

        Assert.Equal(verdict, Assert.Single(JobChecks.Of(CanvasCut.Tests.Takeoff.WorkOrderTests.Patterned(job)), check => check.Code == CheckCodes.BondingOnto).Verdict);
    }

    [Fact]
    public void The_usual_limits_are_those_of_the_job_file() =>
        Assert.Equal(BondingLimits.Usual, JobFiles.Sample.Job(JobFiles.Sample.Least).Conditions.Bonding.Limits);

    private static CheckResult Of(BondingDay day, string code) => Assert.Single(BondingWeather.Of(day, BondingLimits.Usual), check => check.Code == code);

    private static ImmutableArray<ForecastHour> Hours(int count, Func<int, (double Celsius, double Humidity, bool IsRaining)> weather) =>
    [
        .. Enumerable.Range(0, count).Select(hour =>
        {
            var (celsius, humidity, isRaining) = weather(hour);
            return new ForecastHour(new DateTime(2026, 5, 14, 0, 0, 0, DateTimeKind.Unspecified).AddHours(hour), SampleJobs.Celsius(celsius), RelativeHumidity.FromPercent(humidity), SampleJobs.Celsius(celsius), !isRaining);
        }),
    ];
}
