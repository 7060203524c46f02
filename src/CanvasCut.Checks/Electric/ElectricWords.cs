using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>How wirings are told of.</summary>
public static class ElectricWords
{
    /// <summary>What a panel is called.</summary>
    public static string Of(WiredPanel panel)
    {
        ArgumentNullException.ThrowIfNull(panel);
        return panel.Name.IsOnly ? Say.Of("the panel") : Say.Of($"panel \"{panel.Name}\"");
    }

    /// <summary>What a string is called: its number, and its panels where there are several.</summary>
    public static string Of(WiredString one)
    {
        ArgumentNullException.ThrowIfNull(one);
        return one.Panels is [{ Name.IsOnly: true }]
            ? Say.Of("the panel")
            : Say.Of($"string {one.Number} ({string.Join(" + ", one.Panels.Select(panel => panel.Name.Text))})");
    }

    /// <summary>What was missing, and what to do about it.</summary>
    public static string Of(Missing because) => because switch
    {
        Missing.ColdestAir => Say.Of("Not checked because the coldest air is missing: give electric.coldest_air, the lowest while the panels are mounted and lit, lay-up included."),
        Missing.FactorForSuchCold => Say.Of("Not checked because the table of factors ends at -40 C: give panel.label.open_voltage_per_kelvin."),
        Missing.VoltageCoefficient => Say.Of("Not checked because the label's change of the voltage with heat is missing: give panel.label.open_voltage_per_kelvin."),
        Missing.SeriesFuse => Say.Of("Not checked because the label's largest series fuse is missing: give panel.label.series_fuse."),
        Missing.SystemVoltage => Say.Of("Not checked because the label's largest system voltage is missing: give panel.label.system_voltage."),
        Missing.ControllerVoltage => Say.Of("Not checked because the controller's largest panel voltage is missing: give largest_voltage."),
        Missing.ControllerCurrent => Say.Of("Not checked because the controller's largest input current is missing: give largest_current."),
        Missing.LowestBankVoltage => Say.Of("Not checked because the bank's lowest voltage is missing: give electric.bank.lowest."),
        Missing.Label => Say.Of("Not checked because a panel's label is missing: give panel.label."),
        Missing.Sun => Say.Of("Not reckoned because the place is missing: give electric.sun with its latitude."),
        Missing.Bank => Say.Of("Not checked because the bank is missing: give electric.bank."),
        Missing.Absorption => Say.Of("Not checked because the bank's absorption voltage is missing: give electric.bank.absorption, from its maker's sheet."),
        Missing.RatedOutput => Say.Of("Not checked because the controller's rated output is missing: give rated_output."),
        Missing.RunLength => Say.Of("Not checked because the length of the wires is missing: give panel_run or bank_run of the controller, and panel.junction_box."),
        Missing.WireFamily => Say.Of("Not checked because it is not known which wire is meant: give electric.wires.family."),
        Missing.DeviceVoltage => Say.Of("Not checked because the voltage up to which it breaks direct current is missing: give its voltage."),
        Missing.DeviceInterrupts => Say.Of("Not checked because what it can interrupt is missing: give interrupts."),
        Missing.BankFault => Say.Of("Not checked because what the bank gives into a short circuit is missing: give electric.bank.cranking, or short_current of a lithium bank."),
        Missing.DevicePlace => Say.Of("Not checked because its distance from the bank is missing: give from_bank."),
        Missing.WireInTable => Say.Of("Not checked because the table of currents begins at gauge 18, 0.82 mm2."),
        Missing.ThickEnoughWire => Say.Of("No size of this family is thick enough: shorten the way, or lay two runs with a fuse each."),
        Missing.DeviceOnSale => Say.Of("No fuse or breaker on sale is so large: divide the panels between controllers."),
        _ => Say.Of("Not checked because a figure of the label is missing: fill in panel.label."),
    };

    /// <summary>A string on its controller.</summary>
    internal static string On(WiredString one, WiredController controller) => Say.Of($"{Of(one)} on controller \"{controller.Spec.Name}\"");

    /// <summary>A check whose figure is missing.</summary>
    internal static CheckResult NotChecked((string Code, string Subject) what, Missing because, string source) =>
        new(what.Code, what.Subject, because is Missing.ThickEnoughWire or Missing.DeviceOnSale ? Verdict.Fail : Verdict.NotChecked, Measured.Nothing, source, Of(because));

    /// <summary>The same with the figure that could be reckoned.</summary>
    internal static CheckResult NotChecked<T>((string Code, string Subject) what, Missing because, string source, Known<T> found)
        where T : struct, IQuantity =>
        NotChecked(what, because, source) with { Measured = found.Value is { } value ? Measured.Found(value) : Measured.Nothing };

    /// <summary>The verdict of a finding.</summary>
    internal static Verdict VerdictOf(Finding finding) => finding switch
    {
        Finding.Holds => Verdict.Pass,
        Finding.Caution => Verdict.Caution,
        Finding.Fails => Verdict.Fail,
        _ => Verdict.NotChecked,
    };
}
