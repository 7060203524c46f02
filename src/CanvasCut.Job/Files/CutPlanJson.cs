using CanvasCut.Geometry;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The cut plan in results.json.</summary>
internal static class CutPlanJson
{
    public static object Of(CutPlan plan) => new
    {
        roll_width_mm = Mm(plan.Roll.Width),
        used_mm = Mm(plan.Used),
        order_mm = Mm(plan.Ordered),
        lower_bound_mm = Mm(plan.LowerBound),
        lower_bound_by = PlanWords.Of(plan.Proof.Shown),
        verdict = PlanWords.Of(plan.Proof.Verdict),
        use = Math.Round(plan.Use, JsonText.Digits),
        placed = plan.Placed.Select(Placed),
        straight_cuts = plan.StraightCuts.Select(cut => new { after = cut.After, from_cut_end_mm = Mm(cut.At) }),
        leftovers = plan.Leftovers.Select(leftover => new
        {
            name = leftover.Name,
            from_cut_end_mm = Mm(leftover.Place.Left),
            from_selvage_mm = Mm(leftover.Place.Bottom),
            along_roll_mm = Mm(leftover.Place.WidthMm),
            across_roll_mm = Mm(leftover.Place.HeightMm),
        }),
    };

    private static object Placed(PlacedPiece placed) => new
    {
        number = placed.Number,
        piece = placed.Piece.Key.Id,
        copy = placed.Copy,
        from_cut_end_mm = Mm(placed.Outline.Bounds.Left),
        from_selvage_mm = Mm(placed.Outline.Bounds.Bottom),
        turned_degrees = placed.Quarters * 90,
        cut_mm = Points(placed.Outline),
    };

    private static double[][] Points(Outline outline) => [.. outline.Corners.Select(point => new[] { Mm(point.X), Mm(point.Y) })];

    private static double Mm(Length length) => Mm(length.Millimeters);

    private static double Mm(double millimetres) => JsonText.Mm(millimetres);
}
