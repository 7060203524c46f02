using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>All that follows from the shape of the top: bending, spans, closing.</summary>
internal static class ShapeChecks
{
    /// <summary>The results; where the shape is not known they name the fields that are missing.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var (job, mounted, finding) = (patterns.Job, patterns.Mounted, patterns.Surface);
        var profiles = patterns.Slack.Surface is { } slack ? PanelProfile.Of(job, mounted, slack) : [];
        var taut = finding.IsKnown ? PanelProfile.Of(job, mounted, finding.Surface) : [];
        return AthwartBend.Check(job, mounted, finding.Surface)
            .Concat(finding.IsKnown ? AlongBend.Check(job, mounted, (profiles, taut)).Append(DoubleCurve.Check(job, mounted, finding.Surface, profiles)) : Unknown(finding))
            .Concat(SpanChecks.Of(job, mounted))
            .Concat(ClosingChecks.Of(patterns, (profiles, taut)));
    }

    private static IEnumerable<CheckResult> Unknown(SurfaceFinding finding) =>
    [
        AlongBend.Unknown(CheckCodes.BendAlong, Say.Of("bend along the boat"), finding),
        AlongBend.Unknown(CheckCodes.BendDouble, Say.Of("panel on a top curved both ways"), finding),
    ];
}
