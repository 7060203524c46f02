using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Every check on a job.</summary>
public static class JobChecks
{
    /// <summary>What this version does not look at, for the report to say so.</summary>
    public static ImmutableArray<string> NotInThisVersion { get; } =
    [
        "slope and water that stands",
        "wind: the load on zippers, seams and pockets, and when to take the panel off",
        "bonding weather: surface temperature, dew point, curing time",
        "heat, cables and everything electric",
        "whether the top is sound enough to be sewn to",
    ];

    /// <summary>The results, in the order of <see cref="CheckCodes.All"/>.</summary>
    public static ImmutableArray<CheckResult> Of(PatternSet patterns) =>
    [
        .. FitChecks.Of(patterns.Job, patterns.Mounted)
            .Concat(ShapeChecks.Of(patterns))
            .Concat(SupportChecks.Of(patterns))
            .Concat(PocketChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(SupplyChecks.Of(patterns))
            .Concat(PlotChecks.Of(patterns))
            .OrderBy(result => CheckCodes.All.IndexOf(result.Code)),
    ];
}
