using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A seam, and whose it is.</summary>
/// <param name="Carrier">The carrier it is sewn for.</param>
/// <param name="Seam">The seam.</param>
public sealed record MadeSeam(PatternSet Carrier, SewnSeam Seam)
{
    /// <summary>What it goes through may be of other grades for each carrier.</summary>
    public JobSupplies Supplies => Carrier.Job.Workshop.Supplies;

    /// <summary>Thread, needle and bobbin, without waste.</summary>
    public Length Thread => Seam.Thread(Supplies, Carrier.Job.Workshop.Sewing.StitchLength);
}

/// <summary>What is bought for all that is made together.</summary>
/// <param name="Made">What is made.</param>
/// <param name="Plan">The cut plan.</param>
/// <param name="Order">What to buy.</param>
/// <param name="Cost">What it costs; null without a price file.</param>
/// <param name="Seams">The seams of one set that thread and needles are counted from, in the order of sewing, one carrier after the other.</param>
public sealed record Purchase(MadeTogether Made, CutPlan Plan, ImmutableArray<OrderLine> Order, OrderCost? Cost, ImmutableArray<MadeSeam> Seams)
{
    /// <summary>Counts up what the pieces of one carrier and their cut plan need.</summary>
    public static Purchase Of(PatternSet patterns, CutPlan plan, WiringPlan? wiring = null) => Of(MadeTogether.Of(patterns), plan, wiring);

    /// <summary>Counts up what all that is made and its cut plan need.</summary>
    public static Purchase Of(MadeTogether made, CutPlan plan, WiringPlan? wiring = null)
    {
        ArgumentNullException.ThrowIfNull(made);
        var seams = SeamsOf(made);
        ImmutableArray<OrderLine> order = [.. OrderList.Of(made, plan, seams), .. WiringOrder.Of(wiring, made.Sets, made.Job.Units)];
        return new(made, plan, order, made.Job.Workshop.Buying.Prices is { } prices ? OrderCost.Of(order, prices) : null, seams);
    }

    /// <summary>Every seam of one set.</summary>
    public static ImmutableArray<MadeSeam> SeamsOf(MadeTogether made)
    {
        ArgumentNullException.ThrowIfNull(made);
        return [.. made.Carriers.SelectMany(carrier => JobSeams.Of(carrier).Select(seam => new MadeSeam(carrier, seam)))];
    }
}
