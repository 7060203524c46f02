using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How a charge controller joins panels and bank.</summary>
public enum ControllerKind
{
    /// <summary>A switch: the panels work at the bank's voltage.</summary>
    PulseWidth,

    /// <summary>A tracker that steps the voltage down.</summary>
    StepDown,

    /// <summary>A tracker that steps the voltage up.</summary>
    StepUp,
}

/// <summary>A pole of the wiring.</summary>
public enum Pole
{
    /// <summary>Neither.</summary>
    None,

    /// <summary>The minus.</summary>
    Minus,

    /// <summary>The plus.</summary>
    Plus,
}

/// <summary>A charge controller and what leads to and from it; what is not known is null.</summary>
/// <param name="Name">What the user calls it.</param>
/// <param name="Kind">How it works.</param>
/// <param name="Input">What it stands from the panels.</param>
/// <param name="Output">What it gives the bank.</param>
/// <param name="Joined">The pole that it joins inside; null when not known.</param>
/// <param name="Runs">The wires to and from it.</param>
/// <param name="Devices">What guards it.</param>
public sealed record ControllerSpec(
    string Name, ControllerKind Kind, ControllerInput Input, ControllerOutput Output, Pole? Joined, ControllerRuns Runs, ControllerDevices Devices);

/// <summary>What a controller stands from the panels.</summary>
/// <param name="LargestVoltage">Above it the controller is destroyed.</param>
/// <param name="LargestCurrent">What it takes at most.</param>
public sealed record ControllerInput(ElectricPotential? LargestVoltage, ElectricCurrent? LargestCurrent);

/// <summary>What a controller gives the bank.</summary>
/// <param name="Rated">Its rated output.</param>
/// <param name="Efficiency">What arrives of what it takes.</param>
/// <param name="HasSense">Whether it feels the bank's voltage through wires of their own.</param>
public sealed record ControllerOutput(ElectricCurrent? Rated, Ratio Efficiency, bool HasSense);

/// <summary>The ways of a controller's wires, one way each.</summary>
/// <param name="Panel">From the top's edge to the controller.</param>
/// <param name="Bank">From the controller to the bank.</param>
/// <param name="PanelWire">The size that is there or wanted, by its name; null to have it chosen.</param>
/// <param name="BankWire">The same on the bank's side.</param>
public sealed record ControllerRuns(Length? Panel, Length? Bank, string? PanelWire, string? BankWire);

/// <summary>A fuse or breaker; what is not known is null.</summary>
/// <param name="Rating">The current it is marked with.</param>
/// <param name="Voltage">Up to which it breaks direct current.</param>
public sealed record DeviceSpec(ElectricCurrent? Rating, ElectricPotential? Voltage)
{
    /// <summary>How large a short-circuit current it can interrupt.</summary>
    public ElectricCurrent? Interrupts { get; init; }

    /// <summary>From the bank's terminal or bus to it, along the wire.</summary>
    public Length? FromBank { get; init; }

    /// <summary>Whether it breaks both poles.</summary>
    public bool? BreaksBoth { get; init; }

    /// <summary>Whether it breaks only when the current flows one way.</summary>
    public bool? IsPolarised { get; init; }
}

/// <summary>What guards a controller's wires; null where nothing was said of a device.</summary>
/// <param name="Breaker">On the panel side, the switch too.</param>
/// <param name="BankFuse">At the bank.</param>
/// <param name="StringFuse">In each string.</param>
public sealed record ControllerDevices(DeviceSpec? Breaker, DeviceSpec? BankFuse, DeviceSpec? StringFuse);
