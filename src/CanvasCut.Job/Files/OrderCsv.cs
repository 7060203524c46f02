using System.Collections.Immutable;
using System.Text;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Writes an order as comma-separated values after RFC 4180.</summary>
public static class OrderCsv
{
    private const string LineEnd = "\r\n";

    /// <summary>The file's text: a head, then a line for each thing to buy.</summary>
    public static string Of(ImmutableArray<OrderLine> order)
    {
        var text = new StringBuilder();
        foreach (var row in order.Select(line => new[] { line.Item, line.Quantity, line.Unit, line.Also, line.For })
            .Prepend(["item", "quantity", "unit", "that is", "for"]))
        {
            text.AppendJoin(',', row.Select(Field)).Append(LineEnd);
        }

        return text.ToString();
    }

    /// <summary>A field is quoted when it holds a quote, a comma or a line break; quotes inside are doubled.</summary>
    private static string Field(string value) =>
        value.AsSpan().ContainsAny("\",\r\n") ? $"\"{value.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : value;
}
