using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CanvasCut.Geometry;

namespace CanvasCut.Readback;

/// <summary>Reads closed polylines on the layer CUT of an ASCII DXF file of release 12.</summary>
internal static class DxfCutLines
{
    private const string CutLayer = "CUT";

    /// <summary>The lines, in drawing units; ours are millimetres.</summary>
    /// <exception cref="InvalidDataException">The file ends in the middle, or a pair of lines is no group.</exception>
    public static IEnumerable<ImmutableArray<Point>> In(byte[] content)
    {
        var lines = new List<ImmutableArray<Point>>();
        List<Point>? open = null;
        foreach (var entity in Entities(Encoding.UTF8.GetString(content)))
        {
            switch (entity.Kind)
            {
                case "POLYLINE" when entity.Text(8) == CutLayer:
                    open = (entity.Number(70) is 1) ? [] : throw new InvalidDataException("a cut line is not closed.");
                    break;
                case "VERTEX" when open is not null:
                    open.Add(new(entity.Number(10), entity.Number(20)));
                    break;
                case "SEQEND" when open is not null:
                    lines.Add([.. open]);
                    open = null;
                    break;
                case "LINE" when entity.Text(8) == CutLayer:
                    throw new InvalidDataException("a cut line is a single LINE, which encloses nothing.");
            }
        }

        return lines;
    }

    private static IEnumerable<Entity> Entities(string text)
    {
        var rows = text.ReplaceLineEndings("\n").Split('\n');
        Entity? entity = null;
        for (var i = 0; i + 1 < rows.Length; i += 2)
        {
            if (!int.TryParse(rows[i], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out var code))
            {
                throw new InvalidDataException($"line {i + 1} is no DXF group code.");
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
            throw new InvalidDataException("the file ends before its EOF; it is cut short.");
        }
    }

    private sealed record Entity(string Kind)
    {
        public Dictionary<int, string> Groups { get; } = [];

        public string Text(int code) => Groups.GetValueOrDefault(code, string.Empty);

        public double Number(int code) => double.TryParse(Text(code), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new InvalidDataException($"a {Kind} has no number in group {code}.");
    }
}
