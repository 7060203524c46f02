using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Every check on a job.</summary>
public static class JobChecks
{
    /// <summary>What this version does not look at, for the report to say so.</summary>
    public static ImmutableArray<string> NotInThisVersion { get; } =
    [
        "bending over the ridge of a bow, fore and aft, and bending in two directions at once",
        "unsupported spans, sag, slope and water that stands",
        "wind: the load on zippers, seams and pockets, and when to take the panel off",
        "bonding weather: surface temperature, dew point, curing time",
        "whether the zippers still close after the cloth has shrunk",
        "heat, cables and everything electric",
        "whether the top is sound enough to be sewn to",
    ];

    /// <summary>The results, in the order of <see cref="CheckCodes.All"/>.</summary>
    public static ImmutableArray<CheckResult> Of(PatternSet patterns) =>
    [
        .. FitChecks.Of(patterns.Job, patterns.Mounted)
            .Concat(AthwartBend.Check(patterns.Job, patterns.Mounted))
            .Concat(PocketChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(SupplyChecks.Of(patterns))
            .Concat(SeamChecks.Of(patterns))
            .Concat(PlotChecks.Of(patterns))
            .OrderBy(result => CheckCodes.All.IndexOf(result.Code)),
    ];
}
