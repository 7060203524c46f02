using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

/// <summary>The sample wiring, worked by hand from label, lengths and IEC 60228.</summary>
public sealed class WiringPlanTests
{
    private static readonly WiredController Tracker = SampleWiring.Plan(SampleWiring.Spec, Hundred).Controllers[0];

    /// <summary>Cold 2 x 22.6 x (1 + 0.0030 x 35) = 49.946. Cells 1000 exp(-2.81 - 0.0455) + 30 = 87.527 C; hot 2 x 18.9 x (1 - 0.0038 x 62.527) = 28.8186.</summary>
    [Fact]
    public void A_string_has_the_voltages_of_all_its_panels()
    {
        Assert.Equal(49.946, Tracker.Cold.Value!.Value.Volts, 1e-3);
        Assert.Equal(28.8186, Tracker.HotPeak.Value!.Value.Volts, 1e-3);
        Assert.Equal(5.6, Tracker.ShortCircuit.Value!.Value.Amperes, 1e-9);
        Assert.Equal(200, (double)Tracker.Power.Value!.Value.Watts, 1e-9);
    }

    /// <summary>
    /// 4 + 0.5 m, 5.3 A, copper at 70 C: 2 x 0.0045 x 5.3 x R x (1 + 0.00393 x 50) = 0.057073 R; allowed 3 % of 28.8186 = 0.8646 V, so R is 15.15 ohm/km at
    /// most: 1.5 mm2 (13.7) loses 0.7819 V, where 1 mm2 (20.0) would lose 1.141. By its current 1 mm2 would do: 1.5625 x 5.6 = 8.75 A, breaker 10 A; it lies
    /// above gauge 18 (0.82 mm2), 20 A x sqrt(45/75) = 15.49 A.
    /// </summary>
    [Fact]
    public void The_wires_of_the_panels_are_sized_by_what_they_lose()
    {
        var run = Tracker.PanelRun;

        Assert.Equal(4.5, run.Task.OneWay.Value!.Value.Meters, 1e-9);
        Assert.Equal(8.75, Tracker.PanelNeed.Value!.Value.Amperes, 1e-9);
        Assert.Equal(("1", "1.5", "1.5", "2.5"), (run.Choice!.ByAmpacity!.Name, run.Choice.ByDrop!.Name, run.Wire!.Name, run.Choice.NextThicker!.Name));
        Assert.Equal(0.7819, run.Drop.Value!.Value.Volts, 1e-4);
        Assert.Equal(15.4919 * 25 / 20, run.Ampacity.Value!.Value.Amperes, 1e-3);
    }

    /// <summary>1.5 m, 20 A, 50 C: 2 x 0.0015 x 20 x R x 1.1179 = 0.067074 R; 1 % of 14.4 = 0.144 V, R at most 2.147: 10 mm2 (1.95) loses 0.1308 V. Gauge 8 carries 80 x sqrt(55/75) = 68.51 A.</summary>
    [Fact]
    public void The_wires_to_the_bank_are_sized_by_what_they_lose()
    {
        var run = Tracker.BankRun;

        Assert.Equal(25, Tracker.BankNeed.Value!.Value.Amperes, 1e-9);
        Assert.Equal(("2.5", "10"), (run.Choice!.ByAmpacity!.Name, run.Wire!.Name));
        Assert.Equal(0.13079, run.Drop.Value!.Value.Volts, 1e-4);
        Assert.Equal(68.508, run.Ampacity.Value!.Value.Amperes, 1e-2);
        Assert.Equal(0.7819 + 0.1308, Tracker.Drop.Volts, 1e-3);
    }

    /// <summary>0.95 x 200 W / 12.8 V = 14.84 A.</summary>
    [Fact]
    public void A_tracker_gives_what_the_panels_have() => Assert.Equal(14.844, Tracker.Output.Value!.Value.Amperes, 1e-3);

    /// <summary>Two strings of one: 2 x 5.6 A, 1.5625 x 11.2 = 17.5 A, breaker 20 A; reverse 1.25 x 5.6 = 7 A.</summary>
    [Fact]
    public void Strings_in_parallel_add_their_currents()
    {
        var spec = SampleWiring.Spec.With(each => each with { Devices = new(null, null, null) }) with { Strings = [SampleWiring.StringOf("tracker", "port"), SampleWiring.StringOf("tracker", "starboard")] };
        var controller = SampleWiring.Plan(spec, Hundred).Controllers[0];

        Assert.Equal(24.973, controller.Cold.Value!.Value.Volts, 1e-3);
        Assert.Equal((17.5, 20.0), (controller.PanelNeed.Value!.Value.Amperes, controller.BreakerRating.Value!.Value.Amperes));
        Assert.Equal(7, controller.ReverseInto(controller.Strings[0]).Value!.Value.Amperes, 1e-9);
    }

    /// <summary>100 and 150 W in series: cold 22.6 x 1.105 + 22.0 x 1.14 (table 690.7(A) at -10 C, the second label being silent) = 50.053 V; the larger Isc is that of the second.</summary>
    [Fact]
    public void Unlike_panels_in_series_have_the_sum_of_the_voltages_and_the_larger_current()
    {
        var controller = SampleWiring.Plan(SampleWiring.Spec, [("port", Hundred), ("starboard", HundredFifty)]).Controllers[0];

        Assert.Equal(50.053, controller.Cold.Value!.Value.Volts, 1e-3);
        Assert.Equal(8.7, controller.ShortCircuit.Value!.Value.Amperes, 1e-9);
        Assert.Equal(Missing.VoltageCoefficient, controller.HotPeak.Because);
    }

    [Fact]
    public void What_is_missing_is_named_to_the_end()
    {
        Assert.Equal(Missing.Label, SampleWiring.Plan(SampleWiring.Spec, null).Controllers[0].PanelRun.WhyNoWire);
        Assert.Equal(Missing.ColdestAir, SampleWiring.Plan(SampleWiring.Spec with { ColdestAir = null }, Hundred).Controllers[0].Cold.Because);
        Assert.Equal(Missing.WireFamily, SampleWiring.Plan(SampleWiring.Spec with { Wires = SampleWiring.Spec.Wires with { Family = null } }, Hundred).Controllers[0].PanelRun.Drop.Because);
        Assert.Equal(Missing.RunLength, SampleWiring.Plan(SampleWiring.Spec.With(each => each with { Runs = new(null, null, null, null) }), Hundred).Controllers[0].BankRun.WhyNoWire);
        Assert.Equal(Missing.Bank, SampleWiring.Plan(SampleWiring.Spec with { Bank = null }, Hundred).Controllers[0].Absorption.Because);
    }

    /// <summary>W10 of no publication but physics: 0.2 x 10 / 0.5 = 4.0 microtesla; of a pair 6 mm apart 0.2 x 10 x 0.006 / 0.25 = 0.048.</summary>
    [Fact]
    public void A_wire_turns_a_compass_and_a_pair_hardly_does()
    {
        Assert.Equal(4.0, CompassField.OfSingle(Amperes(10), Length.FromMeters(0.5)).Microteslas, 1e-6);
        Assert.Equal(0.048, CompassField.OfPair(Amperes(10), Length.FromMeters(0.5), Length.FromMillimeters(6)).Microteslas, 1e-6);
        Assert.Equal(11.31, CompassField.Deviation(Amperes(10), Length.FromMeters(0.5), isTwisted: false).Degrees, 0.01);
        Assert.Equal(90, CompassField.Deviation(Amperes(10), Length.Zero, isTwisted: true).Degrees, 1e-9);
    }
}
