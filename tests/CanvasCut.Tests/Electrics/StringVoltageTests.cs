using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

public sealed class StringVoltageTests
{
    private static readonly Temperature Cold = Celsius(-10);

    /// <summary>A public example of NEC 690.7: 54.18 V, hence 11 in series under 600 V. By the table 49.5 x 1.14 = 56.43, and 10.</summary>
    [Fact]
    public void A_cold_panel_is_as_the_published_example_has_it()
    {
        Assert.Equal(54.178, Volts(StringVoltage.Cold(WithOpenVoltage(49.5, -0.27), 1, Cold)), 0.005);
        Assert.Equal(56.43, Volts(StringVoltage.Cold(WithOpenVoltage(49.5, perCent: null), 1, Cold)), 0.005);
        Assert.InRange(Volts(StringVoltage.Cold(WithOpenVoltage(49.5, -0.27), 11, Cold)), 0, 600);
        Assert.True(Volts(StringVoltage.Cold(WithOpenVoltage(49.5, -0.27), 12, Cold)) > 600);
        Assert.InRange(Volts(StringVoltage.Cold(WithOpenVoltage(49.5, perCent: null), 10, Cold)), 0, 600);
        Assert.True(Volts(StringVoltage.Cold(WithOpenVoltage(49.5, perCent: null), 11, Cold)) > 600);
    }

    /// <summary>NEC table 690.7(A), seen second-hand; between rows the colder one.</summary>
    [Theory]
    [InlineData(-9, 1.14)]
    [InlineData(0, 1.10)]
    [InlineData(-5, 1.12)]
    [InlineData(-5.5, 1.14)]
    [InlineData(-40, 1.25)]
    [InlineData(20, 1.02)]
    [InlineData(19.5, 1.04)]
    [InlineData(25, 1.00)]
    public void The_factors_are_those_of_the_table(double celsius, double factor) => Assert.Equal(factor, ColdFactor.At(Celsius(celsius))!.Value.DecimalFractions, 1e-12);

    /// <summary>The rows down to -25 C are 1 + 0.004 (25 - T) at their cold edge, the next three 0.01 less: derived from the table.</summary>
    [Fact]
    public void The_table_agrees_with_itself()
    {
        for (var edge = 20; edge >= -40; edge -= 5)
        {
            Assert.Equal(1 + (0.004 * (25 - edge)) - (edge < -25 ? 0.01 : 0), ColdFactor.At(Celsius(edge))!.Value.DecimalFractions, 1e-9);
        }
    }

    /// <summary>22.6 x (1 + 0.003 x 35) = 24.973 V each.</summary>
    [Theory]
    [InlineData(2, 49.946)]
    [InlineData(3, 74.919)]
    [InlineData(4, 99.892)]
    public void A_cold_string_adds_up(int inSeries, double volts) => Assert.Equal(volts, Volts(StringVoltage.Cold(Hundred, inSeries, Cold)), 0.001);

    /// <summary>18.9 x (1 - 0.0038 x 50) and x 60.</summary>
    [Theory]
    [InlineData(75, 15.309)]
    [InlineData(85, 14.591)]
    public void A_hot_panel_falls(double celsius, double volts) => Assert.Equal(volts, Volts(StringVoltage.Peak(Hundred, 1, Celsius(celsius))), 0.001);

    /// <summary>1.3 x -0.30 = -0.39 %/K over 50 K: 18.9 x 0.805 = 15.2145 V.</summary>
    [Fact]
    public void Without_its_own_coefficient_the_peak_falls_faster_than_the_open_voltage() => Assert.Equal(
        15.2145,
        Volts(StringVoltage.Peak(Hundred with { PeakVoltagePerKelvin = null }, 1, Celsius(75))),
        1e-9);

    [Fact]
    public void What_is_missing_is_said_and_never_assumed()
    {
        Assert.Equal((null, Missing.ColdestAir), Parts(StringVoltage.Cold(Hundred, 1, coldest: null)));
        Assert.Equal((null, Missing.FactorForSuchCold), Parts(StringVoltage.Cold(WithOpenVoltage(22, perCent: null), 1, Celsius(-41))));
        Assert.Equal((null, Missing.VoltageCoefficient), Parts(StringVoltage.Peak(WithOpenVoltage(22, perCent: null), 1, Celsius(60))));
    }

    [Fact]
    public void A_coldest_air_above_25_takes_no_voltage_off() => Assert.Equal(22.6, Volts(StringVoltage.Cold(Hundred, 1, Celsius(40))), 1e-9);

    /// <summary>SAND2004-3535 by pvlib, another library: 59.384 and 87.527 C at 1000 W/m², 30 C and 1 m/s.</summary>
    [Fact]
    public void Cells_are_as_hot_as_another_library_has_them()
    {
        var (sun, wind) = (Irradiance.FromWattsPerSquareMeter(1000), Speed.FromMetersPerSecond(1));

        Assert.Equal(59.384, CellTemperature.FreeBack(sun, Celsius(30), wind).DegreesCelsius, 0.01);
        Assert.Equal(87.527, CellTemperature.BlockedBack(sun, Celsius(30), wind).DegreesCelsius, 0.01);
    }

    private static double Volts(Known<ElectricPotential> known) => known.Value!.Value.Volts;

    private static (ElectricPotential? Value, Missing Because) Parts(Known<ElectricPotential> known) => (known.Value, known.Because);
}
