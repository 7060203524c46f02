using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>What to buy, what it costs, what it is of, and how thick it gets under the needle.</summary>
internal static class OrderPages
{
    private const double SmallMm = 1.8;

    /// <summary>The order with its rounding rules.</summary>
    public static void Order(Flow flow, ReportContent content)
    {
        flow.Heading("What to buy");
        var table = new Table([new("Item", 52), new("Buy", 18), new("That is", 18), new("How it was come to; rounded", 52), new("For", flow.WidthMm - 140)], SmallMm);
        flow.Rows(table, content.Order.Select(line => ImmutableArray.Create(
            line.Item,
            $"{line.Quantity} {line.Unit}",
            line.Bought.Other is { } other ? $"{other.Number.ToString(CultureInfo.InvariantCulture)} {other.Unit}" : string.Empty,
            $"{line.Also}; {line.Rounding}",
            $"{line.Use.Text}{PiecesOf(line, content)}")));
        flow.Text(string.Empty);
        var mount = content.Patterns.Job.Fastenings.Mount;
        var hookAndLoop = mount.Uses(MountKind.HookAndLoop) ? string.Empty : "Hook-and-loop tape: none is used in this mounting. ";
        var spare = mount.Uses(MountKind.Zipper) ? "a metre of zipper tape, a needle and a spool" : "some of what holds the edges, a needle and a spool";
        flow.Text($"1 yd is 0.9144 m exactly. {hookAndLoop}Buy {spare} too much rather than sail back for it.");
    }

    /// <summary>The cost; nothing without a price file.</summary>
    public static void Cost(Flow flow, ReportContent content)
    {
        if (content.Cost is not { } cost)
        {
            return;
        }

        flow.Heading("What it costs");
        var money = cost.List.Money.Currency;
        var table = new Table([new("Item", flow.WidthMm - 96), new("Quantity", 26), new($"Price, {money}", 40), new($"Amount, {money}", 30)]);
        flow.Rows(table, cost.Lines.Select(line => ImmutableArray.Create(
            line.Line.Item,
            line.Price is { } priced ? $"{line.Line.Bought.In(priced.Per)?.ToString(CultureInfo.InvariantCulture)} {priced.Per}" : $"{line.Line.Quantity} {line.Line.Unit}",
            line.Price is { } price ? $"{price.Amount.ToString("0.00##", CultureInfo.InvariantCulture)} per {price.Per}" : "no price",
            line.Amount is { } amount ? cost.Text(amount) : "-"))
            .Concat(Sums(cost)));
        flow.Text(string.Empty);
        flow.Text(cost.Summary, isBold: true);
        flow.Text("Prices are your own file's; each amount is rounded, and the sums are those of the rounded amounts.");
    }

    /// <summary>The grades and how sure their figures are.</summary>
    public static void Materials(Flow flow, ReportContent content)
    {
        flow.Heading("Materials");
        flow.Text("Grades, no brands. What is from memory was found in nothing we read: hold it against what you have in hand, and change it in a materials file.");
        var table = new Table([new("Grade", 28), new("Name", 60), new("How sure", 26), new("Where the figures come from", flow.WidthMm - 114)], SmallMm);
        flow.Rows(table, content.Patterns.Job.Workshop.Supplies.GradesFor(content.Patterns.Job.Fastenings.Mount).Select(grade => ImmutableArray.Create(grade.Id, grade.Name, grade.Confidence, grade.Source)));
    }

    /// <summary>Every seam with its plies.</summary>
    public static void Seams(Flow flow, ReportContent content, SheetContext context)
    {
        flow.Heading("Seams and layers");
        var supplies = content.Patterns.Job.Workshop.Supplies;
        flow.Text("Counted on the folded pieces, in the order of sewing; the top counts as one ply of the same cloth. Basting tape and thread are not counted.");
        var table = new Table([new("Seam", 62), new("Rows, all together", 34), new("Mostly through", 40), new("At most through", flow.WidthMm - 136)], SmallMm);
        var alike = content.Seams.GroupBy(seam => (Name: NameOf(seam), Usual: Layers(seam.Usual, supplies, context), Most: Layers(seam.Thickest(supplies), supplies, context)));
        flow.Rows(table, alike.Select(seams => ImmutableArray.Create(
            seams.Sum(seam => seam.Copies) is > 1 and var copies ? $"{seams.Key.Name}, {copies} alike" : seams.Key.Name,
            LengthText.Of(seams.Aggregate(Length.Zero, (sum, seam) => sum + seam.Sewn), context.Units),
            seams.Key.Usual,
            seams.Key.Most)));
    }

    /// <summary>The seam's name without what tells the four corner pockets apart: they are alike.</summary>
    private static string NameOf(SewnSeam seam) => seam.Name.Split(", ") is [var piece, _, var where] ? $"{piece}, {where}" : seam.Name;

    private static string Layers(LayerCount layers, JobSupplies supplies, SheetContext context) =>
        $"{layers}: {LengthText.Of(layers.Thickness(supplies), context.Units)}";

    /// <summary>The numbers of the pieces in the cut list; none when it is for all of them.</summary>
    private static string PiecesOf(OrderLine line, ReportContent content)
    {
        var all = content.Patterns.Pieces.Select(piece => piece.Title.Id).ToList();
        var numbers = line.Use.Pieces.Select(id => all.IndexOf(id) + 1).Where(number => number > 0).Order().ToList();
        return numbers.Count == 0 ? string.Empty : numbers.Count == all.Count ? "; pieces: all" : $"; piece{(numbers.Count == 1 ? string.Empty : "s")} {string.Join(", ", numbers)}";
    }

    private static IEnumerable<ImmutableArray<string>> Sums(OrderCost cost)
    {
        yield return ["materials", string.Empty, string.Empty, cost.Text(cost.Materials)];
        if (cost.List.Waste > 0)
        {
            yield return ["waste", (cost.List.Waste * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %", string.Empty, cost.Text(cost.Waste)];
        }

        if (cost.List.Labour is { } labour)
        {
            yield return ["labour", $"{labour.Hours.ToString(CultureInfo.InvariantCulture)} h", $"{labour.Rate.ToString("0.00##", CultureInfo.InvariantCulture)} per hour", cost.Text(cost.Labour)];
        }
    }
}
