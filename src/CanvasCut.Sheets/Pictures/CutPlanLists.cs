using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>What is told of a cut plan in words and figures.</summary>
internal static class CutPlanLists
{
    /// <summary>How much to order, how sure that is, and how to read picture and lists.</summary>
    public static IEnumerable<string> Sentences(CutPlan plan, SheetContext context)
    {
        string Text(Length length) => LengthText.Of(length, context.Units);
        yield return Say.Of($"Order {Text(plan.Ordered)} of a roll {Text(plan.Roll.Width)} wide. {ProofText.Of(plan, context.Units)}");
        yield return Say.Of($"{plan.Use * 100:0} % of the cloth becomes pieces. Outer face up; arrows point forward. Distances are from the cut end and from the selvage to the nearest point of the piece. The numbers are the order of cutting.");
        if (plan.StraightCuts is { IsEmpty: false } cuts)
        {
            yield return Say.Of($"The roll can be cut straight across {Listed(cuts.Select(cut => Say.Of($"at {Text(cut.At)}, after number {cut.After}")))}: short strokes beyond both selvages.");
        }
    }

    /// <summary>Where every piece lies, in the order of cutting.</summary>
    public static IEnumerable<ImmutableArray<string>> Pieces(CutPlan plan, SheetContext context) => plan.Placed.Select(placed =>
    {
        var copy = placed.Piece.Title.Quantity > 1 ? Say.Of($", {placed.Copy} of {placed.Piece.Title.Quantity}") : string.Empty;
        return ImmutableArray.Create([$"{placed.Number}", placed.Piece.Title.Name + copy, .. Measures(placed.Outline.Bounds, context), TurnedText(placed.Quarters)]);
    });

    /// <summary>The heads of the list of where every piece lies.</summary>
    public static Table PieceTable(SheetContext context, double widthMm)
    {
        const double TurnedMm = 19;
        const double NarrowMm = 200;
        var measure = (widthMm - TurnedMm) * (context.Units == PrintUnits.Both ? 0.175 : 0.14);
        return new(
        [
            new(Say.Of("No"), 10), new(Say.Of("Piece"), widthMm - 10 - TurnedMm - (4 * measure)), new(Say.Of("From the cut end"), measure), new(Say.Of("From the selvage"), measure),
            new(Say.Of("Along the roll"), measure), new(Say.Of("Across the roll"), measure), new(Say.Of("Turned"), TurnedMm),
        ], widthMm < NarrowMm ? 1.8 : 2);
    }

    /// <summary>What is worth keeping, the largest first.</summary>
    public static IEnumerable<ImmutableArray<string>> Leftovers(CutPlan plan, SheetContext context) =>
        plan.Leftovers.Select(leftover => ImmutableArray.Create([leftover.Name, .. Measures(leftover.Place, context)]));

    /// <summary>The heads of the list of what is worth keeping.</summary>
    public static Table LeftoverTable(double widthMm)
    {
        const double NameMm = 34;
        var measure = (widthMm - NameMm) / 4;
        return new([new(Say.Of("Worth keeping"), NameMm), new(Say.Of("From the cut end"), measure), new(Say.Of("From the selvage"), measure), new(Say.Of("Along the roll"), measure), new(Say.Of("Across the roll"), measure)]);
    }

    private static IEnumerable<string> Measures(Box box, SheetContext context) =>
        new[] { box.Left, box.Bottom, box.WidthMm, box.HeightMm }.Select(value => LengthText.Of(Length.FromMillimeters(value), context.Units));

    private static string TurnedText(int quarters) => quarters switch
    {
        0 => Say.Of("no"),
        1 => Say.Of("quarter left"),
        2 => Say.Of("end for end"),
        _ => Say.Of("quarter right"),
    };

    private static string Listed(IEnumerable<string> parts)
    {
        var all = parts.ToList();
        return all.Count == 1 ? all[0] : Say.Of($"{string.Join("; ", all.SkipLast(1))}; and {all[^1]}");
    }
}
