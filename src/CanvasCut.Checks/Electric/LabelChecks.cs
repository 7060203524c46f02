using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>Whether labels are like those of other panels; one that cannot be is a problem of the job file.</summary>
internal static class LabelChecks
{
    private static string Source => Say.Of("bands: common practice, no source; they take in nine tenths of the 381 crystalline modules of the Sandia table");

    public static IEnumerable<CheckResult> Of(WiringPlan plan) => plan.Panels.Select(Of);

    private static CheckResult Of(WiredPanel panel)
    {
        var what = (Code: CheckCodes.ElectricLabel, Subject: Say.Of($"label of {ElectricWords.Of(panel)}"));
        if (panel.Label is not { } label)
        {
            return ElectricWords.NotChecked(what, Missing.Label, Source);
        }

        List<string> odd = [.. LabelSanity.Of(label).Where(each => each.Value.Finding is Finding.Caution or Finding.Fails).Select(each => Text(each.Key, each.Value))];
        return odd.Count == 0
            ? new(what.Code, what.Subject, Verdict.Pass, Measured.Nothing, Source, string.Empty)
            : new(what.Code, what.Subject, Verdict.Caution, Measured.Nothing, Source, Say.Of($"Unusual: {string.Join("; ", odd)}. Read the label again before you rely on it."));
    }

    private static string Text(LabelFigure figure, Judgement judged)
    {
        var (value, limit) = (QuantityWords.Of(judged.Value!), QuantityWords.Of(judged.Limit!));
        return figure switch
        {
            LabelFigure.Power => Say.Of($"Pmax differs from Vmp x Imp by {value}"),
            LabelFigure.Voltages => Say.Of($"Vmp is {value} of Voc, most have 74 to 88 %"),
            LabelFigure.Currents => Say.Of($"Imp is {value} of Isc, most have 85 to 98 %"),
            LabelFigure.FillFactor => Say.Of($"Pmax is {value} of Voc x Isc, most have 65 to 85 %"),
            LabelFigure.CellVoltage => Say.Of($"Voc is {value} a cell, most have {limit} at the nearest; count the cells"),
            LabelFigure.VoltageCoefficient => Say.Of($"Voc changes by {PerKelvin(label: judged)} a kelvin, most by -0.42 to -0.22 %"),
            LabelFigure.CurrentCoefficient => Say.Of($"Isc changes by {PerKelvin(label: judged)} a kelvin, most by -0.02 to 0.12 %"),
            _ => Say.Of($"Pmax changes by {PerKelvin(label: judged)} a kelvin, most by -0.60 to -0.22 %"),
        };
    }

    private static string PerKelvin(Judgement label) =>
        FormattableString.Invariant($"{((UnitsNet.Ratio)label.Value!).Percent:0.##} %");
}
