using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A run of two wires.</summary>
/// <param name="OneWay">How long it is, one way.</param>
/// <param name="Carries">What the wires must be able to carry all day, for their heat.</param>
/// <param name="Usual">The current at which the drop is reckoned.</param>
/// <param name="AllowedDrop">What may be lost, out and back.</param>
/// <param name="Copper">How warm the copper is in use.</param>
public sealed record WireRun(Length OneWay, ElectricCurrent Carries, ElectricCurrent Usual, ElectricPotential AllowedDrop, Temperature Copper);

/// <summary>The size of wire for a run.</summary>
/// <param name="ByAmpacity">The thinnest that stays cool enough; null when none does.</param>
/// <param name="ByDrop">The thinnest that loses little enough; null when none does.</param>
/// <param name="Chosen">The thickest of these and of what may be used at all; null when one of them is null.</param>
/// <param name="NextThicker">The size above it, for a longer way or more panels later; null behind the thickest.</param>
public sealed record WireChoice(WireSize? ByAmpacity, WireSize? ByDrop, WireSize? Chosen, WireSize? NextThicker)
{
    /// <summary>The size for a run in one family.</summary>
    /// <param name="run">The run.</param>
    /// <param name="family">The family.</param>
    /// <param name="place">Where it lies.</param>
    /// <param name="isSheathed">Whether the wires share a sheath, in which they may be thinner.</param>
    public static WireChoice Of(WireRun run, WireFamily family, WirePlace place, bool isSheathed)
    {
        var (cool, drop) = (Ampacity.Thinnest(family, run.Carries, place), VoltageDrop.Thinnest(family, run.Usual, run.OneWay, (run.AllowedDrop, run.Copper)));
        var chosen = cool is null || drop is null ? null : new[] { cool, drop, Smallest(family, isSheathed) }.MaxBy(size => size.Area.SquareMillimeters);
        return new(cool, drop, chosen, chosen?.NextThicker);
    }

    /// <summary>33 CFR 183.425: gauge 16, in a sheath 18. ISO 10133: 1 mm², in a sheath 0.75 mm².</summary>
    public static WireSize Smallest(WireFamily family, bool isSheathed) => family is WireFamily.Awg or WireFamily.Sae
        ? WireSize.Of(family, isSheathed ? "18" : "16")
        : WireSize.Of(family, isSheathed ? "0.75" : "1");
}
