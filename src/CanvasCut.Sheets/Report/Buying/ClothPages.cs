using CanvasCut.Language;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>What the report tells of the cloth.</summary>
internal static class ClothPages
{
    /// <summary>The picture of the cut plan, what it says in words, and its lists.</summary>
    public static void CutPlan(Flow flow, CutPlan plan, SheetContext context)
    {
        var picture = CutPlanSheet.Picture(plan, context, flow.WidthMm);
        flow.Heading(Say.Of("Cut plan"), picture);
        flow.Picture(picture);
        foreach (var sentence in CutPlanLists.Sentences(plan, context))
        {
            flow.Text(sentence);
        }

        flow.Text(string.Empty);
        flow.Rows(CutPlanLists.PieceTable(context, flow.WidthMm), CutPlanLists.Pieces(plan, context));
        if (CutPlanLists.Leftovers(plan, context).ToList() is { Count: > 0 } leftovers)
        {
            flow.Text(string.Empty);
            flow.Rows(CutPlanLists.LeftoverTable(flow.WidthMm), leftovers);
        }

        flow.Text(string.Empty);
        flow.Text(Say.Of("Another roll, other turns, a seam in the carrier: the command \"cloth\" lays the pieces on every roll on sale and tells what each way costs and gives up."));
    }
}
