using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.Sheets;

/// <summary>What can hurt someone or spoil the panel; printed with every report.</summary>
public static class Cautions
{
    /// <summary>The cautions, with the wind that the panel's maker allows when it is known.</summary>
    public static ImmutableArray<string> For(SolarPanel panel) =>
    [
        "The panel maker's sheet goes before anything printed here: bend radius, mounting, wind, bonding. Stitch no panel unless its maker allows it.",
        $"Take the panel off before strong wind. Loads in wind are not worked out by this version; {WindOf(panel)}.",
        "A panel in light is live. Cover it before working on the cable; follow local codes and ask a licensed electrician where they require one.",
        "Work on a top is work at height on a moving boat: have a second person and do not lean on the cloth or the tubes.",
        "A hot knife burns and its smoke is unhealthy: work in moving air. Adhesives and solvents: follow the maker's safety sheet.",
        "Nothing here claims that frame, cloth or fastening is strong enough, nor fire rating, nor use on the road.",
    ];

    private static string WindOf(SolarPanel panel) => panel.Limits.MaxWind is { } wind
        ? FormattableString.Invariant($"this panel's maker wants it off at {wind.Knots:0.#} kn ({wind.MetersPerSecond:0.#} m/s)")
        : "one maker's manual excludes use above 45 mph (39 kn), so ask yours";
}
