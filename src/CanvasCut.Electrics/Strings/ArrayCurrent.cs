using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>The currents of strings in parallel, and what a controller makes of them.</summary>
public static class ArrayCurrent
{
    private const double CloudEdge = 1.25;
    private const double AllDay = 1.25;

    /// <summary>Strings that a fuse each is never needed for: one alone can only feed back into the other what it has.</summary>
    private const int FewStrings = 2;

    /// <summary>What may flow, brighter than the test's sun: NEC 690.8(A).</summary>
    public static ElectricCurrent Design(ElectricCurrent sumOfShortCurrents) => CloudEdge * sumOfShortCurrents;

    /// <summary>What wires and devices must carry all day: NEC 690.8(B).</summary>
    public static ElectricCurrent ForWires(ElectricCurrent sumOfShortCurrents) => AllDay * Design(sumOfShortCurrents);

    /// <summary>What a tracker gives the bank at most; what is beyond its rating is clipped.</summary>
    public static ElectricCurrent TrackerOutput(Power panels, Ratio efficiency, ElectricPotential bank, ElectricCurrent rated)
    {
        var given = ElectricCurrent.FromAmperes(efficiency.DecimalFractions * (double)panels.Watts / bank.Volts);
        return given < rated ? given : rated;
    }

    /// <summary>What a switch takes from panels that it holds at the bank's voltage.</summary>
    public static Power PulseWidthOutput(ElectricCurrent panels, ElectricPotential bank) => Power.FromWatts(panels.Amperes * bank.Volts);

    /// <summary>What all other strings push through one that has failed: after NEC 690.9(A).</summary>
    public static ElectricCurrent Reverse(PanelLabel label, int strings)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(strings, 1);
        return (strings - 1) * Design(label.ShortCurrent);
    }

    /// <summary>
    /// Whether strings need no fuse of their own: it holds when what comes back is within the label's largest series fuse, and fails when each
    /// needs one.
    /// </summary>
    public static Judgement WithoutStringFuses(PanelLabel label, int strings)
    {
        var reverse = Reverse(label, strings);
        return strings <= FewStrings ? new(Finding.Holds, reverse, label.LargestSeriesFuse)
            : label.LargestSeriesFuse is not { } fuse ? Judgement.NotChecked(Missing.SeriesFuse, reverse)
            : new(reverse <= fuse ? Finding.Holds : Finding.Fails, reverse, fuse);
    }
}
