using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing;

/// <summary>A letter of single strokes, in fourteenths of a capital's height.</summary>
/// <param name="WidthUnits">How wide it is, without the room to the next.</param>
/// <param name="Strokes">Its lines, each of at least two points; none for a space.</param>
internal sealed record StrokeGlyph(double WidthUnits, ImmutableArray<ImmutableArray<Point>> Strokes)
{
    private const int PartsOfQuarter = 6;

    /// <summary>Reads the form that stroke-letters.txt describes.</summary>
    public static StrokeGlyph Read(string widthAndStrokes)
    {
        var (width, strokes) = widthAndStrokes.Split(' ', 2) is [var first, var rest] ? (first, rest) : throw new FormatException(widthAndStrokes);
        return new(Number(width), [.. strokes.Split(" / ").Select(StrokeOf)]);
    }

    /// <summary>The same letter smaller, and moved.</summary>
    public IEnumerable<ImmutableArray<Point>> Placed(double scale, Step step) =>
        Strokes.Select(stroke => stroke.Select(point => new Point(point.X * scale, point.Y * scale) + step).ToImmutableArray());

    private static ImmutableArray<Point> StrokeOf(string text)
    {
        var points = new List<Point>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var isArc = char.IsAsciiLetter(word[0]);
            var end = word[(isArc ? 1 : 0)..].Split(',') is [var x, var y] ? new Point(Number(x), Number(y)) : throw new FormatException(text);
            points.AddRange(isArc ? Quarter(points[^1], end, word[0] == 'h') : [end]);
        }

        return [.. points];
    }

    /// <summary>A quarter of an ellipse, without its first point.</summary>
    private static IEnumerable<Point> Quarter(Point from, Point to, bool isLevelFirst) => Enumerable.Range(1, PartsOfQuarter).Select(part =>
    {
        var (sine, cosine) = Math.SinCos(part * Math.PI / 2 / PartsOfQuarter);
        var (levelPart, uprightPart) = isLevelFirst ? (sine, 1 - cosine) : (1 - cosine, sine);
        return new Point(from.X + ((to.X - from.X) * levelPart), from.Y + ((to.Y - from.Y) * uprightPart));
    });

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
