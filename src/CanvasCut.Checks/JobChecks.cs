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
        "unsupported spans and sag",
        "flutter of cloth in the wind, and the strength of frame and top",
        "whether the zippers still close after the cloth has shrunk",
        "cables and everything electric",
    ];

    /// <summary>The results, in the order of <see cref="CheckCodes.All"/>.</summary>
    public static ImmutableArray<CheckResult> Of(PatternSet patterns) =>
    [
        .. FitChecks.Of(patterns.Job, patterns.Mounted)
            .Concat(AthwartBend.Check(patterns.Job, patterns.Mounted))
            .Concat(PocketChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(SupplyChecks.Of(patterns))
            .Concat(PlotChecks.Of(patterns))
            .Concat(WindChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(BondingChecks.Of(patterns.Job))
            .Concat(HeatChecks.Of(patterns.Job))
            .Concat(SlopeChecks.Of(patterns.Job, patterns.Mounted))
            .Append(TopStateCheck.Of(patterns.Job.Conditions.TopState))
            .OrderBy(result => CheckCodes.All.IndexOf(result.Code)),
    ];
}
