using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

/// <summary>What a measured string tells.</summary>
public sealed class FirstDayTests
{
    private static readonly WiredString Pair = SampleWiring.Plan(SampleWiring.Spec, Hundred with { ShadeGroups = 2 }).Strings.Single();

    /// <summary>
    /// 4.20 A at 52 C, label 5.6 A and +0.05 %/K: 1000 x 4.2 / (5.6 x 1.0135) = 740.01 W/m2. Voltage: 22.6 x (1 - 0.003 x 27) = 20.7694, and
    /// 36 x 1.1 x 8.6173e-5 x 325.15 x ln 0.74001 = -0.3341: 20.435 V.
    /// </summary>
    [Fact]
    public void Sun_and_voltage_follow_from_current_and_warmth()
    {
        var sun = FirstDay.SunOf(Hundred, Amperes(4.2), Celsius(52));

        Assert.Equal(740.01, sun.WattsPerSquareMeter, 0.02);
        Assert.Equal(20.435, FirstDay.OpenIn(Hundred, sun, Celsius(52)).Value!.Value.Volts, 0.002);
        Assert.Equal(4.2, FirstDay.ShortIn(Hundred, sun, Celsius(52)).Amperes, 1e-9);
    }

    /// <summary>
    /// Two in series should show 40.870 V. 39.8 (97.4 %) is within 3 %; 20.3 (49.7 %) is one panel less; 30.8 (75.4 %) one of four groups less; 38.0 (93 %) is low by
    /// no step; 43.0 is too much; -40.9 is changed; 0.3 is nothing.
    /// </summary>
    [Theory]
    [InlineData(39.8, ReadingFinding.AsExpected, 0)]
    [InlineData(20.3, ReadingFinding.PanelsMissing, 1)]
    [InlineData(30.8, ReadingFinding.GroupsMissing, 1)]
    [InlineData(38.0, ReadingFinding.Low, 0)]
    [InlineData(43.0, ReadingFinding.High, 0)]
    [InlineData(-40.9, ReadingFinding.PolesChanged, 0)]
    [InlineData(0.3, ReadingFinding.Nothing, 0)]
    public void A_voltage_tells_what_may_be_wrong(double volts, ReadingFinding finding, int parts)
    {
        var verdict = FirstDay.OfVoltage(Pair, new(Volts(volts), Amperes(4.2), Celsius(52), null))!;

        Assert.Equal((finding, parts), (verdict.Finding, verdict.Parts));
        Assert.Equal(40.870, verdict.Expected.Volts, 0.004);
    }

    /// <summary>By a meter 740 W/m2: 4.2 A to be expected; 3.7 is 88 %, 4.7 is 112 %.</summary>
    [Theory]
    [InlineData(4.0, 740, ReadingFinding.AsExpected)]
    [InlineData(3.7, 740, ReadingFinding.Low)]
    [InlineData(4.7, 740, ReadingFinding.High)]
    [InlineData(0.1, 740, ReadingFinding.Nothing)]
    [InlineData(0.5, 150, ReadingFinding.TooDull)]
    public void A_current_is_judged_by_a_meter_of_the_sun(double amperes, double sun, ReadingFinding finding) =>
        Assert.Equal(finding, FirstDay.OfCurrent(Pair, new(null, Amperes(amperes), Celsius(52), Irradiance.FromWattsPerSquareMeter(sun)))!.Finding);

    [Fact]
    public void Nothing_is_judged_without_what_it_needs()
    {
        var bare = SampleWiring.Plan(SampleWiring.Spec, Hundred with { CellsInSeries = null }).Strings.Single();

        Assert.Null(FirstDay.OfVoltage(bare, new(Volts(40), Amperes(4.2), Celsius(52), null)));
        Assert.Null(FirstDay.OfVoltage(Pair, new(Volts(40), null, Celsius(52), null)));
        Assert.Null(FirstDay.OfCurrent(Pair, new(null, Amperes(4.2), Celsius(52), null)));
        Assert.Equal(ReadingFinding.TooDull, FirstDay.OfVoltage(Pair, new(Volts(38), null, Celsius(30), Irradiance.FromWattsPerSquareMeter(120)))!.Finding);
    }
}
