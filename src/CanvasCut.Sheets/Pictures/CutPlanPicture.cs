using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The pieces on the roll, to scale, with figures where there is room for them.</summary>
internal static class CutPlanPicture
{
    private const double RoomLeftMm = 14;
    private const double RoomAboveMm = 16;
    private const double RoomBelowMm = 13;
    private const double RoomRightMm = 2;
    private const double TallestMm = 150;
    private const double TextMm = 1.8;

    /// <summary>Draws the picture with its lower left corner at the origin; gives its height.</summary>
    public static double Of(CutPlan plan, SheetContext context, double widthMm, out ImmutableArray<Figure> figures)
    {
        var roll = new Box(0, 0, plan.Ordered.Millimeters, plan.Roll.Width.Millimeters);
        var view = View.Fitting(roll, new Box(RoomLeftMm, 0, widthMm - RoomRightMm, TallestMm));
        var onPaper = view.Of(roll);
        view = view with { Shift = view.Shift + new Step(0, RoomBelowMm - onPaper.Bottom) };
        onPaper = view.Of(roll);
        ImmutableArray<Figure> drawn =
        [
            .. Roll(plan, view, onPaper),
            .. plan.Leftovers.SelectMany(leftover => Left(leftover, plan, view, context.Units)),
            .. plan.Placed.SelectMany(placed => PlacedFigures.Of(placed, view, context.Units)),
            .. Dimensions(plan, context, view, onPaper),
        ];
        figures = [.. drawn, .. SmallNumbers(plan, view, new FreePlace(Outline.Of(onPaper), drawn.Where(figure => figure is Lettering), roomMm: 0.6))];
        return onPaper.Top + RoomAboveMm;
    }

    /// <summary>The numbers of pieces too small for them: beside the piece, with a leader when it is not near; else on it after all.</summary>
    private static IEnumerable<Figure> SmallNumbers(CutPlan plan, View view, FreePlace free)
    {
        foreach (var placed in plan.Placed)
        {
            free.Take(view.Of(placed.Outline).Bounds);
        }

        foreach (var placed in plan.Placed.Where(placed => !PlacedFigures.HasRoom(placed, view)))
        {
            var outline = view.Of(placed.Outline);
            var beside = Names.Of([($"{placed.Number}", outline.Bounds.Center)], free, PlacedFigures.SmallMm).ToList();
            foreach (var figure in beside.Count > 0 ? beside : [PlacedFigures.NumberIn(placed, outline)])
            {
                yield return figure;
            }
        }
    }

    private static IEnumerable<Figure> Roll(CutPlan plan, View view, Box roll)
    {
        var (selvage, ordered, width) = (plan.Roll.Selvage.Millimeters, plan.Ordered.Millimeters, plan.Roll.Width.Millimeters);
        foreach (var band in new[] { new Box(0, 0, ordered, selvage), new Box(0, width - selvage, ordered, width) }.Where(band => band.HeightMm > 0))
        {
            yield return new Tint(view.Of(Outline.Of(band)), 0.15);
        }

        yield return Stroke.Closed(LineRole.Note, Outline.Of(roll));
        yield return UsedLine(plan, view);
        foreach (var x in plan.StraightCuts.Select(cut => view.Of(new Point(cut.At.Millimeters, 0)).X))
        {
            yield return Stroke.Open(LineRole.Cut, new(x, roll.Bottom), new(x, roll.Bottom - 2));
            yield return Stroke.Open(LineRole.Cut, new(x, roll.Top), new(x, roll.Top + 2));
        }
    }

    private static Stroke UsedLine(CutPlan plan, View view) =>
        view.Line(LineRole.Fold, new(plan.Used.Millimeters, 0), new(plan.Used.Millimeters, plan.Roll.Width.Millimeters));

    private static IEnumerable<Figure> Left(Leftover leftover, CutPlan plan, View view, PrintUnits units)
    {
        const double InsideMm = 0.5;
        var room = view.Of(leftover.Place).Grown(-InsideMm);
        var outline = Outline.Of(room);
        string Text(double value) => LengthText.Of(Length.FromMillimeters(value), units);
        var free = new FreePlace(outline, [UsedLine(plan, view)], roomMm: 1);
        string[][] wordings =
        [
            [Say.Of($"{leftover.Name}, left over"), $"{Text(leftover.Place.WidthMm)} × {Text(leftover.Place.HeightMm)}"],
            [Say.Of($"{leftover.Name}, left over"), Text(leftover.Place.WidthMm), $"× {Text(leftover.Place.HeightMm)}"],
            [leftover.Name, Text(leftover.Place.WidthMm), $"× {Text(leftover.Place.HeightMm)}"],
            [leftover.Name],
        ];
        return Dashes.Of([.. outline.Corners, outline[0]]).Concat(WordBlock.Fitting(wordings, TextMm, free, room.Center));
    }

    private static IEnumerable<Figure> Dimensions(CutPlan plan, SheetContext context, View view, Box roll)
    {
        string Text(Length length) => LengthText.Of(length, context.Units);
        return
        [
            .. Dimension.Level(roll.Left, view.Of(new Point(plan.Used.Millimeters, 0)).X, roll.Top + 4, Say.Of($"used {Text(plan.Used)}")),
            .. Dimension.Level(roll.Left, roll.Right, roll.Top + 10, Say.Of($"order {Text(plan.Ordered)}")),
            .. Dimension.Upright(roll.Bottom, roll.Top, roll.Left - 5, Say.Of($"roll {Text(plan.Roll.Width)}")),
            .. Arrows.Between(LineRole.Grain, new(roll.Left, roll.Bottom - 6), new(roll.Left + 30, roll.Bottom - 6), isTwoHeaded: true),
            new Lettering(Say.Of($"warp, along the roll; scale {view.ScaleText}"), new(roll.Left + 33, roll.Bottom - 7), 2.5),
            new Lettering(Say.Of("cut end"), new(roll.Left - 1, roll.Bottom - 3.5), 2, TextAnchor.Right),
        ];
    }
}
