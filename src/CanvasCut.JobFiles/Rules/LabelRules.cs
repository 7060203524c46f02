using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>A label that no panel can have: a slip in copying it.</summary>
internal static class LabelRules
{
    private const string Table = LabelFields.Table;

    public static void Check(JobValues values, RuleLog rules)
    {
        if (!values.IsWritten(Table) || LabelBuilder.Whole(values) is not { } label)
        {
            return;
        }

        var judged = LabelSanity.Of(label);
        rules.When(
            Fails(LabelFigure.Voltages),
            ProblemCode.Label,
            $"{Table}.peak_voltage",
            Say.Of($"is not below open_voltage, {QuantityWords.Of(label.OpenVoltage)}; the label has Vmp here and Voc there."));
        rules.When(
            Fails(LabelFigure.Currents),
            ProblemCode.Label,
            $"{Table}.peak_current",
            Say.Of($"is not below short_current, {QuantityWords.Of(label.ShortCurrent)}; the label has Imp here and Isc there."));
        var peak = UnitsNet.Power.FromWatts(label.PeakVoltage.Volts * label.PeakCurrent.Amperes);
        rules.When(
            Fails(LabelFigure.Power),
            ProblemCode.Label,
            $"{Table}.power",
            Say.Of($"is not peak_voltage times peak_current, {QuantityWords.Of(peak)}, to 3 %; copy the label again."));
        rules.When(
            Fails(LabelFigure.VoltageCoefficient),
            ProblemCode.Label,
            $"{Table}.open_voltage_per_kelvin",
            Say.Of("must lie between -0.6 %/K and 0; the voltage falls as the cells warm. A label in V/K or mV/K is that divided by Voc."));
        rules.When(
            Fails(LabelFigure.PowerCoefficient),
            ProblemCode.Label,
            $"{Table}.power_per_kelvin",
            Say.Of("must be below 0; the power falls as the cells warm."));

        bool Fails(LabelFigure figure) => judged[figure].Finding == Finding.Fails;
    }
}
