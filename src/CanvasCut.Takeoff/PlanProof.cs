using CanvasCut.Nesting;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What is certain of a cut plan.</summary>
public enum PlanVerdict
{
    /// <summary>No layout is shorter.</summary>
    Shortest,

    /// <summary>A shorter layout may exist, but none so short that the shop would cut a step less.</summary>
    OrderProven,

    /// <summary>A shorter layout, and a smaller order, may exist.</summary>
    Open,
}

/// <summary>How short a layout of the same pieces can be at most.</summary>
/// <param name="Bound">No layout on this roll is shorter; never more than the length used.</param>
/// <param name="Shown">What shows it.</param>
/// <param name="Verdict">What follows for the plan.</param>
public sealed record PlanProof(Length Bound, BoundKind Shown, PlanVerdict Verdict)
{
    /// <summary>Judges a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="step">The shop cuts in multiples of this.</param>
    /// <param name="spare">What is ordered beyond the layout, as a part of it.</param>
    public static PlanProof Of(NestingLayout layout, Length step, decimal spare)
    {
        var bounds = new LengthBounds(layout.Task);
        var best = bounds.Best(layout.LengthMm);
        var withSpare = 1 + (double)spare;
        var shorter = (CutPlan.RoundedUp(Length.FromMillimeters(layout.LengthMm * withSpare), step) - step) / withSpare;
        var verdict = layout.LengthMm - best.LengthMm <= LengthBounds.SameMm * 1.01 ? PlanVerdict.Shortest
            : shorter.Millimeters <= best.LengthMm || bounds.RulesOut(shorter.Millimeters) is not null ? PlanVerdict.OrderProven
            : PlanVerdict.Open;
        return new(Length.FromMillimeters(best.LengthMm), best.Kind, verdict);
    }
}
