using CanvasCut.Checks;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

public sealed class DewPointTests
{
    /// <summary>Published figures, each to the digits it was printed with.</summary>
    [Theory]
    [InlineData(30, 55, 20, 0.1)] // doerken.de, table of dew points
    [InlineData(16, 71, 11, 0.5)] // a painting manual's example, scribd.com/document/146044552
    [InlineData(23.9, 35, 7, 0.5)] // ranachem.com, dew point table
    [InlineData(21.1, 65, 13.9, 0.5)] // 57 °F in a chart at handypdf.com
    [InlineData(20, 100, 20, 1e-9)] // by definition
    public void The_dew_point_is_as_published(double air, double humidity, double dew, double tolerance) =>
        Assert.Equal(dew, Of(air, humidity), tolerance);

    /// <summary>
    /// Saturation pressures over water of the Goff-Gratch equation, an independent formula: at 15 °C 17.0523 hPa (a routine of
    /// ETH Zürich, iac.ethz.ch); at 5, 10, 20, 25 and 30 °C 8.72, 12.27, 23.37, 31.67 and 42.43 hPa (Smithsonian
    /// Meteorological Tables, from memory). The dew point is where the pressure is the vapour's.
    /// </summary>
    [Theory]
    [InlineData(20, 23.37, 15, 17.0523)]
    [InlineData(25, 31.67, 15, 17.0523)]
    [InlineData(30, 42.43, 20, 23.37)]
    [InlineData(20, 23.37, 10, 12.27)]
    [InlineData(15, 17.0523, 5, 8.72)]
    public void The_dew_point_agrees_with_pressures_of_another_formula(double air, double atAir, double dew, double atDew) =>
        Assert.Equal(dew, Of(air, 100 * atDew / atAir), 0.05);

    /// <summary>Alduchov and Eskridge, 1996: the Magnus formula with 17.625 and 243.04, fitted apart from ours.</summary>
    [Theory]
    [InlineData(0, 40)]
    [InlineData(12, 85)]
    [InlineData(20, 50)]
    [InlineData(25, 60)]
    [InlineData(40, 20)]
    public void The_dew_point_agrees_with_another_fit(double air, double humidity)
    {
        var gamma = Math.Log(humidity / 100) + (17.625 * air / (243.04 + air));

        Assert.Equal(243.04 * gamma / (17.625 - gamma), Of(air, humidity), 0.05);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    public void No_such_humidity_is_thrown_at_the_programmer(double humidity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DewPoint.Of(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(humidity)));

    private static double Of(double air, double humidity) => DewPoint.Of(Temperature.FromDegreesCelsius(air), RelativeHumidity.FromPercent(humidity)).DegreesCelsius;
}
