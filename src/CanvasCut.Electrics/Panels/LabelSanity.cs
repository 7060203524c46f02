using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What of a label is held against another figure of it or against what panels are like.</summary>
public enum LabelFigure
{
    /// <summary>Pmax against Vmp times Imp: by what part they differ.</summary>
    Power,

    /// <summary>Vmp as a part of Voc.</summary>
    Voltages,

    /// <summary>Imp as a part of Isc.</summary>
    Currents,

    /// <summary>Pmax as a part of Voc times Isc.</summary>
    FillFactor,

    /// <summary>Voc of one cell.</summary>
    CellVoltage,

    /// <summary>beta of Voc.</summary>
    VoltageCoefficient,

    /// <summary>alpha of Isc.</summary>
    CurrentCoefficient,

    /// <summary>gamma of Pmax.</summary>
    PowerCoefficient,
}

/// <summary>Tells whether a label can be true, and whether it is like others.</summary>
/// <remarks>
/// What is impossible is physics. The usual bands are common practice, no source; they take in 9 in 10 of the 381 crystalline modules
/// of the Sandia table in pvlib's data (to 2015).
/// </remarks>
public static class LabelSanity
{
    private const double SteepestPerCent = -0.6;

    /// <summary>Each figure of a label, in the order of <see cref="LabelFigure"/>.</summary>
    public static ImmutableSortedDictionary<LabelFigure, Judgement> Of(PanelLabel label)
    {
        var peak = label.PeakVoltage.Volts * label.PeakCurrent.Amperes;
        var open = label.OpenVoltage.Volts * label.ShortCurrent.Amperes;
        return ImmutableSortedDictionary.CreateRange(new Dictionary<LabelFigure, Judgement>
        {
            [LabelFigure.Power] = PowerOf((double)label.Power.Watts / peak),
            [LabelFigure.Voltages] = Part(label.PeakVoltage.Volts / label.OpenVoltage.Volts, 0.74, 0.88),
            [LabelFigure.Currents] = Part(label.PeakCurrent.Amperes / label.ShortCurrent.Amperes, 0.85, 0.98),
            [LabelFigure.FillFactor] = Part((double)label.Power.Watts / open, 0.65, 0.85),
            [LabelFigure.CellVoltage] = CellVoltageOf(label),
            [LabelFigure.VoltageCoefficient] = Coefficient(label.OpenVoltagePerKelvin, (-0.42, -0.22), perCent => perCent is >= 0 or < SteepestPerCent, Missing.VoltageCoefficient),
            [LabelFigure.CurrentCoefficient] = Coefficient(label.ShortCurrentPerKelvin, (-0.02, 0.12), _ => false, Missing.LabelFigure),
            [LabelFigure.PowerCoefficient] = Coefficient(label.PowerPerKelvin, (-0.60, -0.22), perCent => perCent >= 0, Missing.LabelFigure),
        });
    }

    private static Judgement PowerOf(double part)
    {
        var difference = Math.Abs(part - 1);
        return new(Worst(difference > 0.03, difference > 0.01), Ratio.FromDecimalFractions(difference), Ratio.FromPercent(3));
    }

    private static Judgement Part(double part, double from, double to) =>
        new(Worst(part >= 1, part < from || part > to), Ratio.FromDecimalFractions(part), Ratio.FromDecimalFractions(part < from ? from : to));

    private static Judgement CellVoltageOf(PanelLabel label)
    {
        if (label.CellsInSeries is not { } cells)
        {
            return Judgement.NotChecked(Missing.LabelFigure);
        }

        var volts = label.OpenVoltage.Volts / cells;
        return new(Worst(false, volts is < 0.54 or > 0.76), ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(volts < 0.54 ? 0.54 : 0.76));
    }

    private static Judgement Coefficient(Ratio? perKelvin, (double From, double To) usual, Func<double, bool> isWrong, Missing because)
    {
        if (perKelvin is not { } known)
        {
            return Judgement.NotChecked(because);
        }

        var perCent = known.Percent;
        return new(Worst(isWrong(perCent), perCent < usual.From || perCent > usual.To), known, Ratio.FromPercent(perCent < usual.From ? usual.From : usual.To));
    }

    private static Finding Worst(bool isWrong, bool isUnusual) => isWrong ? Finding.Fails : isUnusual ? Finding.Caution : Finding.Holds;
}
