using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What a run of wires must do.</summary>
/// <param name="OneWay">How long it is, one way.</param>
/// <param name="Guard">The fuse or breaker that guards it: the wire must carry so much.</param>
/// <param name="Usual">The current at which the drop is reckoned.</param>
/// <param name="Allowed">What may be lost, out and back.</param>
public sealed record RunTask(Known<Length> OneWay, Known<ElectricCurrent> Guard, Known<ElectricCurrent> Usual, Known<ElectricPotential> Allowed);

/// <summary>A run of wires with its size.</summary>
/// <param name="Task">What it must do.</param>
/// <param name="Given">The size that the job names; null to have it chosen.</param>
/// <param name="Spec">What wire is laid.</param>
/// <param name="Side">On which side of the controller.</param>
public sealed record PlannedRun(RunTask Task, string? Given, WireSpec Spec, WireSide Side)
{
    /// <summary>Where it lies.</summary>
    public WirePlace Place => new(Spec.Insulation, Side.Air, Spec.InBundle);

    /// <summary>The size to choose; null when something for it is missing.</summary>
    public WireChoice? Choice => Spec.Family is { } family && Whole is { } run ? WireChoice.Of(run, family, Place, Spec.IsSheathed) : null;

    /// <summary>The size that the job names, or else the one chosen.</summary>
    public WireSize? Wire => Given is { } name && Spec.Family is { } family ? WireSize.Of(family, name) : Choice?.Chosen;

    /// <summary>What that size carries there.</summary>
    public Known<ElectricCurrent> Ampacity => Wire is { } wire ? Electrics.Ampacity.Of(wire, Place) : Known.Not<ElectricCurrent>(WhyNoWire);

    /// <summary>What that size loses.</summary>
    public Known<ElectricPotential> Drop => Wire is not { } wire ? Known.Not<ElectricPotential>(WhyNoWire)
        : Task.OneWay.Value is not { } way ? Known.Not<ElectricPotential>(Task.OneWay.Because)
        : Task.Usual.Then(current => VoltageDrop.Of(wire, current, way, Side.Copper));

    /// <summary>Whether it is thinner than wires may be at all.</summary>
    public bool IsTooThin => Wire is { } wire && wire.Area < WireChoice.Smallest(wire.Family, Spec.IsSheathed).Area;

    /// <summary>Why there is no size.</summary>
    public Missing WhyNoWire => Spec.Family is null ? Missing.WireFamily
        : Task.Guard.Value is null ? Task.Guard.Because
        : Task.OneWay.Value is null ? Task.OneWay.Because
        : Task.Usual.Value is null ? Task.Usual.Because
        : Task.Allowed.Value is null ? Task.Allowed.Because
        : Missing.ThickEnoughWire;

    private WireRun? Whole => (Task.OneWay.Value, Task.Guard.Value, Task.Usual.Value, Task.Allowed.Value) is ({ } way, { } guard, { } usual, { } allowed)
        ? new(way, guard, usual, allowed, Side.Copper)
        : null;
}
