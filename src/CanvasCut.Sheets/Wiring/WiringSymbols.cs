using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>Symbols after the habits of IEC 60617, drawn on a line from left to right; each takes the same length of it.</summary>
internal static class WiringSymbols
{
    /// <summary>The length of the line that a symbol takes.</summary>
    public const double LengthMm = 16;

    private const double HalfMm = LengthMm / 2;

    /// <summary>A generator that lives on light: a box with a cell's angle in it, and two arrows that fall on it.</summary>
    public static IEnumerable<Figure> Panel(Point left)
    {
        var box = Box.Around(new(left.X + HalfMm, left.Y), 12, 9);
        yield return Line(left, new(box.Left, left.Y));
        yield return Line(new(box.Right, left.Y), new(left.X + LengthMm, left.Y));
        yield return Stroke.Closed(LineRole.Mark, Outline.Of(box));
        yield return Stroke.Open(LineRole.Mark, new(box.Left, box.Top), new(box.Left + 4, left.Y), new(box.Left, box.Bottom));
        foreach (var x in new[] { box.Left + 4.5, box.Left + 8 })
        {
            Point tip = new(x + 1.5, box.Top + 0.6);
            yield return Line(new(x - 1, box.Top + 4.6), tip);
            yield return Stroke.Open(LineRole.Note, new(tip.X - 1.6, tip.Y + 0.9), tip, new(tip.X - 0.2, tip.Y + 1.8));
        }
    }

    /// <summary>A breaker: a contact that opens, with a cross on it.</summary>
    public static IEnumerable<Figure> Breaker(Point left)
    {
        var (from, to) = (left.X + 4, left.X + 12);
        yield return Line(left, new(from, left.Y));
        yield return Line(new(to, left.Y), new(left.X + LengthMm, left.Y));
        yield return Stroke.Open(LineRole.Cut, new(from, left.Y), new(to - 0.6, left.Y + 4));
        yield return Line(new(to - 1, left.Y - 1), new(to + 1, left.Y + 1));
        yield return Line(new(to - 1, left.Y + 1), new(to + 1, left.Y - 1));
    }

    /// <summary>A fuse: a box with the line through it.</summary>
    public static IEnumerable<Figure> Fuse(Point left)
    {
        yield return Line(left, new(left.X + LengthMm, left.Y));
        yield return Stroke.Closed(LineRole.Mark, Outline.Of(Box.Around(new(left.X + HalfMm, left.Y), 10, 4)));
    }

    /// <summary>A converter from direct current to direct current: a box with a stroke across and a sign in either half.</summary>
    public static IEnumerable<Figure> Controller(Point left)
    {
        var box = Box.Around(new(left.X + HalfMm, left.Y), 14, 14);
        yield return Line(left, new(box.Left, left.Y));
        yield return Line(new(box.Right, left.Y), new(left.X + LengthMm, left.Y));
        yield return Stroke.Closed(LineRole.Mark, Outline.Of(box));
        yield return Line(new(box.Left, box.Bottom), new(box.Right, box.Top));
        foreach (var (x, y) in new[] { (box.Left + 4, box.Top - 3), (box.Right - 4, box.Bottom + 3.5) })
        {
            yield return Line(new(x - 2, y), new(x + 2, y));
            yield return Stroke.Open(LineRole.Note, new(x - 2, y - 1.2), new(x - 0.8, y - 1.2));
            yield return Stroke.Open(LineRole.Note, new(x - 0.6, y - 1.2), new(x + 0.6, y - 1.2));
            yield return Stroke.Open(LineRole.Note, new(x + 0.8, y - 1.2), new(x + 2, y - 1.2));
        }
    }

    /// <summary>A battery of two cells, the long stroke plus.</summary>
    public static IEnumerable<Figure> Battery(Point left)
    {
        yield return Line(left, new(left.X + 4, left.Y));
        foreach (var x in new[] { left.X + 4, left.X + 8 })
        {
            yield return Stroke.Open(LineRole.Mark, new(x, left.Y - 5), new(x, left.Y + 5));
            yield return Stroke.Open(LineRole.Cut, new(x + 2, left.Y - 2.5), new(x + 2, left.Y + 2.5));
        }
    }

    /// <summary>A line of two wires.</summary>
    public static IEnumerable<Figure> Wires(Point from, Point to)
    {
        var middle = from + ((to - from) * 0.5);
        yield return Line(from, to);
        yield return Stroke.Open(LineRole.Note, new(middle.X - 1.4, middle.Y - 1.4), new(middle.X + 0.6, middle.Y + 1.4));
        yield return Stroke.Open(LineRole.Note, new(middle.X - 0.4, middle.Y - 1.4), new(middle.X + 1.6, middle.Y + 1.4));
    }

    /// <summary>Where lines are joined.</summary>
    public static Figure Joint(Point at) => new Tint(Outline.Of(Box.Around(at, 1.4, 1.4)), 1);

    private static Stroke Line(Point from, Point to) => Stroke.Open(LineRole.Mark, from, to);
}
