using System.Collections.Immutable;
using CanvasCut.Electrics;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Checks;

/// <summary>Every check on a job.</summary>
public static class JobChecks
{
    /// <summary>What this version does not look at, for the report to say so.</summary>
    public static ImmutableArray<string> NotInThisVersion =>
    [
        Say.Of("flutter of cloth in the wind, and the strength of frame and top"),
        Say.Of("cables and everything electric"),
    ];

    /// <summary>The same for a job whose wiring is told: that is looked at.</summary>
    public static ImmutableArray<string> NotInThisVersionFor(WiringPlan? wiring) => wiring is null ? NotInThisVersion : [NotInThisVersion[0], .. NotOfTheWiring];

    /// <summary>What is not looked at of a wiring.</summary>
    public static ImmutableArray<string> NotOfTheWiring =>
    [
        Say.Of("lightning, shore power, stray currents, and everything beyond the bank"),
    ];

    /// <summary>The results that concern several mountings of a top together; none where it carries one.</summary>
    public static ImmutableArray<CheckResult> Of(PlacedTop placed) => [.. FitChecks.Between(placed).Concat(BetweenChecks.Of(placed)).OrderBy(result => CheckCodes.All.IndexOf(result.Code))];

    /// <summary>The results, in the order of <see cref="CheckCodes.All"/>.</summary>
    public static ImmutableArray<CheckResult> Of(PatternSet patterns) =>
    [
        .. FitChecks.Of(patterns)
            .Concat(RowChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(SideChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(BoomChecks.Of(patterns))
            .Concat(ShapeChecks.Of(patterns))
            .Concat(SupportChecks.Of(patterns))
            .Concat(PocketChecks.Of(patterns))
            .Concat(StripSeamChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(StripHoldChecks.Of(patterns))
            .Concat(StripWaterChecks.Of(patterns))
            .Concat(RoomChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(MountChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(SleeveChecks.Of(patterns))
            .Concat(ZipperStartChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(SupplyChecks.Of(patterns))
            .Concat(SeamChecks.Of(patterns))
            .Concat(PlotChecks.Of(patterns))
            .Concat(WindChecks.Of(patterns.Job, patterns.Mounted))
            .Concat(CableChecks.Of(patterns))
            .Concat(patterns.OfEach(BondStripChecks.Of))
            .Concat(BondingChecks.Of(patterns))
            .Concat(HeatChecks.Of(patterns.Job))
            .Concat(SlopeChecks.Of(patterns))
            .Append(TopStateCheck.Of(patterns.Job.Conditions.TopState))
            .Select(result => UsualSubjects.Of(result, patterns.Job))
            .OrderBy(result => CheckCodes.All.IndexOf(result.Code)),
    ];
}
