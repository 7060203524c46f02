using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Tests.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Checks;

/// <summary>The checks on the sample wiring, which <see cref="WiringPlanTests"/> works by hand, and on what is wrong with it.</summary>
public sealed class ElectricChecksTests
{
    private static readonly ElectricSpec Spec = SampleWiring.Spec;

    /// <summary>All known and right: one caution only, that 49.9 V are dangerous to wet hands (35 V).</summary>
    [Fact]
    public void A_right_wiring_passes_but_for_the_voltage_that_hands_may_touch()
    {
        var results = Of(Spec);

        Assert.Equal([CheckCodes.ElectricTouch], results.Where(result => result.Verdict != Verdict.Pass).Select(result => result.Code));
        Assert.Equal(
            CheckCodes.All.Where(code => code.StartsWith("electric.", StringComparison.Ordinal) && code != CheckCodes.ElectricReverse),
            results.Select(result => result.Code).Distinct());
    }

    [Fact]
    public void No_wiring_no_checks() => Assert.Empty(ElectricChecks.Of(null));

    /// <summary>49.946 V: on a controller for 48 V it fails, for 50 V it is within a tenth, for 75 V it passes.</summary>
    [Theory]
    [InlineData(48, Verdict.Fail)]
    [InlineData(50, Verdict.Caution)]
    [InlineData(75, Verdict.Pass)]
    public void The_cold_string_is_held_against_the_controller(double limit, Verdict verdict)
    {
        var cold = Single(CheckCodes.ElectricCold, Spec.With(each => each with { Input = each.Input with { LargestVoltage = Volts(limit) } }));

        Assert.Equal(verdict, cold.Verdict);
        Assert.Equal(49.946, ((ElectricPotential)cold.Measured.Reading!.Value).Volts, 1e-3);
    }

    /// <summary>Without the coldest air six figures of danger are not checked, and each says why.</summary>
    [Fact]
    public void Without_the_coldest_air_nothing_cold_is_judged()
    {
        var missing = Of(Spec with { ColdestAir = null }).Where(result => result.Verdict == Verdict.NotChecked).ToList();

        Assert.Equal([CheckCodes.ElectricCold, CheckCodes.ElectricSystemVoltage, CheckCodes.ElectricTouch, CheckCodes.ElectricBreakerVoltage], missing.Select(result => result.Code));
        Assert.All(missing, result => Assert.StartsWith("Not checked because the coldest air is missing", result.Advice, StringComparison.Ordinal));
    }

    /// <summary>On 24 V: need 28.8 + drop + 2 = over 30.8 V, and hot there are 28.8 V.</summary>
    [Fact]
    public void A_string_too_low_when_hot_fails() =>
        Assert.Equal(Verdict.Fail, Single(CheckCodes.ElectricHot, Spec with { Bank = SampleWiring.Bank with { Voltages = new(Volts(28.8), null, null) } }).Verdict);

    /// <summary>5.6 A of 20, of 6 (1.25 x is 7), of 5.</summary>
    [Theory]
    [InlineData(20, Verdict.Pass)]
    [InlineData(6, Verdict.Caution)]
    [InlineData(5, Verdict.Fail)]
    public void The_current_is_held_against_the_controller(double limit, Verdict verdict) =>
        Assert.Equal(verdict, Single(CheckCodes.ElectricCurrent, Spec.With(each => each with { Input = each.Input with { LargestCurrent = Amperes(limit) } })).Verdict);

    /// <summary>4 strings push 3 x 7 = 21 A back, the label allows 15 A: a fuse each of at least 8.75 A, so 10 A; 20 A is too large.</summary>
    [Theory]
    [InlineData(null, Verdict.Fail)]
    [InlineData(10.0, Verdict.Pass)]
    [InlineData(20.0, Verdict.Fail)]
    [InlineData(6.0, Verdict.Fail)]
    public void Four_strings_need_a_fuse_each(double? fuse, Verdict verdict)
    {
        string[] names = ["a", "b", "c", "d"];
        var spec = Spec.With(each => each with { Devices = each.Devices with { StringFuse = fuse is { } rating ? new(Amperes(rating), Volts(80)) : null } });
        var results = ElectricChecks.Of(SampleWiring.Plan(spec with { Strings = [.. names.Select(name => SampleWiring.StringOf("tracker", name))] }, Hundred, names));

        Assert.Equal([verdict, verdict, verdict, verdict], results.Where(result => result.Code == CheckCodes.ElectricReverse).Select(result => result.Verdict));
    }

    /// <summary>5.3 and 8.24 A differ by 35.7 %: at least 196.6 W of 250.1 in series (worked in ControllerTests).</summary>
    [Fact]
    public void Unlike_currents_in_series_are_a_caution_with_what_is_left()
    {
        var hundred = Hundred with { ShadeGroups = 2 };
        var unlike = ElectricChecks.Of(SampleWiring.Plan(Spec, [("port", hundred), ("starboard", HundredFifty)])).Single(result => result.Code == CheckCodes.ElectricUnlike);

        Assert.Equal(Verdict.Caution, unlike.Verdict);
        Assert.Equal(35.68, ((Ratio)unlike.Measured.Reading!.Value).Percent, 0.01);
        Assert.Contains("at least 196.6 W of 250.1 W", unlike.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, Verdict.Fail)]
    [InlineData(null, Verdict.NotChecked)]
    [InlineData(2, Verdict.Pass)]
    public void A_panel_without_a_diode_may_not_stand_in_series(int? groups, Verdict verdict) =>
        Assert.Equal(verdict, ElectricChecks.Of(SampleWiring.Plan(Spec, Hundred with { ShadeGroups = groups })).Single(result => result.Code == CheckCodes.ElectricDiodes).Verdict);

    /// <summary>A breaker of 40 A on the 1.5 mm2 chosen for nothing: 16 x sqrt(45/75) A do not carry it; and 0.75 mm2 single is thinner than wires may be.</summary>
    [Theory]
    [InlineData("1", 40, "The wire burns before its fuse opens.")]
    [InlineData("0.75", 10, "Not checked because the table of currents begins")]
    public void A_wire_must_carry_what_its_breaker_lets_through(string size, double breaker, string advice)
    {
        var results = Of(Spec.With(each => each with { Runs = each.Runs with { PanelWire = size }, Devices = each.Devices with { Breaker = each.Devices.Breaker! with { Rating = Amperes(breaker) } } }));

        Assert.StartsWith(advice, results.First(result => result.Code == CheckCodes.ElectricAmpacity).Advice, StringComparison.Ordinal);
    }

    /// <summary>To the bank over 2.5 mm2: 2 x 0.0015 x 20 x 8.21 x 1.1179 = 0.551 V, 3.8 % of 14.4: fails, with sense wires a caution.</summary>
    [Theory]
    [InlineData(false, Verdict.Fail)]
    [InlineData(true, Verdict.Caution)]
    public void A_thin_wire_to_the_bank_ends_the_charge_too_early(bool hasSense, Verdict verdict)
    {
        var results = Of(Spec.With(each => each with { Runs = each.Runs with { BankWire = "2.5" }, Output = each.Output with { HasSense = hasSense } }));
        var drop = results.Last(result => result.Code == CheckCodes.ElectricDrop);

        Assert.Equal(verdict, drop.Verdict);
        Assert.Equal(0.551, ((ElectricPotential)drop.Measured.Reading!.Value).Volts, 1e-3);
        Assert.Contains("10 mm2", drop.Advice, StringComparison.Ordinal);
    }

    /// <summary>49.9 V meet a breaker for 32 V; the fuse at the bank must interrupt 3000 A of 800 A cold-cranking.</summary>
    [Fact]
    public void Devices_must_break_what_they_meet()
    {
        var spec = Spec.With(each => each with
        {
            Devices = new(each.Devices.Breaker! with { Voltage = Volts(32) }, each.Devices.BankFuse! with { Interrupts = Amperes(2000), FromBank = Length.FromMillimeters(400), Rating = Amperes(20) }, null),
        });

        Assert.Equal(
            [CheckCodes.ElectricTouch, CheckCodes.ElectricBreakerVoltage, CheckCodes.ElectricBankFuse, CheckCodes.ElectricInterrupt, CheckCodes.ElectricFusePlace],
            Of(spec).Where(result => result.Verdict is Verdict.Fail or Verdict.Caution).Select(result => result.Code));
    }

    /// <summary>A lithium bank is never judged by cold-cranking amperes.</summary>
    [Fact]
    public void A_lithium_bank_needs_its_own_figure()
    {
        var lithium = SampleWiring.Bank with { Kind = BankKind.LithiumIronPhosphate };

        Assert.Equal(Verdict.NotChecked, Single(CheckCodes.ElectricInterrupt, Spec with { Bank = lithium }).Verdict);
        Assert.Equal(Verdict.Fail, Single(CheckCodes.ElectricInterrupt, Spec with { Bank = lithium with { Fault = new(null, Amperes(12000)) } }).Verdict);
    }

    /// <summary>Without a word of devices each is told with what is needed: 8.75 A for the breaker, so 10 A.</summary>
    [Fact]
    public void A_device_that_is_not_there_is_not_checked_but_told()
    {
        var breaker = Single(CheckCodes.ElectricBreaker, Spec.With(each => each with { Devices = new(null, null, null) }));

        Assert.Equal(Verdict.NotChecked, breaker.Verdict);
        Assert.Contains("10 A, for direct current of at least 49.95 V", breaker.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Poles_connectors_and_compass_are_looked_at()
    {
        var around = Spec.Around;
        Assert.Equal(Verdict.Fail, Single(CheckCodes.ElectricConnectors, Spec with { Around = around with { Connectors = ConnectorState.Mixed } }).Verdict);
        Assert.Equal(Verdict.NotChecked, Single(CheckCodes.ElectricConnectors, Spec with { Around = around with { Connectors = null } }).Verdict);
        Assert.Equal(Verdict.Caution, Single(CheckCodes.ElectricCompass, Spec with { Around = around with { IsTwisted = false } }).Verdict);
        Assert.Equal(Verdict.NotChecked, Single(CheckCodes.ElectricCompass, Spec with { Around = around with { Compass = null } }).Verdict);
        Assert.Equal(Verdict.NotChecked, Single(CheckCodes.ElectricPolarity, Spec.With(each => each with { Joined = null })).Verdict);
        Assert.Equal(Verdict.Caution, Single(CheckCodes.ElectricPolarity, Spec.With(each => each with { Joined = Pole.Plus })).Verdict);
        var floating = Spec.With(each => each with { Devices = each.Devices with { Breaker = each.Devices.Breaker! with { BreaksBoth = false } } }) with { Bank = SampleWiring.Bank with { Earthed = Pole.None } };
        Assert.Equal(Verdict.Fail, Single(CheckCodes.ElectricPolarity, floating).Verdict);
    }

    [Fact]
    public void An_unusual_label_is_a_caution_and_a_missing_one_is_told()
    {
        // Voc of a cell 22.6 / 60 = 0.377 V.
        var odd = ElectricChecks.Of(SampleWiring.Plan(Spec, Hundred with { CellsInSeries = 60 })).First(result => result.Code == CheckCodes.ElectricLabel);
        Assert.Equal(Verdict.Caution, odd.Verdict);
        Assert.Contains("Voc is 0.38 V a cell", odd.Advice, StringComparison.Ordinal);

        Assert.Equal(Verdict.NotChecked, ElectricChecks.Of(SampleWiring.Plan(Spec, null)).First(result => result.Code == CheckCodes.ElectricLabel).Verdict);
    }

    private static ImmutableArray<CheckResult> Of(ElectricSpec spec) => ElectricChecks.Of(SampleWiring.Plan(spec, Hundred));

    private static CheckResult Single(string code, ElectricSpec spec) => Of(spec).Single(result => result.Code == code);
}
