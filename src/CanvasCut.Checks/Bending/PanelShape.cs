using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>A panel as it lies on the cloth: as slack as it may be, and as it was measured.</summary>
/// <param name="Patterns">The carrier as if this panel lay on it alone.</param>
/// <param name="Slack">The panel seen from the side on slack cloth; none where the shape is not known.</param>
/// <param name="Measured">The same on the cloth as it was measured.</param>
internal sealed record PanelShape(PatternSet Patterns, ImmutableArray<PanelProfile> Slack, ImmutableArray<PanelProfile> Measured)
{
    /// <summary>The shape of the panel of a carrier.</summary>
    public static PanelShape Of(PatternSet patterns)
    {
        var (job, mounted) = (patterns.Job, patterns.Mounted);
        return new(
            patterns,
            patterns.Slack.Surface is { } slack ? PanelProfile.Of(job, mounted, slack) : [],
            patterns.Surface.Surface is { } measured ? PanelProfile.Of(job, mounted, measured) : []);
    }
}
