using System.Collections.Immutable;
using CanvasCut.Language;

namespace CanvasCut.Takeoff;

/// <summary>What a needle or a hand must be able to reach, and what may bar the way to it.</summary>
public static class WorkAccess
{
    /// <summary>The carrier flat under the machine's foot; closed for good by a bonded panel, which neither bends under the arm nor bears a needle.</summary>
    public static WorkReach CarrierUnderNeedle => new(ReachKind.CarrierUnderNeedle, null, () => Say.Of("the carrier under the needle"));

    /// <summary>The cut ends of the zippers' tapes; closed when the halves are sewn down.</summary>
    public static WorkReach TapeEnds => new(ReachKind.TapeEnds, null, () => Say.Of("the ends of the zipper tapes"));

    /// <summary>The top stretched on its frame; closed while the top is off.</summary>
    public static WorkReach TopStretched => new(ReachKind.TopStretched, null, () => Say.Of("the top stretched on its frame"));

    /// <summary>The top flat under the machine's foot; open only while it is off its frame.</summary>
    public static WorkReach TopUnderNeedle => new(ReachKind.TopUnderNeedle, null, () => Say.Of("the top under the needle"));

    /// <summary>The carrier lying where it will lie.</summary>
    public static WorkReach CarrierInPlace => new(ReachKind.CarrierInPlace, null, () => Say.Of("the carrier in its place on the top"));

    /// <summary>What can be reached before any work is done, besides the cloth under each part of the top.</summary>
    public static ImmutableArray<WorkReach> OpenAtFirst => [CarrierUnderNeedle, TapeEnds, TopStretched];

    /// <summary>The cloth of the top under a part that will be sewn over it; closed when that part is sewn.</summary>
    internal static WorkReach Under(TopPart part) => new(ReachKind.Under, part.Thing, () => Say.Of($"the top under the {part.Name}"));
}
