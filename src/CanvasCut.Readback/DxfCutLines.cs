using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Readback;

/// <summary>Reads the closed cut lines of an ASCII DXF file of release 12.</summary>
/// <remarks>They lie on the layer CUT; in a pattern exchange file, which has blocks and no such layer, on layer 1.</remarks>
internal static partial class DxfCutLines
{
    private const string PlainLayer = "CUT";
    private const string ExchangeLayer = "1";
    private const double MmInInch = 25.4;

    /// <summary>The lines, in millimetres.</summary>
    /// <exception cref="InvalidDataException">The file ends in the middle, a pair of lines is no group, or a cut line has arcs.</exception>
    public static IEnumerable<ImmutableArray<Point>> In(byte[] content)
    {
        var text = Encoding.UTF8.GetString(content).ReplaceLineEndings("\n");
        List<Entity> entities = [.. Entities(text)];
        var layer = entities.Any(entity => entity.Kind == "BLOCK") ? ExchangeLayer : PlainLayer;
        var millimetres = SaysInches().IsMatch(text) ? MmInInch : 1;
        return LinesOn(layer, entities).Select(line => line.Select(point => new Point(point.X * millimetres, point.Y * millimetres)).ToImmutableArray());
    }

    private static List<ImmutableArray<Point>> LinesOn(string layer, List<Entity> entities)
    {
        var lines = new List<ImmutableArray<Point>>();
        List<Point>? open = null;
        foreach (var entity in entities)
        {
            switch (entity.Kind)
            {
                case "POLYLINE" when entity.Text(8) == layer:
                    open = (entity.Number(70) is 1) ? [] : throw new InvalidDataException(Say.Of("a cut line is not closed."));
                    break;
                case "VERTEX" when open is not null:
                    open.Add(entity.Groups.ContainsKey(42) ? throw new InvalidDataException(Say.Of("a cut line has arcs.")) : new(entity.Number(10), entity.Number(20)));
                    break;
                case "SEQEND" when open is not null:
                    lines.Add([.. open]);
                    open = null;
                    break;
                case "LINE" when entity.Text(8) == layer:
                    throw new InvalidDataException(Say.Of("a cut line is a single LINE, which encloses nothing."));
            }
        }

        return lines;
    }

    private static IEnumerable<Entity> Entities(string text)
    {
        var rows = text.Split('\n');
        Entity? entity = null;
        for (var i = 0; i + 1 < rows.Length; i += 2)
        {
            if (!int.TryParse(rows[i], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out var code))
            {
                throw new InvalidDataException(Say.Of($"line {i + 1} is no DXF group code."));
            }

            if (code != 0)
            {
                entity?.Groups.TryAdd(code, rows[i + 1]);
                continue;
            }

            if (entity is not null)
            {
                yield return entity;
            }

            entity = new(rows[i + 1].Trim());
        }

        if (entity is not { Kind: "EOF" })
        {
            throw new InvalidDataException(Say.Of("the file ends before its EOF; it is cut short."));
        }
    }

    [GeneratedRegex(@"\n\$INSUNITS\n *70\n *1\n", RegexOptions.CultureInvariant)]
    private static partial Regex SaysInches();

    private sealed record Entity(string Kind)
    {
        public Dictionary<int, string> Groups { get; } = [];

        public string Text(int code) => Groups.GetValueOrDefault(code, string.Empty);

        public double Number(int code) => double.TryParse(Text(code), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new InvalidDataException(Say.Of($"a {Kind} has no number in group {code}."));
    }
}
