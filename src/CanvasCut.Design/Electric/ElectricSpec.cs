using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How the panels of a top are wired to a bank; what is not known is null, and what depends on it is not checked.</summary>
/// <param name="ColdestAir">In which the panels are mounted and lit, lay-up included.</param>
/// <param name="Bank">The bank.</param>
/// <param name="Controllers">At least one.</param>
/// <param name="Strings">Which panels are in series, and on which controller; those on one controller are in parallel.</param>
/// <param name="Wires">What wire is laid, and where.</param>
/// <param name="Around">What else the wires meet.</param>
public sealed record ElectricSpec(
    Temperature? ColdestAir,
    BankSpec? Bank,
    ImmutableArray<ControllerSpec> Controllers,
    ImmutableArray<StringSpec> Strings,
    WireSpec Wires,
    WiringAround Around)
{
    /// <summary>The sun where the boat lies; null when not told.</summary>
    public SunSpec? Sun { get; init; }

    /// <summary>What uses energy every day; none when not told.</summary>
    public ImmutableArray<DailyLoad> Loads { get; init; } = [];
}

/// <summary>Panels in series.</summary>
/// <param name="Controller">The name of the controller it leads to.</param>
/// <param name="Panels">The panels, from minus to plus.</param>
public sealed record StringSpec(string Controller, ImmutableArray<MountingName> Panels);

/// <summary>How wires are sized where one buys them.</summary>
public enum WireFamily
{
    /// <summary>American wire gauge, ASTM B258.</summary>
    Awg,

    /// <summary>SAE sizes of the same names, which have less copper.</summary>
    Sae,

    /// <summary>Square millimetres, tinned, class 5 of IEC 60228.</summary>
    MetricTinned,

    /// <summary>Square millimetres, plain copper, class 5 of IEC 60228.</summary>
    MetricPlain,
}

/// <summary>How hot a wire's insulation may become.</summary>
public enum Insulation
{
    /// <summary>60 C.</summary>
    C60,

    /// <summary>75 C.</summary>
    C75,

    /// <summary>80 C.</summary>
    C80,

    /// <summary>90 C.</summary>
    C90,

    /// <summary>105 C, the usual tinned boat cable.</summary>
    C105,
}

/// <summary>What wire is laid, and where.</summary>
/// <param name="Family">Whose sizes; null when not known, and then no size is chosen.</param>
/// <param name="Insulation">What it is covered with.</param>
/// <param name="IsSheathed">Whether both wires share a sheath.</param>
/// <param name="InBundle">How many wires that carry current lie together, the pair included.</param>
/// <param name="Panel">On the panels' side.</param>
/// <param name="Bank">On the bank's side.</param>
public sealed record WireSpec(WireFamily? Family, Insulation Insulation, bool IsSheathed, int InBundle, WireSide Panel, WireSide Bank);

/// <summary>The wires on one side of the controllers.</summary>
/// <param name="Air">The hottest place they pass.</param>
/// <param name="Copper">How warm the copper is in use.</param>
/// <param name="Drop">What part of the voltage may be lost.</param>
public sealed record WireSide(Temperature Air, Temperature Copper, Ratio Drop);

/// <summary>Whose sizes of fuses and breakers are on sale.</summary>
public enum RatingSeries
{
    /// <summary>NEC 240.6.</summary>
    Nec,

    /// <summary>The sizes of IEC fuses, seen second-hand.</summary>
    Iec,

    /// <summary>Blade fuses of vehicles, from memory.</summary>
    Blade,
}

/// <summary>The halves of the connectors that are mated.</summary>
public enum ConnectorState
{
    /// <summary>Of one maker's family.</summary>
    OneFamily,

    /// <summary>Of different makers.</summary>
    Mixed,
}

/// <summary>What else the wires meet.</summary>
/// <param name="Fuses">Whose sizes of fuses are bought.</param>
/// <param name="Connectors">How connectors are mated; null when not known.</param>
/// <param name="Compass">From the nearest wire of this to a compass; null when not known.</param>
/// <param name="IsTwisted">Whether plus and minus are twisted about each other there.</param>
public sealed record WiringAround(RatingSeries Fuses, ConnectorState? Connectors, Length? Compass, bool IsTwisted);
