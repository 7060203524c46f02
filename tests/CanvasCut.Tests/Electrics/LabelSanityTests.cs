using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

public sealed class LabelSanityTests
{
    /// <summary>100.17 W of 100; 18.9/22.6 = 0.836; 5.3/5.6 = 0.946; 100/126.56 = 0.790; 22.6/36 = 0.628 V: all within their bands.</summary>
    [Fact]
    public void A_label_that_agrees_with_itself_holds() => Assert.All(LabelSanity.Of(Hundred), each => Assert.Equal(Finding.Holds, each.Value.Finding));

    /// <summary>18.9 V x 5.3 A = 100.17 W: 104 W are 3.8 % more, 102 W 1.8 %.</summary>
    [Theory]
    [InlineData(104, Finding.Fails)]
    [InlineData(102, Finding.Caution)]
    [InlineData(101, Finding.Holds)]
    public void The_power_is_held_against_voltage_times_current(double watts, Finding finding) => Assert.Equal(
        finding,
        LabelSanity.Of(new(Power.FromWatts(watts), (Volts(22.6), Amperes(5.6)), (Volts(18.9), Amperes(5.3))))[LabelFigure.Power].Finding);

    [Fact]
    public void A_voltage_or_current_of_most_power_above_the_open_or_short_one_is_impossible()
    {
        var findings = LabelSanity.Of(new(Power.FromWatts(139), (Volts(22), Amperes(6)), (Volts(22.5), Amperes(6.2))));

        Assert.Equal(Finding.Fails, findings[LabelFigure.Voltages].Finding);
        Assert.Equal(Finding.Fails, findings[LabelFigure.Currents].Finding);
        Assert.Equal(Finding.Fails, findings[LabelFigure.FillFactor].Finding);
    }

    /// <summary>The sign is forgotten, or V/K written for %/K; -0.5 is steeper than crystalline panels are.</summary>
    [Theory]
    [InlineData(0.30, Finding.Fails)]
    [InlineData(-0.7, Finding.Fails)]
    [InlineData(-0.5, Finding.Caution)]
    [InlineData(-0.068, Finding.Caution)]
    [InlineData(-0.29, Finding.Holds)]
    public void The_coefficient_of_the_voltage_is_negative_and_of_its_size(double perCent, Finding finding) =>
        Assert.Equal(finding, LabelSanity.Of(WithOpenVoltage(22, perCent))[LabelFigure.VoltageCoefficient].Finding);

    [Fact]
    public void What_the_label_does_not_say_is_not_checked_and_said()
    {
        var findings = LabelSanity.Of(WithOpenVoltage(22, perCent: null));

        Assert.Equal(
            [LabelFigure.CellVoltage, LabelFigure.VoltageCoefficient, LabelFigure.CurrentCoefficient, LabelFigure.PowerCoefficient],
            findings.Where(each => each.Value.Finding == Finding.NotChecked).Select(each => each.Key));
        Assert.Equal(Missing.VoltageCoefficient, findings[LabelFigure.VoltageCoefficient].Because);
    }
}
