using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes the sun and the loads.</summary>
internal static class SunBuilder
{
    private const string Table = SunFields.Table;

    public static SunSpec? Build(GivenValues given) => given.Values.IsWritten(Table)
        ? new(
            given.Quantity<Angle>($"{Table}.latitude"),
            given.Values.Text($"{Table}.hours_are") is { } kind ? GivenValues.WordOf<SunHoursKind>(kind) : null,
            [.. given.Values.Tables($"{Table}.month").Select(path => new SunMonth(given.Quantity<int>($"{path}.number"), given.Quantity<Duration>($"{path}.hours"), given.Values.Quantity<Temperature>($"{path}.air")))],
            given.Values.Quantity<Angle>($"{Table}.heading"),
            Part(given, "albedo"),
            new(Part(given, "soiling"), Part(given, "mismatch"), Part(given, "connections"), Part(given, "light_induced"), Part(given, "nameplate"), Part(given, "shade")))
        : null;

    /// <summary>A load: energy as it is, a charge at the bank's usual voltage.</summary>
    public static DailyLoad Load(GivenValues given, string path)
    {
        var nominal = given.Values.Text("electric.bank.nominal") is { } word ? ((ElectricPotential)QuantityKinds.Voltage.Parse(word)!).Volts : 0;
        return new(
            given.Text($"{path}.name"),
            given.Values.Quantity<Energy>($"{path}.energy") ?? Energy.FromWattHours(given.Quantity<ElectricCharge>($"{path}.charge").AmpereHours * BankSpec.UsualOf(ElectricPotential.FromVolts(nominal)).Volts));
    }

    private static Ratio Part(GivenValues given, string name) => Ratio.FromDecimalFractions(given.Quantity<double>($"{Table}.{name}"));
}
