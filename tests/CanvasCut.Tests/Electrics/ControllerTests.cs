using CanvasCut.Design;
using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

public sealed class ControllerTests
{
    private static readonly ChargeController Buck = new(ControllerKind.StepDown, Volts(100), Amperes(20));

    /// <summary>74.919 V of 75 and 99.892 of 100 are more than nine tenths, 49.946 of 100 are not; five panels are 124.9 V. The nine tenths: common practice, no source.</summary>
    [Theory]
    [InlineData(3, 75, Finding.Caution)]
    [InlineData(4, 100, Finding.Caution)]
    [InlineData(2, 100, Finding.Holds)]
    [InlineData(5, 100, Finding.Fails)]
    public void The_cold_string_is_held_against_the_controller(int inSeries, double limit, Finding finding) => Assert.Equal(
        finding,
        ControllerWindow.Cold(StringVoltage.Cold(Hundred, inSeries, Celsius(-10)), Buck with { LargestPanelVoltage = Volts(limit) }).Finding);

    /// <summary>At 75 C each gives 15.309 V; a buck tracker needs absorption + 0.3 V drop + 2 V: 16.7 and 31.1 V. The 2 V: common practice, no source.</summary>
    [Theory]
    [InlineData(1, 14.4, Finding.Fails)]
    [InlineData(2, 14.4, Finding.Holds)]
    [InlineData(2, 28.8, Finding.Fails)]
    [InlineData(3, 28.8, Finding.Holds)]
    public void The_hot_string_is_held_against_what_a_tracker_needs(int inSeries, double absorption, Finding finding) =>
        Assert.Equal(finding, NeedOf(Buck, inSeries, new(Volts(absorption), null, null)).Finding);

    /// <summary>A switch needs 14.4 + 0.3 + 0.5 = 15.2 V, and has 15.309.</summary>
    [Fact]
    public void A_switch_needs_less_than_a_tracker() =>
        Assert.Equal(Finding.Holds, NeedOf(Buck with { Kind = ControllerKind.PulseWidth }, 1, new(Volts(14.4), null, null)).Finding);

    /// <summary>24.973 V cold are below a 24 V bank's lowest 25 V, above 24 V.</summary>
    [Theory]
    [InlineData(25.0, Finding.Holds)]
    [InlineData(24.0, Finding.Fails)]
    public void A_boost_tracker_wants_the_string_below_the_bank(double lowest, Finding finding) =>
        Assert.Equal(finding, NeedOf(Buck with { Kind = ControllerKind.StepUp }, 1, new(Volts(28.8), null, Volts(lowest))).Finding);

    [Fact]
    public void What_is_missing_is_not_checked()
    {
        var cold = StringVoltage.Cold(Hundred, 1, Celsius(-10));

        Assert.Equal((Finding.NotChecked, Missing.ColdestAir), Parts(ControllerWindow.Cold(StringVoltage.Cold(Hundred, 1, coldest: null), Buck)));
        Assert.Equal((Finding.NotChecked, Missing.ControllerVoltage), Parts(ControllerWindow.Cold(cold, Buck with { LargestPanelVoltage = null })));
        Assert.Equal((Finding.NotChecked, Missing.SystemVoltage), Parts(ControllerWindow.ColdForPanels(cold, Hundred with { LargestSystemVoltage = null })));
        Assert.Equal((Finding.NotChecked, Missing.ControllerCurrent), Parts(ControllerWindow.Current(Amperes(5), Buck with { LargestInputCurrent = null })));
        Assert.Equal((Finding.NotChecked, Missing.LowestBankVoltage), Parts(NeedOf(Buck with { Kind = ControllerKind.StepUp }, 1, new(Volts(28.8), null, null))));
    }

    /// <summary>Of 20 A: 16 A are 20 A at the edge of a cloud, 17 A are 21.25 A, 21 A are too much at once.</summary>
    [Theory]
    [InlineData(16, Finding.Holds)]
    [InlineData(17, Finding.Caution)]
    [InlineData(21, Finding.Fails)]
    public void The_current_is_held_against_the_controller(double amperes, Finding finding) => Assert.Equal(finding, ControllerWindow.Current(Amperes(amperes), Buck).Finding);

    /// <summary>NEC 690.8; 8.97 and 17.94 A of 5.75 A in a controller's manual, which rounds 1.5625 to 1.56.</summary>
    [Theory]
    [InlineData(5.6, 7.0, 8.75)]
    [InlineData(11, 13.75, 17.1875)]
    public void Currents_are_as_the_code_has_them(double isc, double design, double wires)
    {
        Assert.Equal(design, ArrayCurrent.Design(Amperes(isc)).Amperes, 1e-9);
        Assert.Equal(wires, ArrayCurrent.ForWires(Amperes(isc)).Amperes, 1e-9);
        Assert.Equal(8.97, ArrayCurrent.ForWires(Amperes(5.75)).Amperes * 1.56 / 1.5625, 0.005);
        Assert.Equal(17.94, ArrayCurrent.ForWires(Amperes(2 * 5.75)).Amperes * 1.56 / 1.5625, 0.005);
    }

    /// <summary>0.95 x 200 / 12.8 = 14.844 A, clipped at 10 A; a public example of a switch: 12 V x 7 A = 84 W of a 120 W panel.</summary>
    [Fact]
    public void A_controller_gives_what_the_panels_have_or_its_rating()
    {
        Assert.Equal(14.844, ArrayCurrent.TrackerOutput(Power.FromWatts(200), Ratio.FromPercent(95), Volts(12.8), Amperes(20)).Amperes, 0.001);
        Assert.Equal(10, ArrayCurrent.TrackerOutput(Power.FromWatts(200), Ratio.FromPercent(95), Volts(12.8), Amperes(10)).Amperes, 1e-9);
        Assert.Equal(84, (double)ArrayCurrent.PulseWidthOutput(Amperes(7), Volts(12)).Watts, 1e-9);
    }

    /// <summary>1.25 x 5.6 A from each other string, series fuse 15 A.</summary>
    [Theory]
    [InlineData(2, 7.0, Finding.Holds)]
    [InlineData(3, 14.0, Finding.Holds)]
    [InlineData(4, 21.0, Finding.Fails)]
    public void What_flows_back_is_held_against_the_series_fuse(int strings, double amperes, Finding finding)
    {
        var judged = ArrayCurrent.WithoutStringFuses(Hundred, strings);

        Assert.Equal(finding, judged.Finding);
        Assert.Equal(amperes, ArrayCurrent.Reverse(Hundred, strings).Amperes, 1e-9);
    }

    [Fact]
    public void Three_strings_of_an_unknown_series_fuse_are_not_checked() =>
        Assert.Equal((Finding.NotChecked, Missing.SeriesFuse), Parts(ArrayCurrent.WithoutStringFuses(Hundred with { LargestSeriesFuse = null }, 3)));

    /// <summary>Series: 5.3 A x 37.1 V = 196.63; at 8.24 A only 8.24 x (18.2 - 0.5) = 145.85. Parallel: 18.2 V x 13.54 A = 246.43. Apart: 100.17 + 149.968.</summary>
    [Fact]
    public void Unlike_panels_give_at_least_what_their_labels_promise()
    {
        PanelLabel[] both = [Hundred, HundredFifty];

        Assert.Equal(196.63, (double)UnlikePanels.InSeries(both).Value!.Value.Watts, 0.01);
        Assert.Equal(246.43, (double)UnlikePanels.InParallel(both).Value!.Value.Watts, 0.01);
        Assert.Equal(250.14, (double)UnlikePanels.Apart(both).Watts, 0.01);
        Assert.Equal(Missing.LabelFigure, UnlikePanels.InSeries([Hundred with { ShadeGroups = null }]).Because);
    }

    private static Judgement NeedOf(ChargeController controller, int inSeries, BankVoltages bank) => ControllerWindow.Need(
        controller, bank, (StringVoltage.Cold(Hundred, inSeries, Celsius(-10)), StringVoltage.Peak(Hundred, inSeries, Celsius(75))), Volts(0.3));

    private static (Finding Finding, Missing Because) Parts(Judgement judged) => (judged.Finding, judged.Because);
}
