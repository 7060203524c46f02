using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>The least that unlike panels give together, from their labels alone.</summary>
/// <remarks>Rests only on this, that a panel's current falls as its voltage rises; no curve is needed.</remarks>
public static class UnlikePanels
{
    /// <summary>What a bypass diode takes: common practice, no source.</summary>
    private const double DiodeVolts = 0.5;

    /// <summary>At least so much in series; not known where a label does not tell its shade groups.</summary>
    public static Known<Power> InSeries(IReadOnlyList<PanelLabel> panels)
    {
        if (panels.Any(panel => panel.ShadeGroups is null))
        {
            return Known.Not<Power>(Missing.LabelFigure);
        }

        return Best(panels, panel => panel.PeakCurrent.Amperes, current =>
            panels.Where(panel => panel.PeakCurrent.Amperes >= current).Sum(panel => panel.PeakVoltage.Volts)
            - (DiodeVolts * panels.Where(panel => panel.ShortCurrent.Amperes < current).Sum(panel => panel.ShadeGroups!.Value)));
    }

    /// <summary>At least so much in parallel, each behind a diode that lets nothing back.</summary>
    public static Known<Power> InParallel(IReadOnlyList<PanelLabel> panels) => Best(panels, panel => panel.PeakVoltage.Volts, voltage =>
        panels.Where(panel => panel.PeakVoltage.Volts >= voltage).Sum(panel => panel.PeakCurrent.Amperes));

    /// <summary>At most so much in any way: each at its own best.</summary>
    public static Power Apart(IReadOnlyList<PanelLabel> panels) => Power.FromWatts(panels.Sum(panel => panel.PeakVoltage.Volts * panel.PeakCurrent.Amperes));

    private static Known<Power> Best(IReadOnlyList<PanelLabel> panels, Func<PanelLabel, double> common, Func<double, double> others) =>
        panels.Count == 0 ? throw new ArgumentException("There are no panels.", nameof(panels))
        : Known.Of(Power.FromWatts(panels.Max(panel => common(panel) * others(common(panel)))));
}
