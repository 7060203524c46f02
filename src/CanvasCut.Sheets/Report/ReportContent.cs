using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Electrics;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>All that a report tells.</summary>
/// <param name="Patterns">The pieces and the mounting.</param>
/// <param name="Fit">Where the carrier goes and what else was looked at.</param>
/// <param name="Checks">The results of the checks.</param>
/// <param name="Purchase">Cut plan, order and cost.</param>
/// <param name="Work">In which order to work.</param>
public sealed record ReportContent(PatternSet Patterns, FitChoice Fit, ImmutableArray<CheckResult> Checks, Purchase Purchase, WorkSchedule Work)
{
    /// <summary>What concerns the carrier alone.</summary>
    public CarrierContent Carrier => new(Patterns, Fit, Checks) { Wiring = Wiring };

    /// <summary>The cut plan.</summary>
    public CutPlan Plan => Purchase.Plan;

    /// <summary>Every seam, in the order of sewing.</summary>
    public ImmutableArray<MadeSeam> Seams => Purchase.Seams;

    /// <summary>How the panel is wired; null when the job does not tell.</summary>
    public WiringPlan? Wiring { get; init; }
}
