using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>How a charge controller joins panels and bank.</summary>
public enum ControllerKind
{
    /// <summary>A switch: the panels work at the bank's voltage.</summary>
    PulseWidth,

    /// <summary>A tracker that steps the voltage down.</summary>
    Buck,

    /// <summary>A tracker that steps the voltage up.</summary>
    Boost,
}

/// <summary>A charge controller as its sheet describes it; what the sheet does not say is null.</summary>
/// <param name="Kind">How it works.</param>
/// <param name="LargestPanelVoltage">Above it the controller is destroyed.</param>
/// <param name="LargestInputCurrent">What it takes from the panels at most.</param>
public sealed record ChargeController(ControllerKind Kind, ElectricPotential? LargestPanelVoltage, ElectricCurrent? LargestInputCurrent);

/// <summary>A bank as a controller sees it.</summary>
/// <param name="Absorption">The voltage at which it becomes full.</param>
/// <param name="Lowest">The lowest it is let down to; null when not known.</param>
public sealed record BankVoltages(ElectricPotential Absorption, ElectricPotential? Lowest);
