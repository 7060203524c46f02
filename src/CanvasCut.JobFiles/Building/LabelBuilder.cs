using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes a panel's label.</summary>
internal static class LabelBuilder
{
    private const string Table = LabelFields.Table;

    public static PanelLabel? Build(GivenValues given) => given.Values.IsWritten(Table)
        ? new(
            given.Quantity<Power>($"{Table}.power"),
            (given.Quantity<ElectricPotential>($"{Table}.open_voltage"), given.Quantity<ElectricCurrent>($"{Table}.short_current")),
            (given.Quantity<ElectricPotential>($"{Table}.peak_voltage"), given.Quantity<ElectricCurrent>($"{Table}.peak_current")))
        {
            OpenVoltagePerKelvin = Change(given.Values, "open_voltage"),
            PeakVoltagePerKelvin = Change(given.Values, "peak_voltage"),
            ShortCurrentPerKelvin = Change(given.Values, "short_current"),
            PowerPerKelvin = Change(given.Values, "power"),
            CellsInSeries = given.Values.Quantity<int>($"{Table}.cells"),
            ShadeGroups = given.Values.Quantity<int>($"{Table}.shade_groups"),
            LargestSeriesFuse = given.Values.Quantity<ElectricCurrent>($"{Table}.series_fuse"),
            LargestSystemVoltage = given.Values.Quantity<ElectricPotential>($"{Table}.system_voltage"),
            Tolerance = given.Values.Quantity<double>($"{Table}.tolerance") is { } part ? Ratio.FromDecimalFractions(part) : null,
        }
        : null;

    /// <summary>A label from values that may be missing or wrong; null then.</summary>
    public static PanelLabel? Whole(JobValues values) =>
        values.Quantity<Power>($"{Table}.power") is not null && values.Quantity<ElectricPotential>($"{Table}.open_voltage") is not null
        && values.Quantity<ElectricCurrent>($"{Table}.short_current") is not null && values.Quantity<ElectricPotential>($"{Table}.peak_voltage") is not null
        && values.Quantity<ElectricCurrent>($"{Table}.peak_current") is not null
            ? Build(new(values))
            : null;

    private static Ratio? Change(JobValues values, string figure) =>
        values.Quantity<CoefficientOfThermalExpansion>($"{Table}.{figure}_per_kelvin") is { } change ? Ratio.FromDecimalFractions(change.PerKelvin) : null;
}
