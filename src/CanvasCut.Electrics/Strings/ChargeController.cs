using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A charge controller as its voltages and currents are judged; what its sheet does not say is null.</summary>
/// <param name="Kind">How it works.</param>
/// <param name="LargestPanelVoltage">Above it the controller is destroyed.</param>
/// <param name="LargestInputCurrent">What it takes from the panels at most.</param>
public sealed record ChargeController(ControllerKind Kind, ElectricPotential? LargestPanelVoltage, ElectricCurrent? LargestInputCurrent)
{
    /// <summary>The same of a job file.</summary>
    public static ChargeController Of(ControllerSpec spec) => new(spec.Kind, spec.Input.LargestVoltage, spec.Input.LargestCurrent);
}
