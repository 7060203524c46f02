using System.Globalization;
using System.Text;
using CanvasCut.Language;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Writes an order as comma-separated values after RFC 4180.</summary>
public static class OrderCsv
{
    private const string LineEnd = "\r\n";

    private static string[] Head => [Say.Of("grade"), Say.Of("item"), Say.Of("quantity"), Say.Of("unit"), Say.Of("other quantity"), Say.Of("other unit"), Say.Of("rounded"), Say.Of("that is"), Say.Of("for"), Say.Of("pieces")];
    private static string[] CostHead => [Say.Of("price"), Say.Of("per"), Say.Of("amount"), Say.Of("currency")];

    /// <summary>The file's text: a head, then a line for each thing to buy; with prices the sums after them.</summary>
    public static string Of(Purchase purchase)
    {
        var text = new StringBuilder();
        foreach (var row in purchase.Cost is { } cost ? Priced(cost) : purchase.Order.Select(Cells).Prepend(Head))
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
                line.Price is { } price ? Text(price.Amount) : Say.Of("no price"),
                line.Price is { } by ? Say.Of(by.Per) : string.Empty,
                line.Amount is { } amount ? cost.Text(amount) : string.Empty,
                line.Amount is null ? string.Empty : currency,
            ];
        }

        (string Name, decimal Amount, string Told)[] sums =
        [
            (Say.Of("materials"), cost.Materials, string.Empty), (Say.Of("waste"), cost.Waste, string.Empty), (Say.Of("labour"), cost.Labour, string.Empty), (Say.Of("total"), cost.Total, cost.Summary),
        ];
        foreach (var (name, amount, told) in sums)
        {
            yield return [string.Empty, name, string.Empty, string.Empty, string.Empty, string.Empty, string.Empty, told, string.Empty, string.Empty, string.Empty, string.Empty, cost.Text(amount), currency];
        }
    }

    private static string[] Cells(OrderLine line) =>
    [
        line.Thing.Grade,
        line.Item,
        line.Quantity,
        Say.Of(line.Unit),
        line.Bought.Other is { } other ? Text(other.Number) : string.Empty,
        line.Bought.Other is { } of ? Say.Of(of.Unit) : string.Empty,
        line.Rounding,
        line.Also,
        line.Use.Text,
        string.Join(' ', line.Use.Pieces.Select(key => key.Id)),
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
