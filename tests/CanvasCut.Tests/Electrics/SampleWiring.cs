using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

/// <summary>A made-up wiring: two panels of 100 W in series on a tracker, a 12 V bank; everything known, everything right.</summary>
internal static class SampleWiring
{
    public static HeatSpec Heat { get; } = new(Celsius(30), Speed.FromMetersPerSecond(1), null);

    public static ControllerSpec Tracker { get; } = new(
        "tracker",
        ControllerKind.StepDown,
        new(Volts(100), Amperes(20)),
        new(Amperes(20), Ratio.FromPercent(95), HasSense: false),
        Pole.Minus,
        new(Length.FromMeters(4), Length.FromMeters(1.5), null, null),
        new(
            new(Amperes(10), Volts(80)) { BreaksBoth = true, IsPolarised = false },
            new(Amperes(25), Volts(58)) { Interrupts = Amperes(3000), FromBank = Length.FromMillimeters(150) },
            null));

    public static BankSpec Bank { get; } = new(
        Volts(12),
        BankKind.Agm,
        new(Volts(14.4), Volts(13.6), Volts(12)),
        new(ElectricCharge.FromAmpereHours(200), Ratio.FromPercent(50)),
        new(Amperes(800), null),
        Pole.Minus);

    public static ElectricSpec Spec { get; } = new(
        Celsius(-10),
        Bank,
        [Tracker],
        [StringOf("tracker", "port", "starboard")],
        new(
            WireFamily.MetricTinned,
            Insulation.C105,
            IsSheathed: false,
            InBundle: 2,
            new(Celsius(60), Celsius(70), Ratio.FromPercent(3)),
            new(Celsius(50), Celsius(50), Ratio.FromPercent(1))),
        new(RatingSeries.Nec, ConnectorState.OneFamily, Length.FromMillimeters(800), IsTwisted: true));

    public static StringSpec StringOf(string controller, params string[] panels) => new(controller, [.. panels.Select(name => new MountingName(name))]);

    /// <summary>The plan of a wiring, each panel half a metre from the edge of the top.</summary>
    public static WiringPlan Plan(ElectricSpec spec, PanelLabel? label, params string[] panels) =>
        Plan(spec, [.. (panels.Length == 0 ? ["port", "starboard"] : panels).Select(name => (name, label))]);

    public static WiringPlan Plan(ElectricSpec spec, ImmutableArray<(string Name, PanelLabel? Label)> panels) =>
        WiringPlan.Of(spec, [.. panels.Select(panel => new WiredPanel(new(panel.Name), panel.Label, Length.FromMillimeters(500)))], Heat);

    public static ElectricSpec With(this ElectricSpec spec, Func<ControllerSpec, ControllerSpec> change) => spec with { Controllers = [.. spec.Controllers.Select(change)] };
}
