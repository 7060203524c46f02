using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What turns a panel's label into power and energy.</summary>
public static class YieldFormula
{
    private const double TestCelsius = 25;
    private const double TestSun = 1000;

    /// <summary>What is lost when several parts are lost one after the other.</summary>
    public static Ratio Together(params IEnumerable<Ratio> losses) => Ratio.FromDecimalFractions(1 - losses.Aggregate(1.0, (left, loss) => left * (1 - loss.DecimalFractions)));

    /// <summary>Power in such light with cells so warm.</summary>
    public static Power PowerIn(Power label, Ratio perKelvin, Irradiance sun, Temperature cells) => Power.FromWatts((double)label.Watts * sun.WattsPerSquareMeter / TestSun * Warm(perKelvin, cells));

    /// <summary>What is left of the label on the way into the bank.</summary>
    /// <param name="heat">The change of the power with heat, and the cells.</param>
    /// <param name="lost">All that is lost but shade.</param>
    /// <param name="shade">What shade takes.</param>
    /// <param name="controller">The controller's efficiency.</param>
    public static Ratio Left((Ratio PerKelvin, Temperature Cells) heat, Ratio lost, Ratio shade, Ratio controller) => Ratio.FromDecimalFractions(
        Warm(heat.PerKelvin, heat.Cells) * (1 - lost.DecimalFractions) * (1 - shade.DecimalFractions) * controller.DecimalFractions);

    /// <summary>The energy of a day of so many peak hours.</summary>
    public static Energy OfDay(Power label, Irradiation onPlane, Ratio left) =>
        Energy.FromWattHours((double)label.Watts * onPlane.WattHoursPerSquareMeter / TestSun * left.DecimalFractions);

    private static double Warm(Ratio perKelvin, Temperature cells) => 1 + (perKelvin.DecimalFractions * (cells.DegreesCelsius - TestCelsius));
}
