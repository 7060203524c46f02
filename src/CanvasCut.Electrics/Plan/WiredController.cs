using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A controller with its strings, wires and devices.</summary>
/// <param name="Spec">What the job says of it.</param>
/// <param name="Strings">In parallel; none when nothing leads to it.</param>
/// <param name="Electric">What the job says of all the wiring.</param>
public sealed record WiredController(ControllerSpec Spec, ImmutableArray<WiredString> Strings, ElectricSpec Electric)
{
    /// <summary>The highest voltage at its panel terminals.</summary>
    public Known<ElectricPotential> Cold => Knowns.Of([.. Strings.Select(each => each.Cold)], each => each.Max());

    /// <summary>The lowest voltage of most power of its strings when hot.</summary>
    public Known<ElectricPotential> HotPeak => Knowns.Of([.. Strings.Select(each => each.HotPeak)], each => each.Min());

    /// <summary>The short-circuit currents of all strings.</summary>
    public Known<ElectricCurrent> ShortCircuit => Knowns.Of([.. Strings.Select(each => each.ShortCircuit)], Knowns.Sum);

    /// <summary>The currents at most power of all strings.</summary>
    public Known<ElectricCurrent> PeakCurrent => Knowns.Of([.. Strings.Select(each => each.PeakCurrent)], Knowns.Sum);

    /// <summary>The watts of all labels.</summary>
    public Known<Power> Power => Knowns.Of([.. Strings.Select(each => each.Power)], Knowns.Sum);

    /// <summary>What the panels' wires and device must carry: NEC 690.8.</summary>
    public Known<ElectricCurrent> PanelNeed => ShortCircuit.Then(ArrayCurrent.ForWires);

    /// <summary>What the bank's fuse must carry.</summary>
    public Known<ElectricCurrent> BankNeed => Spec.Output.Rated.Or(Missing.RatedOutput).Then(rated => ProtectedPlace.AboveOutput * rated);

    /// <summary>The breaker on the panels' side: the one given, or the next size on sale.</summary>
    public Known<ElectricCurrent> BreakerRating => RatingOf(Spec.Devices.Breaker, PanelNeed);

    /// <summary>The fuse at the bank: the one given, or the next size on sale.</summary>
    public Known<ElectricCurrent> BankFuseRating => RatingOf(Spec.Devices.BankFuse, BankNeed);

    /// <summary>From the panels to the controller, sized for all strings together over the whole way.</summary>
    public PlannedRun PanelRun => new(
        new(PanelWay, BreakerRating, PeakCurrent, HotPeak.Then(volts => volts * Electric.Wires.Panel.Drop.DecimalFractions)),
        Spec.Runs.PanelWire,
        Electric.Wires,
        Electric.Wires.Panel);

    /// <summary>From the controller to the bank.</summary>
    public PlannedRun BankRun => new(
        new(Spec.Runs.Bank.Or(Missing.RunLength), BankFuseRating, Spec.Output.Rated.Or(Missing.RatedOutput), Absorption.Then(volts => volts * Electric.Wires.Bank.Drop.DecimalFractions)),
        Spec.Runs.BankWire,
        Electric.Wires,
        Electric.Wires.Bank);

    /// <summary>What the wires lose up to the bank: as reckoned, or where no size is known yet the most that is allowed.</summary>
    public ElectricPotential Drop => (PanelRun.Drop.Value ?? PanelRun.Task.Allowed.Value ?? ElectricPotential.Zero) + (BankRun.Drop.Value ?? BankRun.Task.Allowed.Value ?? ElectricPotential.Zero);

    /// <summary>The bank's absorption voltage.</summary>
    public Known<ElectricPotential> Absorption => Electric.Bank is { } bank ? bank.Voltages.Absorption.Or(Missing.Absorption) : Known.Not<ElectricPotential>(Missing.Bank);

    /// <summary>What it gives the bank at most, the bank at its usual voltage.</summary>
    public Known<ElectricCurrent> Output => Electric.Bank is not { } bank ? Known.Not<ElectricCurrent>(Missing.Bank)
        : Spec.Output.Rated is not { } rated ? Known.Not<ElectricCurrent>(Missing.RatedOutput)
        : Spec.Kind == ControllerKind.PulseWidth ? PeakCurrent.Then(current => current < rated ? current : rated)
        : Power.Then(power => ArrayCurrent.TrackerOutput(power, Spec.Output.Efficiency, bank.Usual, rated));

    /// <summary>What a fault pushes back into one string, from all others.</summary>
    public Known<ElectricCurrent> ReverseInto(WiredString one) =>
        Strings.Length == 1 ? Known.Of(ElectricCurrent.Zero) : Knowns.Of([.. Strings.Where(other => other != one).Select(other => other.ShortCircuit)], Knowns.Sum).Then(ArrayCurrent.Design);

    private Known<Length> PanelWay => Spec.Runs.Panel is { } given
        ? Knowns.Of([.. Strings.Select(each => each.ToEdge)], each => each.Max()).Then(edge => edge + given)
        : Known.Not<Length>(Missing.RunLength);

    private Known<ElectricCurrent> RatingOf(DeviceSpec? device, Known<ElectricCurrent> need) =>
        device?.Rating is { } given ? Known.Of(given)
        : need.Value is not { } least ? need
        : Protection.Next(least, Electric.Around.Fuses).Or(Missing.DeviceOnSale);
}
