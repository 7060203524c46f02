using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>What to buy, what it costs, what it is of, and how thick it gets under the needle.</summary>
internal static class OrderPages
{
    private const double SmallMm = 1.8;

    /// <summary>The order with its rounding rules.</summary>
    public static void Order(Flow flow, Purchase purchase)
    {
        flow.Heading(Say.Of("What to buy"));
        var table = new Table([new(Say.Of("Item"), 52), new(Say.Of("Buy"), 18), new(Say.Of("That is"), 18), new(Say.Of("How it was come to; rounded"), 52), new(Say.Of("For"), flow.WidthMm - 140)], SmallMm);
        flow.Rows(table, purchase.Order.Select(line => ImmutableArray.Create(
            line.Item,
            $"{line.Quantity} {Say.Of(line.Unit)}",
            line.Bought.Other is { } other ? $"{other.Number.ToString(CultureInfo.InvariantCulture)} {Say.Of(other.Unit)}" : string.Empty,
            $"{line.Also}; {line.Rounding}",
            $"{line.Use.Text}{PiecesOf(line, purchase.Made)}")));
        flow.Text(string.Empty);
        bool Uses(MountKind kind) => purchase.Made.Carriers.Any(carrier => carrier.Job.Fastenings.Mount.Uses(kind));
        var hookAndLoop = Uses(MountKind.HookAndLoop) ? string.Empty : Say.Of("Hook-and-loop tape: none is used in this mounting. ");
        var spare = Uses(MountKind.Zipper) ? Say.Of("a metre of zipper tape, a needle and a spool") : Say.Of("some of what holds the edges, a needle and a spool");
        flow.Text(Say.Of($"1 yd is 0.9144 m exactly. {hookAndLoop}Buy {spare} too much rather than sail back for it."));
    }

    /// <summary>The cost; nothing without a price file.</summary>
    public static void Cost(Flow flow, Purchase purchase)
    {
        if (purchase.Cost is not { } cost)
        {
            return;
        }

        flow.Heading(Say.Of("What it costs"));
        var money = cost.List.Money.Currency;
        var table = new Table([new(Say.Of("Item"), flow.WidthMm - 96), new(Say.Of("Quantity"), 26), new(Say.Of($"Price, {money}"), 40), new(Say.Of($"Amount, {money}"), 30)]);
        flow.Rows(table, cost.Lines.Select(line => ImmutableArray.Create(
            line.Line.Item,
            line.Price is { } priced ? $"{line.Line.Bought.In(priced.Per)?.ToString(CultureInfo.InvariantCulture)} {Say.Of(priced.Per)}" : $"{line.Line.Quantity} {Say.Of(line.Line.Unit)}",
            line.Price is { } price ? Say.Of($"{price.Amount.ToString("0.00##", CultureInfo.InvariantCulture)} per {Say.Of(price.Per)}") : Say.Of("no price"),
            line.Amount is { } amount ? cost.Text(amount) : "-"))
            .Concat(Sums(cost)));
        flow.Text(string.Empty);
        flow.Text(cost.Summary, isBold: true);
        flow.Text(Say.Of("Prices are your own file's; each amount is rounded, and the sums are those of the rounded amounts."));
    }

    /// <summary>The grades and how sure their figures are.</summary>
    public static void Materials(Flow flow, MadeTogether made)
    {
        flow.Heading(Say.Of("Materials"));
        flow.Text(Say.Of("Grades, no brands. What is from memory was found in nothing we read: hold it against what you have in hand, and change it in a materials file."));
        var table = new Table([new(Say.Of("Grade"), 28), new(Say.Of("Name"), 60), new(Say.Of("How sure"), 26), new(Say.Of("Where the figures come from"), flow.WidthMm - 114)], SmallMm);
        flow.Rows(table, made.Grades.Select(grade => ImmutableArray.Create(grade.Id, grade.Name, Say.Of(grade.Confidence), grade.Source)));
    }

    /// <summary>Every seam with its plies.</summary>
    public static void Seams(Flow flow, Purchase purchase, SheetContext context)
    {
        flow.Heading(Say.Of("Seams and layers"));
        flow.Text(Say.Of("Counted on the folded pieces, in the order of sewing; the top counts as one ply of the same cloth. Basting tape and thread are not counted."));
        var table = new Table([new(Say.Of("Seam"), 62), new(Say.Of("Rows, all together"), 34), new(Say.Of("Mostly through"), 40), new(Say.Of("At most through"), flow.WidthMm - 136)], SmallMm);
        var alike = purchase.Seams.GroupBy(each => (Name: each.Seam.KindName, Usual: Layers(each.Seam.Usual, each.Supplies, context), Most: Layers(each.Seam.Thickest(each.Supplies), each.Supplies, context)), each => each.Seam);
        flow.Rows(table, alike.Select(seams => ImmutableArray.Create(
            seams.Sum(seam => seam.Copies) is > 1 and var copies ? Say.Of($"{seams.Key.Name}, {copies} alike") : seams.Key.Name,
            LengthText.Of(seams.Aggregate(Length.Zero, (sum, seam) => sum + seam.Sewn), context.Units),
            seams.Key.Usual,
            seams.Key.Most)));
    }

    private static string Layers(LayerCount layers, JobSupplies supplies, SheetContext context) =>
        $"{layers}: {LengthText.Of(layers.Thickness(supplies), context.Units)}";

    /// <summary>The numbers of the pieces in the cut list; none when it is for all of them.</summary>
    private static string PiecesOf(OrderLine line, MadeTogether made)
    {
        var all = made.Pieces.Select(piece => piece.Key).ToList();
        var numbers = line.Use.Pieces.Select(key => all.IndexOf(key) + 1).Where(number => number > 0).Order().ToList();
        return numbers.Count == 0 ? string.Empty : numbers.Count == all.Count ? Say.Of("; pieces: all") : numbers.Count == 1 ? Say.Of($"; piece {numbers[0]}") : Say.Of($"; pieces {string.Join(", ", numbers)}");
    }

    private static IEnumerable<ImmutableArray<string>> Sums(OrderCost cost)
    {
        yield return [Say.Of("materials"), string.Empty, string.Empty, cost.Text(cost.Materials)];
        if (cost.List.Waste > 0)
        {
            yield return [Say.Of("waste"), (cost.List.Waste * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %", string.Empty, cost.Text(cost.Waste)];
        }

        if (cost.List.Labour is { } labour)
        {
            yield return [Say.Of("labour"), $"{labour.Hours.ToString(CultureInfo.InvariantCulture)} h", Say.Of($"{labour.Rate.ToString("0.00##", CultureInfo.InvariantCulture)} per hour"), cost.Text(cost.Labour)];
        }
    }
}
