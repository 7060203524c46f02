using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Readback;

/// <summary>Reads what pen 1 draws in an HP-GL file of 40 units a millimetre.</summary>
internal static class HpglCutLines
{
    private const double MmInUnit = 0.025;
    private const string CutPen = "SP1";

    /// <summary>The lines, in millimetres.</summary>
    /// <exception cref="InvalidDataException">The file does not end by putting the pen away, or a place is no pair of numbers.</exception>
    public static IEnumerable<ImmutableArray<Point>> In(byte[] content)
    {
        // Texts end in a sign of their own, but hold no semicolon of ours that would begin an order of the cutting pen.
        var orders = Encoding.ASCII.GetString(content).ReplaceLineEndings(string.Empty).Split(';');
        if (!orders.Contains("SP0"))
        {
            throw new InvalidDataException(Say.Of("the file ends before the pen is put away; it is cut short."));
        }

        var lines = new List<ImmutableArray<Point>>();
        var isCutting = false;
        ImmutableArray<Point> at = [];
        foreach (var order in orders)
        {
            if (order.StartsWith("SP", StringComparison.Ordinal))
            {
                isCutting = order == CutPen;
            }
            else if (isCutting && order.StartsWith("PU", StringComparison.Ordinal) && order.Length > 2)
            {
                at = Places(order);
            }
            else if (isCutting && order.StartsWith("PD", StringComparison.Ordinal))
            {
                lines.Add([.. at, .. Places(order)]);
            }
        }

        return lines;
    }

    private static ImmutableArray<Point> Places(string order) =>
    [
        .. order[2..].Split(',').Select(Number).Chunk(2).Select(pair => pair.Length == 2
            ? new Point(pair[0] * MmInUnit, pair[1] * MmInUnit)
            : throw new InvalidDataException(Say.Of($"the order {order[..2]} has half a place."))),
    ];

    private static int Number(string text) => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
        ? number
        : throw new InvalidDataException(Say.Of($"\"{text}\" is no whole number."));
}
