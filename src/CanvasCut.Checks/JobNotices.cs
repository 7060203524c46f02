using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.Checks;

/// <summary>What must be read before anything else: it stands over the verdicts of the report and of <c>check</c>.</summary>
public static class JobNotices
{
    /// <summary>The notices of a job; usually none.</summary>
    public static ImmutableArray<string> Of(CarrierJob job) => job.Panel.Limits.SmallestRadius is null
        ? [$"BEND LIMIT NOT KNOWN: {LengthText.Of(BendLimit.AssumedRadius, job.Units)} was assumed. Ask the panel's maker for its smallest radius before cutting."]
        : [];
}
