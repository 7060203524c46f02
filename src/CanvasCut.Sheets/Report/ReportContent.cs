using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>All that a report tells.</summary>
/// <param name="Patterns">The pieces and the mounting.</param>
/// <param name="Fit">Where the carrier goes and what else was looked at.</param>
/// <param name="Checks">The results of the checks.</param>
/// <param name="Plan">The cut plan.</param>
/// <param name="Order">What to buy.</param>
/// <param name="Cost">What it costs; null without a price file.</param>
public sealed record ReportContent(
    PatternSet Patterns, FitChoice Fit, ImmutableArray<CheckResult> Checks, CutPlan Plan, ImmutableArray<OrderLine> Order, OrderCost? Cost);
