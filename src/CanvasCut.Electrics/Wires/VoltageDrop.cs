using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What the copper of a run takes, out and back.</summary>
public static class VoltageDrop
{
    /// <summary>The resistance of copper a kelvin: IEC 60028.</summary>
    private const double PerKelvin = 0.00393;

    /// <summary>The drop over a run of so much one way, the copper being so warm.</summary>
    /// <remarks>Sizes in gauges are reckoned with the trade's 10.75 ohm circular mils a foot as their value at 20 C: 4 % more than copper has, to
    /// the safe side.</remarks>
    public static ElectricPotential Of(WireSize wire, ElectricCurrent current, Length oneWay, Temperature copper) => ElectricPotential.FromVolts(
        2 * oneWay.Kilometers * current.Amperes * wire.ResistancePerKilometre.Ohms * Warm(copper));

    /// <summary>The thinnest size of a family whose drop is within what is allowed; null when none is.</summary>
    public static WireSize? Thinnest(WireFamily family, ElectricCurrent current, Length oneWay, (ElectricPotential Allowed, Temperature Copper) limits) =>
        WireSize.Of(family).FirstOrDefault(size => Of(size, current, oneWay, limits.Copper) <= limits.Allowed);

    /// <summary>By how much warm copper resists more than at 20 C.</summary>
    internal static double Warm(Temperature copper) => 1 + (PerKelvin * (copper.DegreesCelsius - 20));
}
