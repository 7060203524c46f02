using CanvasCut.Design;
using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

/// <summary>Light on a tilted panel, heat and losses, against the test values of pvlib (which names the publications) or by hand.</summary>
public sealed class YieldTests
{
    /// <summary>pvlib's test of Cooper's formula; here by the formula itself: 23.45 sin(2 pi 328/365) and sin(2 pi 456/365).</summary>
    [Theory]
    [InlineData(44, -13.946)]
    [InlineData(172, 23.450)]
    public void Cooper_has_the_sun_as_far_north(int day, double degrees) => Assert.Equal(degrees, SunPosition.DeclinationByCooper(day).Degrees, 1e-3);

    /// <summary>Kasten and Young 1989, pvlib's test values but for 60 degrees, which is by the formula.</summary>
    [Theory]
    [InlineData(0, 0.9997)]
    [InlineData(60, 1.9943)]
    [InlineData(80, 5.586)]
    [InlineData(89.9, 36.467)]
    public void The_air_is_so_many_times_as_thick(double zenith, double mass) => Assert.Equal(mass, ClearSky.AirMass(Angle.FromDegrees(zenith)).Amount, 1e-3);

    /// <summary>pvlib's test of Erbs: 1000 W/m2 on 20 June under 10 degrees of zenith.</summary>
    [Fact]
    public void Light_is_split_as_Erbs_has_it()
    {
        var split = PlaneLight.Split(Sun(1000), Angle.FromDegrees(10), SunPosition.OutsideTheAir(171));

        Assert.Equal(842.0, split.Beam.WattsPerSquareMeter, 1.0);
        Assert.Equal(170.8, split.Sky.WattsPerSquareMeter, 1.0);
    }

    /// <summary>pvlib's tests of isotropic sky and of ground: 100 (1 + cos 40)/2; 900 x 0.25 (1 - cos 40)/2.</summary>
    [Fact]
    public void Sky_and_ground_are_seen_in_part()
    {
        Assert.Equal(88.302, PlaneLight.OfSky(Sun(100), Angle.FromDegrees(40)).WattsPerSquareMeter, 1e-3);
        Assert.Equal(26.320, PlaneLight.OfGround(Sun(900), Ratio.FromDecimalFractions(0.25), Angle.FromDegrees(40)).WattsPerSquareMeter, 1e-3);
    }

    /// <summary>pvlib's test of ASHRAE's formula: 1 - 0.05 (1/cos - 1).</summary>
    [Theory]
    [InlineData(45, 0.97929)]
    [InlineData(67.5, 0.91934)]
    [InlineData(90, 0)]
    public void Flat_rays_are_thrown_back(double incidence, double passing) => Assert.Equal(passing, PlaneLight.Passing(Angle.FromDegrees(incidence)).DecimalFractions, 1e-5);

    /// <summary>cos b cos z while the sun never falls from behind: cos 10 cos 40, cos 20 cos 60.</summary>
    [Theory]
    [InlineData(10, 40, 0.754407)]
    [InlineData(20, 60, 0.469846)]
    public void A_boat_that_swings_has_the_mean_of_all_headings(double tilt, double zenith, double mean) =>
        Assert.Equal(mean, PlaneLight.MeanCosine(Angle.FromDegrees(tilt), Angle.FromDegrees(zenith)), 1e-6);

    /// <summary>Haurwitz 0.585; outside the air 0.639 (derived in the specification from FAO-56; a sailor's 60 : 100 lies between).</summary>
    [Fact]
    public void A_winter_day_in_the_tropics_has_less_than_a_summer_day_in_the_north()
    {
        Assert.Equal(0.585, ClearSky.HaurwitzDay(Angle.FromDegrees(18), 355) / ClearSky.HaurwitzDay(Angle.FromDegrees(37.5), 172), 0.003);
        Assert.Equal(0.639, ClearSky.OutsideDay(Angle.FromDegrees(18), 355) / ClearSky.OutsideDay(Angle.FromDegrees(37.5), 172), 0.003);
    }

    /// <summary>pvlib's tests: an open rack of glass, 900 W/m2, 20 C, 5 m/s; Faiman the same.</summary>
    [Fact]
    public void Cells_are_as_warm_as_published()
    {
        Assert.Equal(43.509, CellTemperature.Of((-3.47, -0.0594, 3), Sun(900), Celsius(20), Speed.FromMetersPerSecond(5)).DegreesCelsius, 1e-2);
        Assert.Equal(35.203, CellTemperature.Faiman(Sun(900), Celsius(20), Speed.FromMetersPerSecond(5)).DegreesCelsius, 1e-3);
    }

    /// <summary>The published defaults of NREL/TP-6A20-62641 are 14.0757 % together (pvlib's test).</summary>
    [Fact]
    public void Losses_are_taken_one_after_the_other() =>
        Assert.Equal(14.0757, YieldFormula.Together(new[] { 2, 3, 0, 2, 2, 0.5, 1.5, 1, 0, 3 }.Select(percent => Ratio.FromPercent(percent))).Percent, 1e-3);

    /// <summary>pvlib's test: 100 W, -0.30 %/K, 900 W/m2, 30 C.</summary>
    [Fact]
    public void Power_falls_with_light_and_heat() =>
        Assert.Equal(88.65, (double)YieldFormula.PowerIn(Power.FromWatts(100), Ratio.FromPercent(-0.30), Sun(900), Celsius(30)).Watts, 1e-6);

    /// <summary>0.848 x 0.9 x 0.97 x 0.98 x 0.98 x 0.995 x 0.99 x 0.95 = 0.6653; 200 W and 5 h: 665.3 Wh.</summary>
    [Fact]
    public void A_day_gives_what_is_left()
    {
        var lost = YieldFormula.Together(new[] { 3, 2, 2, 0.5, 1 }.Select(percent => Ratio.FromPercent(percent)));
        var left = YieldFormula.Left((Ratio.FromPercent(-0.38), Celsius(65)), lost, Ratio.FromPercent(10), Ratio.FromPercent(95));

        Assert.Equal(0.6653, left.DecimalFractions, 1e-4);
        Assert.Equal(665.3, YieldFormula.OfDay(Power.FromWatts(200), Irradiation.FromWattHoursPerSquareMeter(5000), left).WattHours, 0.1);
    }

    /// <summary>FAO-56, example 10: 15 May, 22.9 degrees south, 7.1 hours of bright sunshine: 14.46 MJ/m2, 4.02 kWh/m2.</summary>
    [Fact]
    public void Bright_hours_are_turned_by_Angstroms_formula() =>
        Assert.Equal(14.46, YieldYear.OnLevel(SunOf(-22.9) with { HoursAre = SunHoursKind.Bright }, 135, Duration.FromHours(7.1)).JoulesPerSquareMeter / 1e6, 0.02);

    private static Irradiance Sun(double watts) => Irradiance.FromWattsPerSquareMeter(watts);

    internal static SunSpec SunOf(double latitude) => new(
        Angle.FromDegrees(latitude),
        SunHoursKind.Peak,
        [],
        null,
        Ratio.FromPercent(6),
        new(Ratio.FromPercent(3), Ratio.FromPercent(2), Ratio.FromPercent(0.5), Ratio.FromPercent(1.5), Ratio.FromPercent(1), Ratio.Zero));
}
