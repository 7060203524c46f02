using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>What can hurt someone or spoil the panel; printed with every report.</summary>
public static class Cautions
{
    /// <summary>The cautions, with the wind at which this panel comes off.</summary>
    public static ImmutableArray<string> For(PatternSet patterns) =>
    [
        Say.Of("The panel maker's sheet goes before anything printed here: bend radius, mounting, wind, bonding. Stitch no panel unless its maker allows it."),
        Say.Of($"{OffAt(patterns)} {WindOf(patterns.Job)} The figures are for new parts in steady gusts; flutter is not reckoned."),
        Say.Of("Cells on hot cloth can pass 80 °C: do not touch the panel in the sun, and keep nothing that burns against its back."),
        Say.Of("A panel in light is live. Cover it before working on the cable; follow local codes and ask a licensed electrician where they require one."),
        Say.Of("Work on a top is work at height on a moving boat: have a second person and do not lean on the cloth or the tubes."),
        Say.Of("A hot knife burns and its smoke is unhealthy: work in moving air. Adhesives and solvents: follow the maker's safety sheet."),
        Say.Of("Nothing here claims that frame, cloth or fastening is strong enough, nor fire rating, nor use on the road."),
    ];

    private static string OffAt(PatternSet patterns) => HoldDown.Of(patterns.Job, patterns.Mounted) is { KnowsPull: true } hold
        ? Say.Of($"Take the panel off before gusts of {LimitWords.Knots(hold.OffAt)} kn.")
        : Say.Of("At which wind the panel must be off is not worked out, for how far the cloth stretches is not known.");

    private static string WindOf(CarrierJob job) => job.PanelsMaxWind is { } wind
        ? Say.Of($"This panel's maker wants it off at {LimitWords.Most(wind)}.")
        : Say.Of("One maker's manual excludes use above 45 mph (39 kn), so ask yours.");
}
