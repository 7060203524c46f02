using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A panel as it is wired.</summary>
/// <param name="Name">Its name; empty for the only one of a top.</param>
/// <param name="Label">Its label; null when not given.</param>
/// <param name="ToEdge">How far its cable runs over the top, from the box by its hole to the nearest edge; null when the box's place is not known.</param>
public sealed record WiredPanel(MountingName Name, PanelLabel? Label, Length? ToEdge)
{
    /// <summary>How it lies on the boat; null when the top's shape is not known.</summary>
    public PanelLie? Lies { get; init; }
}

/// <summary>How a panel lies on an upright boat.</summary>
/// <param name="Tilt">From level.</param>
/// <param name="Toward">The way it faces, from the bow clockwise.</param>
public sealed record PanelLie(Angle Tilt, Angle Toward)
{
    /// <summary>Flat.</summary>
    public static PanelLie Level { get; } = new(Angle.Zero, Angle.Zero);
}

/// <summary>The temperatures for which a wiring is reckoned.</summary>
/// <param name="Coldest">The coldest air; null when not given.</param>
/// <param name="HotCells">The cells on a hot day, nothing free behind them.</param>
public sealed record WiringHeat(Temperature? Coldest, Temperature HotCells);

/// <summary>Panels in series, with their voltages and currents.</summary>
/// <param name="Number">From 1, over all controllers.</param>
/// <param name="Panels">At least one.</param>
/// <param name="Heat">How cold and how hot it is.</param>
public sealed record WiredString(int Number, ImmutableArray<WiredPanel> Panels, WiringHeat Heat)
{
    /// <summary>Its highest voltage, open and cold.</summary>
    public Known<ElectricPotential> Cold => Sum(label => StringVoltage.Cold(label, 1, Heat.Coldest));

    /// <summary>Its voltage at most power when hot.</summary>
    public Known<ElectricPotential> HotPeak => Sum(label => StringVoltage.Peak(label, 1, Heat.HotCells));

    /// <summary>Its open voltage by the labels.</summary>
    public Known<ElectricPotential> Open => Sum(label => Known.Of(label.OpenVoltage));

    /// <summary>Its voltage at most power by the labels.</summary>
    public Known<ElectricPotential> PeakVoltage => Sum(label => Known.Of(label.PeakVoltage));

    /// <summary>The largest short-circuit current of its panels: no more flows through it.</summary>
    public Known<ElectricCurrent> ShortCircuit => Labels(label => Known.Of(label.ShortCurrent), each => each.Max());

    /// <summary>The largest current at most power of its panels.</summary>
    public Known<ElectricCurrent> PeakCurrent => Labels(label => Known.Of(label.PeakCurrent), each => each.Max());

    /// <summary>The watts of its labels.</summary>
    public Known<Power> Power => Labels(label => Known.Of(label.Power), Knowns.Sum);

    /// <summary>The smallest of the largest series fuses.</summary>
    public Known<ElectricCurrent> SeriesFuse => Labels(label => label.LargestSeriesFuse.Or(Missing.SeriesFuse), each => each.Min());

    /// <summary>The smallest of the largest system voltages.</summary>
    public Known<ElectricPotential> SystemVoltage => Labels(label => label.LargestSystemVoltage.Or(Missing.SystemVoltage), each => each.Min());

    /// <summary>The longest way of its panels' cables over the top.</summary>
    public Known<Length> ToEdge => Knowns.Of([.. Panels.Select(panel => panel.ToEdge.Or(Missing.RunLength))], each => each.Max());

    private Known<ElectricPotential> Sum(Func<PanelLabel, Known<ElectricPotential>> of) => Labels(of, Knowns.Sum);

    private Known<T> Labels<T>(Func<PanelLabel, Known<T>> of, Func<IEnumerable<T>, T> made)
        where T : struct, IQuantity =>
        Knowns.Of([.. Panels.Select(panel => panel.Label is { } label ? of(label) : Known.Not<T>(Missing.Label))], made);
}
