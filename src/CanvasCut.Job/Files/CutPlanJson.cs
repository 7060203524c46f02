using CanvasCut.Geometry;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The cut plan in results.json.</summary>
internal static class CutPlanJson
{
    public static CutPlanPart Of(CutPlan plan) => new(
        Mm(plan.Roll.Width),
        Mm(plan.Used),
        Mm(plan.Ordered),
        Mm(plan.LowerBound),
        PlanWords.Of(plan.Proof.Shown),
        plan.Proof.Verdict,
        Math.Round(plan.Use, JsonText.Digits),
        [.. plan.Placed.Select(Placed)],
        [.. plan.StraightCuts.Select(cut => new StraightCutPart(cut.After, Mm(cut.At)))],
        [.. plan.Leftovers.Select(leftover => Leftover(leftover.Name, leftover.Place))]);

    private static LeftoverPart Leftover(string name, Box place) =>
        new(name, JsonText.Mm(place.Left), JsonText.Mm(place.Bottom), JsonText.Mm(place.WidthMm), JsonText.Mm(place.HeightMm));

    private static PlacedPart Placed(PlacedPiece placed) => new(
        placed.Number,
        placed.Piece.Key.Id,
        placed.Copy,
        JsonText.Mm(placed.Outline.Bounds.Left),
        JsonText.Mm(placed.Outline.Bounds.Bottom),
        placed.Quarters * 90,
        ResultsJson.Points(placed.Outline.Corners));

    private static double Mm(Length length) => JsonText.Mm(length.Millimeters);
}
