using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>How much a crystalline panel's open voltage rises in the cold, where its label does not say: NEC table 690.7(A), seen second-hand.</summary>
public static class ColdFactor
{
    private const int Warmest = 25;
    private const int StepKelvin = 5;

    /// <summary>For 24 to 20 C, 19 to 15 C, and so on to -36 to -40 C.</summary>
    private static readonly double[] Factors = [1.02, 1.04, 1.06, 1.08, 1.10, 1.12, 1.14, 1.16, 1.18, 1.20, 1.21, 1.23, 1.25];

    /// <summary>The factor in such air; between two rows the colder one's. Null below -40 C, where the table ends.</summary>
    public static Ratio? At(Temperature air)
    {
        var celsius = (int)Math.Floor(air.DegreesCelsius);
        if (celsius >= Warmest)
        {
            return Ratio.FromDecimalFractions(1);
        }

        var row = (Warmest - 1 - celsius) / StepKelvin;
        return row < Factors.Length ? Ratio.FromDecimalFractions(Factors[row]) : null;
    }
}
