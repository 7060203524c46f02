using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Nesting;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>Says in a sentence how sure it is that no less cloth would do.</summary>
public static class ProofText
{
    /// <summary>The sentence, beginning with the length used.</summary>
    public static string Of(CutPlan plan, PrintUnits units)
    {
        string Text(Length length) => LengthText.Of(length, units);
        var used = Say.Of($"{Text(plan.Used)} used");
        return plan.Proof.Verdict switch
        {
            PlanVerdict.Shortest => Say.Of($"{used}, and no layout can do with less: {Why(plan.Proof.Shown)}."),
            PlanVerdict.OrderProven => Say.Of($"{used}; no layout fits the shop's next shorter length, {Text(plan.Ordered - plan.Roll.OrderStep)}."),
            _ => Say.Of($"{used}; no layout can be shorter than {Text(plan.Proof.Bound)}: {Why(plan.Proof.Shown)}."),
        };
    }

    private static string Why(BoundKind kind) => kind switch
    {
        BoundKind.Area => Say.Of("so much is the pieces' area"),
        BoundKind.LongestPiece => Say.Of("so long is the longest piece"),
        BoundKind.ChordsAlong => Say.Of("the wide pieces cannot lie side by side"),
        BoundKind.ChordsAcross => Say.Of("the long pieces cannot lie one behind the other"),
        BoundKind.Tried => Say.Of("every way to lay the pieces was tried"),
        _ => Say.Of("the wide pieces cannot pass each other"),
    };
}
