using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What a panel's label says, at standard test conditions: 1000 W/m², cell at 25 C, air mass 1.5.</summary>
/// <remarks>A coefficient is the part by which the figure changes with each kelvin. What the label does not say is null, and is never guessed here.</remarks>
public sealed record PanelLabel
{
    /// <summary>The five figures that every label has.</summary>
    /// <param name="power">Pmax.</param>
    /// <param name="open">Voc and Isc.</param>
    /// <param name="peak">Vmp and Imp.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not above zero.</exception>
    public PanelLabel(Power power, (ElectricPotential Voltage, ElectricCurrent ShortCurrent) open, (ElectricPotential Voltage, ElectricCurrent Current) peak)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(power, Power.Zero);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(open.Voltage, ElectricPotential.Zero, nameof(open));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(open.ShortCurrent, ElectricCurrent.Zero, nameof(open));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(peak.Voltage, ElectricPotential.Zero, nameof(peak));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(peak.Current, ElectricCurrent.Zero, nameof(peak));

        (Power, OpenVoltage, ShortCurrent, PeakVoltage, PeakCurrent) = (power, open.Voltage, open.ShortCurrent, peak.Voltage, peak.Current);
    }

    /// <summary>Pmax.</summary>
    public Power Power { get; }

    /// <summary>Voc.</summary>
    public ElectricPotential OpenVoltage { get; }

    /// <summary>Isc.</summary>
    public ElectricCurrent ShortCurrent { get; }

    /// <summary>Vmp.</summary>
    public ElectricPotential PeakVoltage { get; }

    /// <summary>Imp.</summary>
    public ElectricCurrent PeakCurrent { get; }

    /// <summary>beta, of Voc.</summary>
    public Ratio? OpenVoltagePerKelvin { get; init; }

    /// <summary>beta of Vmp, which few labels have.</summary>
    public Ratio? PeakVoltagePerKelvin { get; init; }

    /// <summary>gamma, of Pmax.</summary>
    public Ratio? PowerPerKelvin { get; init; }

    /// <summary>alpha, of Isc.</summary>
    public Ratio? ShortCurrentPerKelvin { get; init; }

    /// <summary>Cells in series.</summary>
    public int? CellsInSeries { get; init; }

    /// <summary>Groups of cells behind one bypass diode each.</summary>
    public int? ShadeGroups { get; init; }

    /// <summary>The largest series fuse.</summary>
    public ElectricCurrent? LargestSeriesFuse { get; init; }

    /// <summary>The largest system voltage.</summary>
    public ElectricPotential? LargestSystemVoltage { get; init; }

    /// <summary>By how much Pmax may differ from the label.</summary>
    public Ratio? Tolerance { get; init; }
}
