using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The cut plan: the pieces on the roll, with the list of where each lies.</summary>
public static class CutPlanSheet
{
    private const double WidthMm = 297;
    private const double MarginMm = 12;
    private const double TitleMm = 5;
    private const double RoomLeftMm = 14;
    private const double RoomAboveMm = 12;

    /// <summary>Draws the cut plan.</summary>
    public static Sheet Of(CutPlan plan, SheetContext context)
    {
        var roll = new Box(0, 0, plan.Ordered.Millimeters, plan.Roll.Width.Millimeters);
        var frame = new Box(MarginMm + RoomLeftMm, 0, WidthMm - MarginMm, 150);
        var view = View.Fitting(roll, frame);
        var picture = Roll(plan, context, view, view.Of(roll)).ToImmutableArray();
        var list = List(plan, context).At(new(MarginMm, view.Of(roll).Bottom - 16), Rows(plan, context));
        var bottom = view.Of(roll).Bottom - 16 - list.HeightMm - MarginMm;
        var top = view.Of(roll).Top + RoomAboveMm + 18 + MarginMm;
        var figures = picture.AddRange(list.Figures).AddRange(Head(plan, context, view, top));
        return new("cut-plan", $"Cut plan, {context.JobName}", WidthMm, top - bottom, Figures.Moved(figures, new(0, -bottom)));
    }

    private static IEnumerable<Figure> Head(CutPlan plan, SheetContext context, View view, double top)
    {
        var lower = plan.LowerBound;
        yield return new Lettering($"Cut plan: {context.JobName}", new(MarginMm, top - MarginMm - TitleMm), TitleMm, IsBold: true);
        yield return new Lettering(
            FormattableString.Invariant($"Order {Text(plan.Ordered, context)} of a roll {Text(plan.Roll.Width, context)} wide · {Text(plan.Used, context)} used · {plan.Use * 100:0} % of the cloth becomes pieces · no layout can be shorter than {Text(lower, context)} · scale {view.ScaleText}"),
            new(MarginMm, top - MarginMm - TitleMm - 6),
            2.5);
        yield return new Lettering("Outer face of the cloth up. Arrows point forward. Measure from the cut end and from the selvage.", new(MarginMm, top - MarginMm - TitleMm - 11), 2.5);
        if (context.Warning.Length > 0)
        {
            yield return new Lettering(context.Warning, new(WidthMm - MarginMm, top - MarginMm - TitleMm), 3, TextAnchor.Right, IsBold: true);
        }
    }

    private static IEnumerable<Figure> Roll(CutPlan plan, SheetContext context, View view, Box roll)
    {
        var (selvage, ordered, width) = (plan.Roll.Selvage.Millimeters, plan.Ordered.Millimeters, plan.Roll.Width.Millimeters);
        foreach (var band in new[] { new Box(0, 0, ordered, selvage), new Box(0, width - selvage, ordered, width) }.Where(band => band.HeightMm > 0))
        {
            yield return new Tint(view.Of(Outline.Of(band)), 0.15);
        }

        yield return Stroke.Closed(LineRole.Note, Outline.Of(roll));
        yield return view.Line(LineRole.Fold, new(plan.Used.Millimeters, 0), new(plan.Used.Millimeters, width));
        foreach (var figure in plan.Placed.SelectMany(placed => Piece(placed, view))
            .Concat(Dimension.Level(roll.Left, view.Of(new Point(plan.Used.Millimeters, 0)).X, roll.Top + 3, $"used {Text(plan.Used, context)}"))
            .Concat(Dimension.Level(roll.Left, roll.Right, roll.Top + 9, $"order {Text(plan.Ordered, context)}"))
            .Concat(Dimension.Upright(roll.Bottom, roll.Top, roll.Left - 5, $"roll {Text(plan.Roll.Width, context)}"))
            .Concat(Arrows.Between(LineRole.Grain, new(roll.Left, roll.Bottom - 5), new(roll.Left + 40, roll.Bottom - 5), isTwoHeaded: true)))
        {
            yield return figure;
        }

        yield return new Lettering("warp, along the roll", new(roll.Left + 43, roll.Bottom - 6), 2.5);
        yield return new Lettering("cut end", new(roll.Left - 1, roll.Bottom - 3.5), 2, TextAnchor.Right);
    }

    private static IEnumerable<Figure> Piece(PlacedPiece placed, View view)
    {
        var outline = view.Of(placed.Outline);
        var center = Witness.ToPolygon(outline).InteriorPoint.Coordinate;
        var middle = new Point(center.X, center.Y);
        yield return new Tint(outline, 0.06);
        yield return Stroke.Closed(LineRole.Cut, outline);
        var room = Math.Min(outline.Bounds.WidthMm, outline.Bounds.HeightMm);
        var height = room > 14 ? 3.5 : room > 6 ? 2.5 : 1.8;
        yield return new Lettering($"{placed.Number}", middle - new Step(0, height / 2), height, TextAnchor.Middle, IsBold: true);
        if (room > 14)
        {
            var start = middle + (placed.Forward * 4);
            foreach (var figure in Arrows.Between(LineRole.Note, start, start + (placed.Forward * Math.Min(12, (room / 2) - 5)), isTwoHeaded: false))
            {
                yield return figure;
            }
        }
    }

    private static Table List(CutPlan plan, SheetContext context)
    {
        var measure = context.Units == PrintUnits.Both ? 48 : 32;
        var rest = WidthMm - (2 * MarginMm) - 12 - (4 * measure);
        return plan.Placed.Length == 0 ? throw new ArgumentException("There are no pieces.", nameof(plan)) : new(
        [
            new("No", 12), new("Piece", rest), new("From the cut end", measure), new("From the selvage", measure),
            new("Along the roll", measure), new("Across the roll", measure),
        ]);
    }

    private static IEnumerable<ImmutableArray<string>> Rows(CutPlan plan, SheetContext context) => plan.Placed.Select(placed =>
    {
        var box = placed.Outline.Bounds;
        string Mm(double value) => Text(Length.FromMillimeters(value), context);
        var copy = placed.Piece.Title.Quantity > 1 ? $", {placed.Copy} of {placed.Piece.Title.Quantity}" : string.Empty;
        return ImmutableArray.Create(
            $"{placed.Number}", placed.Piece.Title.Name + copy, Mm(box.Left), Mm(box.Bottom), Mm(box.WidthMm), Mm(box.HeightMm));
    });

    private static string Text(Length length, SheetContext context) => LengthText.Of(length, context.Units);
}
