using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>The voltages of panels of one kind in series, cold and hot.</summary>
public static class StringVoltage
{
    private const double TestCelsius = 25;

    /// <summary>beta of Vmp as so many times beta of Voc, where the label is silent: the median of the 381 modules of the Sandia table is 1.29.</summary>
    private const double PeakSteeper = 1.3;

    /// <summary>The highest voltage, with nothing connected, in the coldest air in which the panels are mounted and lit.</summary>
    /// <remarks>
    /// By the label's coefficient, as NEC 690.7(A) has it; without one by the factors of its table. No voltage is taken off for a
    /// coldest air above 25 C.
    /// </remarks>
    public static Known<ElectricPotential> Cold(PanelLabel label, int inSeries, Temperature? coldest)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(inSeries, 1);
        if (coldest is not { } air)
        {
            return Known.Not<ElectricPotential>(Missing.ColdestAir);
        }

        var factor = label.OpenVoltagePerKelvin is { } beta
            ? 1 + (beta.DecimalFractions * (Math.Min(air.DegreesCelsius, TestCelsius) - TestCelsius))
            : ColdFactor.At(air)?.DecimalFractions;
        return factor is { } known ? Known.Of(label.OpenVoltage * inSeries * known) : Known.Not<ElectricPotential>(Missing.FactorForSuchCold);
    }

    /// <summary>The voltage of most power at a temperature of the cells.</summary>
    public static Known<ElectricPotential> Peak(PanelLabel label, int inSeries, Temperature cells)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(inSeries, 1);
        var beta = label.PeakVoltagePerKelvin?.DecimalFractions ?? (PeakSteeper * label.OpenVoltagePerKelvin?.DecimalFractions);
        return beta is { } known
            ? Known.Of(label.PeakVoltage * inSeries * (1 + (known * (cells.DegreesCelsius - TestCelsius))))
            : Known.Not<ElectricPotential>(Missing.VoltageCoefficient);
    }
}
