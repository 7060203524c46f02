using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Electrics;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Sheets;

/// <summary>What a report tells of one carrier by itself.</summary>
/// <param name="Patterns">The pieces and the mounting.</param>
/// <param name="Fit">Where the carrier goes and what else was looked at.</param>
/// <param name="Checks">The results of the checks.</param>
public sealed record CarrierContent(PatternSet Patterns, FitChoice Fit, ImmutableArray<CheckResult> Checks)
{
    /// <summary>How the panel is wired; null when the job does not tell, and where it is wired with others.</summary>
    public WiringPlan? Wiring { get; init; }
}
