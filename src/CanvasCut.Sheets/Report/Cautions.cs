using System.Collections.Immutable;

namespace CanvasCut.Sheets;

/// <summary>What can hurt someone or spoil the panel; printed with every report.</summary>
public static class Cautions
{
    /// <summary>The cautions.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "The panel maker's sheet goes before anything printed here: bend radius, mounting, wind, bonding. Stitch no panel unless its maker allows it.",
        "Take the panel off before strong wind. Loads in wind are not worked out by this version; many makers exclude use above 45 mph (39 kn).",
        "A panel in light is live. Cover it before working on the cable; follow local codes and ask a licensed electrician where they require one.",
        "Work on a top is work at height on a moving boat: have a second person and do not lean on the cloth or the tubes.",
        "A hot knife burns and its smoke is unhealthy: work in moving air. Adhesives and solvents: follow the maker's safety sheet.",
        "Nothing here claims that frame, cloth or fastening is strong enough, nor fire rating, nor use on the road.",
    ];
}
