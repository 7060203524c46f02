using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>What is bought for a job.</summary>
/// <param name="Plan">The cut plan.</param>
/// <param name="Order">What to buy.</param>
/// <param name="Cost">What it costs; null without a price file.</param>
/// <param name="Seams">The seams that thread and needles are counted from, in the order of sewing.</param>
public sealed record Purchase(CutPlan Plan, ImmutableArray<OrderLine> Order, OrderCost? Cost, ImmutableArray<SewnSeam> Seams)
{
    /// <summary>Counts up what the pieces and their cut plan need.</summary>
    public static Purchase Of(PatternSet patterns, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(patterns);
        var seams = JobSeams.Of(patterns);
        var order = OrderList.Of(patterns, plan, seams);
        return new(plan, order, patterns.Job.Workshop.Buying.Prices is { } prices ? OrderCost.Of(order, prices) : null, seams);
    }
}
