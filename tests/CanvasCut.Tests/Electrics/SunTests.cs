using CanvasCut.Electrics;
using UnitsNet;

namespace CanvasCut.Tests.Electrics;

public sealed class SunTests
{
    private static readonly SunPosition Published = SunPosition.At(
        new(2003, 10, 17, 19, 30, 30, TimeSpan.Zero), new(Angle.FromDegrees(39.742476), Angle.FromDegrees(-105.1786)));

    /// <summary>NREL/TP-560-34302, the example: zenith 50.11162 (50.128 without the air's bending), azimuth 194.34024.</summary>
    [Fact]
    public void The_sun_stands_where_the_published_algorithm_has_it()
    {
        Assert.Equal(50.128, Published.Zenith.Degrees, 0.1);
        Assert.Equal(194.34024, Published.Azimuth.Degrees, 0.2);
    }

    /// <summary>The same example: slope 30, azimuth 170 from north, incidence 25.187.</summary>
    [Fact]
    public void The_incidence_is_that_of_the_published_example()
    {
        Assert.Equal(25.187, Published.Incidence(Angle.FromDegrees(30), Angle.FromDegrees(170)).Degrees, 0.2);
        Assert.Equal(25.187, new SunPosition(Angle.FromDegrees(50.11162), Angle.FromDegrees(194.34024)).Incidence(Angle.FromDegrees(30), Angle.FromDegrees(170)).Degrees, 1e-3);
    }

    /// <summary>Duffie and Beckman, example 1.6.1: latitude 43, declination -14, 1.5 h before noon, tilt 45 toward 15 degrees west of south: 35 degrees.</summary>
    [Fact]
    public void The_incidence_is_that_of_the_textbook()
    {
        var sun = SunPosition.At(Angle.FromDegrees(43), Angle.FromDegrees(-14), Angle.FromDegrees(-22.5));

        Assert.Equal(35, sun.Incidence(Angle.FromDegrees(45), Angle.FromDegrees(195)).Degrees, 0.25);
    }

    /// <summary>Spencer 1971, worked from the formula.</summary>
    [Theory]
    [InlineData(80, -0.066)]
    [InlineData(172, 23.452)]
    [InlineData(355, -23.420)]
    public void The_declination_is_Spencers(int day, double degrees) => Assert.Equal(degrees, SunPosition.Declination(day).Degrees, 0.001);

    /// <summary>pvlib's test, another library: 1383.6 W/m² on 26 October within 10.</summary>
    [Fact]
    public void Outside_the_air_is_as_another_library_has_it() => Assert.Equal(1383.6, SunPosition.OutsideTheAir(300).WattsPerSquareMeter, 10.0);

    /// <summary>24/180 x acos(-tan 40 tan 23.45) = 14.846 h.</summary>
    [Fact]
    public void A_day_is_as_long_as_worked_by_hand()
    {
        Assert.Equal(14.846, ClearSky.DayLength(Angle.FromDegrees(40), Angle.FromDegrees(23.45)).Hours, 0.001);
        Assert.Equal(24, ClearSky.DayLength(Angle.FromDegrees(70), Angle.FromDegrees(23.45)).Hours, 1e-9);
        Assert.Equal(0, ClearSky.DayLength(Angle.FromDegrees(70), Angle.FromDegrees(-23.45)).Hours, 1e-9);
    }

    /// <summary>FAO-56, example 8: 3 September at 20 S, 32.2 MJ/m² outside the air, 11.7 h.</summary>
    [Fact]
    public void A_day_outside_the_air_is_that_of_the_published_example()
    {
        Assert.Equal(32.19, Megajoules(ClearSky.OutsideDay(Angle.FromDegrees(-20), 246)), 0.01);
        Assert.Equal(11.67, ClearSky.DayLength(Angle.FromDegrees(-20), ClearSky.FaoDeclination(246)).Hours, 0.01);
    }

    /// <summary>FAO-56, example 10: 15 May at 22.9 S, 25.1 MJ/m² outside, 18.8 under a clear sky; table 2.6 for the middle of February.</summary>
    [Fact]
    public void Other_published_days_agree()
    {
        Assert.Equal(25.11, Megajoules(ClearSky.OutsideDay(Angle.FromDegrees(-22.9), 135)), 0.02);
        Assert.Equal(18.83, Megajoules(ClearSky.FaoDay(Angle.FromDegrees(-22.9), 135)), 0.02);
        Assert.Equal(39.2, Megajoules(ClearSky.OutsideDay(Angle.FromDegrees(-34), 46)), 0.15);
        Assert.Equal(38.9, Megajoules(ClearSky.OutsideDay(Angle.FromDegrees(-36), 46)), 0.15);
    }

    /// <summary>pvlib's test values, another library, by elevation.</summary>
    [Theory]
    [InlineData(5, 48.630)]
    [InlineData(10, 135.742)]
    [InlineData(30, 487.894)]
    [InlineData(50, 778.767)]
    [InlineData(90, 1035.092)]
    [InlineData(-5, 0)]
    public void A_clear_moment_is_as_another_library_has_it(double elevation, double watts) =>
        Assert.Equal(watts, ClearSky.Haurwitz(Angle.FromDegrees(90 - elevation)).WattsPerSquareMeter, 1e-3);

    /// <summary>Summed by another program from the formula: 21 June, kWh/m².</summary>
    [Theory]
    [InlineData(0, 6.987)]
    [InlineData(18, 8.237)]
    [InlineData(37.5, 8.779)]
    public void A_clear_day_adds_up(double latitude, double kilowattHours)
    {
        var (ordinary, most) = ClearSky.Day(Angle.FromDegrees(latitude), 172);
        var found = ClearSky.HaurwitzDay(Angle.FromDegrees(latitude), 172).KilowattHoursPerSquareMeter;

        Assert.InRange(found, kilowattHours * 0.997, kilowattHours * 1.003);
        Assert.True(ordinary <= most && most.KilowattHoursPerSquareMeter >= found);
    }

    private static double Megajoules(Irradiation day) => day.JoulesPerSquareMeter / 1e6;
}
