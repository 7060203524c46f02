using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>Whether a string's voltages and currents suit a controller.</summary>
public static class ControllerWindow
{
    /// <summary>Nearer than a tenth to what destroys it: common practice, no source.</summary>
    private const double NearPart = 0.9;

    private const double CloudEdge = 1.25;

    /// <summary>What a switch needs above the bank, and what a buck tracker does: common practice, no source.</summary>
    private static readonly ElectricPotential SwitchNeeds = ElectricPotential.FromVolts(0.5);
    private static readonly ElectricPotential BuckNeeds = ElectricPotential.FromVolts(2);

    /// <summary>The cold string against what the controller stands. Beyond it the first cold clear morning destroys the controller.</summary>
    public static Judgement Cold(Known<ElectricPotential> cold, ChargeController controller) => Below(cold, controller.LargestPanelVoltage, Missing.ControllerVoltage);

    /// <summary>The cold string against the system voltage that its panels are made for.</summary>
    public static Judgement ColdForPanels(Known<ElectricPotential> cold, PanelLabel label) => Below(cold, label.LargestSystemVoltage, Missing.SystemVoltage);

    /// <summary>
    /// The hot string against what the controller needs to charge at all; of a boost tracker the cold string against the bank, below
    /// which it must stay.
    /// </summary>
    /// <param name="controller">The controller.</param>
    /// <param name="bank">Its bank.</param>
    /// <param name="voltages">The string, cold and at most power when hot.</param>
    /// <param name="drop">What the wires lose up to the bank.</param>
    public static Judgement Need(
        ChargeController controller, BankVoltages bank, (Known<ElectricPotential> Cold, Known<ElectricPotential> HotPeak) voltages, ElectricPotential drop) =>
        controller.Kind == ControllerKind.StepUp ? BelowBank(voltages.Cold, bank)
        : bank.Absorption is not { } absorption ? Judgement.NotChecked(Missing.Absorption, voltages.HotPeak.Value)
        : Above(voltages.HotPeak, absorption + drop + (controller.Kind == ControllerKind.PulseWidth ? SwitchNeeds : BuckNeeds));

    /// <summary>
    /// The current of all strings against what the controller takes; a caution where only the edges of clouds go beyond (common practice, no
    /// source).
    /// </summary>
    public static Judgement Current(ElectricCurrent sumOfShortCurrents, ChargeController controller) => controller.LargestInputCurrent is { } most
        ? new(sumOfShortCurrents > most ? Finding.Fails : CloudEdge * sumOfShortCurrents > most ? Finding.Caution : Finding.Holds, sumOfShortCurrents, most)
        : Judgement.NotChecked(Missing.ControllerCurrent, sumOfShortCurrents);

    private static Judgement BelowBank(Known<ElectricPotential> cold, BankVoltages bank) =>
        bank.Lowest is not { } lowest ? Judgement.NotChecked(Missing.LowestBankVoltage, cold.Value)
        : cold.Value is not { } value ? Judgement.NotChecked(cold.Because)
        : new(value < lowest ? Finding.Holds : Finding.Fails, value, lowest);

    private static Judgement Below(Known<ElectricPotential> cold, ElectricPotential? most, Missing because) =>
        cold.Value is not { } value ? Judgement.NotChecked(cold.Because)
        : most is not { } limit ? Judgement.NotChecked(because, value)
        : new(value > limit ? Finding.Fails : value > NearPart * limit ? Finding.Caution : Finding.Holds, value, limit);

    private static Judgement Above(Known<ElectricPotential> hot, ElectricPotential need) => hot.Value is { } value
        ? new(value >= need ? Finding.Holds : Finding.Fails, value, need)
        : Judgement.NotChecked(hot.Because);
}
