using System.Collections.Immutable;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>All that follows from the shape of the top: bending, spans, closing.</summary>
internal static class ShapeChecks
{
    /// <summary>The results; where the shape is not known they name the fields that are missing.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        ImmutableArray<PanelShape> shapes = [.. patterns.EachPanel.Select(PanelShape.Of)];
        return shapes.SelectMany(OfPanel).Concat(ClosingChecks.Of(patterns, shapes));
    }

    /// <summary>What is asked of each panel over its own length.</summary>
    private static IEnumerable<CheckResult> OfPanel(PanelShape shape)
    {
        var (job, mounted, finding) = (shape.Patterns.Job, shape.Patterns.Mounted, shape.Patterns.Surface);
        return AthwartBend.Check(job, mounted, finding.Surface)
            .Concat(finding.IsKnown ? AlongBend.Check(job, mounted, (shape.Slack, shape.Measured)).Append(DoubleCurve.Check(job, mounted, finding.Surface, shape.Slack)) : Unknown(finding))
            .Concat(SpanChecks.Of(job, mounted))
            .Select(result => result with { Subject = PanelWords.Of(job, result.Subject) });
    }

    private static IEnumerable<CheckResult> Unknown(SurfaceFinding finding) =>
    [
        AlongBend.Unknown(CheckCodes.BendAlong, Say.Of("bend along the boat"), finding),
        AlongBend.Unknown(CheckCodes.BendDouble, Say.Of("panel on a top curved both ways"), finding),
    ];
}
