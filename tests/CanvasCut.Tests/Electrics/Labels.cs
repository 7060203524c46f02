using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Tests.Electrics;

/// <summary>Labels and units of the check values, written short.</summary>
internal static class Labels
{
    public static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    public static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);

    public static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    /// <summary>A panel of 100 W as they are sold: 18.9 V x 5.3 A = 100.17 W.</summary>
    public static PanelLabel Hundred { get; } = new(Power.FromWatts(100), (Volts(22.6), Amperes(5.6)), (Volts(18.9), Amperes(5.3)))
    {
        OpenVoltagePerKelvin = Ratio.FromPercent(-0.30),
        PeakVoltagePerKelvin = Ratio.FromPercent(-0.38),
        PowerPerKelvin = Ratio.FromPercent(-0.38),
        ShortCurrentPerKelvin = Ratio.FromPercent(0.05),
        CellsInSeries = 36,
        ShadeGroups = 1,
        LargestSeriesFuse = Amperes(15),
        LargestSystemVoltage = Volts(600),
    };

    /// <summary>A panel of another make-up: 18.2 V x 8.24 A = 149.97 W.</summary>
    public static PanelLabel HundredFifty { get; } = new(Power.FromWatts(150), (Volts(22.0), Amperes(8.7)), (Volts(18.2), Amperes(8.24))) { ShadeGroups = 2 };

    /// <summary>A panel of which only the open voltage matters.</summary>
    public static PanelLabel WithOpenVoltage(double volts, double? perCent) => new(Power.FromWatts(300), (Volts(volts), Amperes(9)), (Volts(volts * 0.8), Amperes(8)))
    {
        OpenVoltagePerKelvin = perCent is { } known ? Ratio.FromPercent(known) : null,
    };
}
