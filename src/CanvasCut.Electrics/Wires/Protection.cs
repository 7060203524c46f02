using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A place for a fuse or breaker: what it must carry, and what it must not exceed.</summary>
/// <param name="Least">What it must carry without opening.</param>
/// <param name="Most">What it guards stands no more; null when that is not known.</param>
/// <param name="Unknown">What was missing when it is not known.</param>
public sealed record ProtectedPlace(ElectricCurrent Least, ElectricCurrent? Most, Missing Unknown)
{
    /// <summary>A controller's rated output, so many times: common practice, no source.</summary>
    internal const double AboveOutput = 1.25;

    /// <summary>One string, where <see cref="ArrayCurrent.WithoutStringFuses"/> asks for fuses: NEC 690.9.</summary>
    public static ProtectedPlace OfString(PanelLabel label) => new(ArrayCurrent.ForWires(label.ShortCurrent), label.LargestSeriesFuse, Missing.SeriesFuse);

    /// <summary>All strings, at the controller, where the bank could feed back: NEC 690.9.</summary>
    public static ProtectedPlace OfPanels(ElectricCurrent sumOfShortCurrents, Known<ElectricCurrent> ampacity) =>
        new(ArrayCurrent.ForWires(sumOfShortCurrents), ampacity.Value, ampacity.Because);

    /// <summary>The bank, within 178 mm of it: 33 CFR 183.455 for the place.</summary>
    public static ProtectedPlace OfBank(ElectricCurrent ratedOutput, Known<ElectricCurrent> ampacity) => new(AboveOutput * ratedOutput, ampacity.Value, ampacity.Because);
}

/// <summary>The fuses and breakers of a system.</summary>
public static class Protection
{
    private static readonly double[] Nec = [1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200];
    /// <summary>From memory; ISO 8820-3 has them for 32 and 58 V.</summary>
    private static readonly double[] Blade = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40];

    private static readonly double[] Iec = [2, 4, 6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100];

    /// <summary>The next size on sale that is at least so much; null above the largest.</summary>
    public static ElectricCurrent? Next(ElectricCurrent least, RatingSeries series)
    {
        var sizes = series switch
        {
            RatingSeries.Nec => Nec,
            RatingSeries.Iec => Iec,
            _ => Blade,
        };
        var index = Array.FindIndex(sizes, size => size >= least.Amperes);
        return index < 0 ? null : ElectricCurrent.FromAmperes(sizes[index]);
    }

    /// <summary>The rating for a place. It fails where no size on sale lies between: then a thicker wire, never a larger fuse.</summary>
    public static Judgement Rating(ProtectedPlace place, RatingSeries series)
    {
        var next = Next(place.Least, series);
        return place.Most is not { } most ? Judgement.NotChecked(place.Unknown, next)
            : new(next is { } size && size <= most ? Finding.Holds : Finding.Fails, next, most);
    }

    /// <summary>The cold voltage against that up to which a device breaks direct current.</summary>
    public static Judgement Voltage(Known<ElectricPotential> cold, ElectricPotential? breaks) =>
        cold.Value is not { } value ? Judgement.NotChecked(cold.Because)
        : breaks is not { } limit ? Judgement.NotChecked(Missing.DeviceVoltage, value)
        : new(value <= limit ? Finding.Holds : Finding.Fails, value, limit);

    /// <summary>What the device at a lead bank, and one on a branch, must be able to interrupt: ABYC E-11, table V.A, seen second-hand.</summary>
    /// <param name="coldCranking">The cold-cranking amperes of all batteries together.</param>
    public static (ElectricCurrent Main, ElectricCurrent Branch) Interrupts(ElectricCurrent coldCranking)
    {
        var (main, branch) = coldCranking.Amperes switch
        {
            <= 650 => (1500, 750),
            <= 1100 => (3000, 1500),
            _ => (5000, 2500),
        };
        return (ElectricCurrent.FromAmperes(main), ElectricCurrent.FromAmperes(branch));
    }
}
