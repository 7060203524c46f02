using System.Globalization;
using CanvasCut.Checks;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

public sealed class WindTests
{
    public static TheoryData<int, double, double, double, double> Scale { get; } = new(
        Repository.Read("tests/CanvasCut.Tests/Checks/Weather/beaufort.csv").Split('\n')
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToList())
            .Select(row => ((int)row[0], row[1], row[2], row[3], row[4])));

    [Theory]
    [MemberData(nameof(Scale))]
    public void A_force_has_the_published_edges_in_knots_and_in_metres_a_second(int force, double fromKnots, double toKnots, double from, double to)
    {
        Assert.Equal(force, Wind.Beaufort(Speed.FromKnots(fromKnots)));
        Assert.Equal(force, Wind.Beaufort(Speed.FromKnots(toKnots)));
        Assert.Equal(force, Wind.Beaufort(Speed.FromMetersPerSecond(from)));
        Assert.Equal(force, Wind.Beaufort(Speed.FromMetersPerSecond(to)));
    }

    /// <summary>The scale's rule v = 0.836·B^1.5 gives 18.92 m/s for force 8.</summary>
    [Theory]
    [InlineData(0.2, 0)]
    [InlineData(18.92, 8)]
    [InlineData(32.7, 12)]
    public void A_speed_in_metres_a_second_has_its_force(double speed, int force) =>
        Assert.Equal(force, Wind.Beaufort(Speed.FromMetersPerSecond(speed)));

    [Theory]
    [InlineData(0.6, 1)]
    [InlineData(63.6, 12)]
    [InlineData(0.4, 0)]
    public void A_speed_in_knots_is_rounded_to_whole_knots(double knots, int force) => Assert.Equal(force, Wind.Beaufort(Speed.FromKnots(knots)));

    /// <summary>½·1.225·v² by hand: 20 m/s 245.0; 40 kn = 20.5778 m/s 259.36; 25 m/s 382.8; 45 mph = 20.12 m/s 247.9 (0.613·v² gives 248).</summary>
    [Theory]
    [InlineData(20, 245.0)]
    [InlineData(20.57778, 259.36)]
    [InlineData(25, 382.8125)]
    [InlineData(20.1168, 247.87)]
    public void The_pressure_is_half_the_density_times_the_square_of_the_speed(double speed, double pascals)
    {
        Assert.Equal(pascals, Wind.Pressure(Speed.FromMetersPerSecond(speed)).Pascals, 0.01);
        Assert.Equal(0.613 * speed * speed, Wind.Pressure(Speed.FromMetersPerSecond(speed)).Pascals, 0.01 * pascals);
    }
}
