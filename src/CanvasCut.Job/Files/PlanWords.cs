using CanvasCut.Nesting;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The words of a cut plan's proof in results.json; docs/results.md lists them.</summary>
internal static class PlanWords
{
    public static string Of(PlanVerdict verdict) => verdict switch
    {
        PlanVerdict.Shortest => "shortest",
        PlanVerdict.OrderProven => "order-proven",
        _ => "open",
    };

    public static string Of(BoundKind kind) => kind switch
    {
        BoundKind.Area => "area",
        BoundKind.LongestPiece => "longest-piece",
        BoundKind.ChordsAlong => "widths-along",
        BoundKind.ChordsAcross => "lengths-across",
        BoundKind.Tried => "all-tried",
        _ => "row",
    };
}
