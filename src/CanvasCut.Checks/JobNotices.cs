using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>What must be read before anything else: it stands over the verdicts of the report and of <c>check</c>.</summary>
public static class JobNotices
{
    /// <summary>The notices of a job; usually none.</summary>
    public static ImmutableArray<string> Of(CarrierJob job) => job.Panels.Any(each => each.Panel.Limits.SmallestRadius is null)
        ? [Say.Of($"BEND LIMIT NOT KNOWN: {LengthText.Of(PanelLimits.AssumedRadius, job.Units)} was assumed. Ask the panel's maker for its smallest radius before cutting.")]
        : [];

    /// <summary>The notices of a job and of what is made for it.</summary>
    public static ImmutableArray<string> Of(PatternSet patterns) => patterns.IsRefit
        ? [.. Of(patterns.Job), Say.Of("THE TOP'S HALF IS SEWN: only the carrier is made. Zippers are bought only if the halves on the old carrier are not used again; new ones must mate with those on the top.")]
        : Of(patterns.Job);
}
