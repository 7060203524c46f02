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
    private const double RoomAboveMm = 18;
    private const double RoomBelowMm = 12;
    private const double HeadMm = 36;
    private const double TallestMm = 150;

    /// <summary>Draws the cut plan with its list.</summary>
    public static Sheet Of(CutPlan plan, SheetContext context)
    {
        var picture = Picture(plan, context);
        var list = ListFor(plan, context, WidthMm - (2 * MarginMm));
        var (figures, height) = list.At(new(MarginMm, 0), Rows(plan, context));
        var raised = Figures.Moved(picture.Figures.AddRange(Figures.Moved(figures, new(0, -2))), new(0, height + MarginMm));
        return picture with { HeightMm = picture.HeightMm + height + MarginMm, Figures = raised };
    }

    /// <summary>The picture alone, with its title and the figures that matter.</summary>
    public static Sheet Picture(CutPlan plan, SheetContext context)
    {
        var roll = new Box(0, 0, plan.Ordered.Millimeters, plan.Roll.Width.Millimeters);
        var view = View.Fitting(roll, new Box(MarginMm + RoomLeftMm, 0, WidthMm - MarginMm, TallestMm));
        var onPaper = view.Of(roll);
        var head = Head(plan, context, view).ToList();
        var (bottom, top) = (onPaper.Bottom - RoomBelowMm, onPaper.Top + RoomAboveMm);
        ImmutableArray<Figure> figures = [.. Roll(plan, context, view, onPaper), .. Figures.Moved([.. head], new(0, top + HeadMm))];
        return new("cut-plan", $"Cut plan, {context.JobName}", WidthMm, top + HeadMm - bottom, Figures.Moved(figures, new(0, -bottom)));
    }

    /// <summary>Where every piece lies, as rows for a table of <see cref="ListFor"/>.</summary>
    internal static IEnumerable<ImmutableArray<string>> Rows(CutPlan plan, SheetContext context) => plan.Placed.Select(placed =>
    {
        var box = placed.Outline.Bounds;
        string Mm(double value) => Text(Length.FromMillimeters(value), context);
        var copy = placed.Piece.Title.Quantity > 1 ? $", {placed.Copy} of {placed.Piece.Title.Quantity}" : string.Empty;
        return ImmutableArray.Create(
            $"{placed.Number}", placed.Piece.Title.Name + copy, Mm(box.Left), Mm(box.Bottom), Mm(box.WidthMm), Mm(box.HeightMm));
    });

    /// <summary>The heads of the list of where every piece lies.</summary>
    internal static Table ListFor(CutPlan plan, SheetContext context, double widthMm)
    {
        var share = context.Units == PrintUnits.Both ? 0.17 : 0.13;
        var measure = widthMm * share;
        return new(
        [
            new("No", 10), new("Piece", widthMm - 10 - (4 * measure)), new("From the cut end", measure), new("From the selvage", measure),
            new("Along the roll", measure), new("Across the roll", measure),
        ]);
    }

    /// <summary>Title and figures, hanging from the top of the sheet.</summary>
    private static IEnumerable<Figure> Head(CutPlan plan, SheetContext context, View view)
    {
        yield return new Lettering($"Cut plan: {context.JobName}", new(MarginMm, -MarginMm - TitleMm), TitleMm, IsBold: true);
        string[] lines =
        [
            FormattableString.Invariant($"Order {Text(plan.Ordered, context)} of a roll {Text(plan.Roll.Width, context)} wide. {ProofText.Of(plan, context.Units)}"),
            FormattableString.Invariant($"{plan.Use * 100:0} % of the cloth becomes pieces. Scale {view.ScaleText}. Outer face up; arrows point forward; measure from the cut end and the selvage."),
            context.Warning,
        ];
        foreach (var (i, line) in lines.Where(line => line.Length > 0).Index())
        {
            yield return new Lettering(line, new(MarginMm, -MarginMm - TitleMm - 6 - (i * 4.6)), 2.5, IsBold: line == context.Warning);
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
        yield return Stroke.Closed(LineRole.Mark, outline);
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

    private static string Text(Length length, SheetContext context) => LengthText.Of(length, context.Units);
}
