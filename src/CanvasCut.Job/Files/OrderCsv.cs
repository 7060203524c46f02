using System.Globalization;
using System.Text;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Writes an order as comma-separated values after RFC 4180.</summary>
public static class OrderCsv
{
    private const string LineEnd = "\r\n";

    private static readonly string[] Head = ["grade", "item", "quantity", "unit", "other quantity", "other unit", "rounded", "that is", "for", "pieces"];
    private static readonly string[] CostHead = ["price", "per", "amount", "currency"];

    /// <summary>The file's text: a head, then a line for each thing to buy; with prices the sums after them.</summary>
    public static string Of(ReportContent content)
    {
        var text = new StringBuilder();
        foreach (var row in content.Cost is { } cost ? Priced(cost) : content.Order.Select(Cells).Prepend(Head))
        {
            text.AppendJoin(',', row.Select(Field)).Append(LineEnd);
        }

        return text.ToString();
    }

    private static IEnumerable<string[]> Priced(OrderCost cost)
    {
        var currency = cost.List.Money.Currency;
        yield return [.. Head, .. CostHead];
        foreach (var line in cost.Lines)
        {
            yield return
            [
                .. Cells(line.Line),
                line.Price is { } price ? Text(price.Amount) : "no price",
                line.Price?.Per ?? string.Empty,
                line.Amount is { } amount ? cost.Text(amount) : string.Empty,
                line.Amount is null ? string.Empty : currency,
            ];
        }

        foreach (var (name, amount) in new[] { ("materials", cost.Materials), ("waste", cost.Waste), ("labour", cost.Labour), ("total", cost.Total) })
        {
            var told = name == "total" ? cost.Summary : string.Empty;
            yield return [string.Empty, name, string.Empty, string.Empty, string.Empty, string.Empty, string.Empty, told, string.Empty, string.Empty, string.Empty, string.Empty, cost.Text(amount), currency];
        }
    }

    private static string[] Cells(OrderLine line) =>
    [
        line.Thing.Grade,
        line.Item,
        line.Quantity,
        line.Unit,
        line.Bought.Other is { } other ? Text(other.Number) : string.Empty,
        line.Bought.Other?.Unit ?? string.Empty,
        line.Rounding,
        line.Also,
        line.Use.Text,
        string.Join(' ', line.Use.Pieces),
    ];

    private static string Text(decimal number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A field is quoted when it holds a quote, a comma or a line break; quotes inside are doubled.</summary>
    private static string Field(string value)
    {
        var safe = Guarded(value);
        return safe.AsSpan().ContainsAny("\",\r\n") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    /// <summary>
    /// A spreadsheet takes a text that begins with one of these for a formula and runs it; an apostrophe before it keeps it
    /// a text (OWASP, "CSV Injection"). Numbers here are never negative, so none is touched.
    /// </summary>
    private static string Guarded(string value) => value.Length > 0 && value[0] is ('=' or '+' or '-' or '@' or '\t' or '\r') ? "'" + value : value;
}
