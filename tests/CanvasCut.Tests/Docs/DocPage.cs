using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Docs;

/// <summary>Collects what is drawn on one documentation figure.</summary>
internal sealed class DocPage(string name, string title, Step size)
{
    private const double LetterMm = 2.7;
    private const double TickMm = 1;

    private readonly List<Figure> _figures = [];

    public DocPage Add(params IEnumerable<Figure> figures)
    {
        _figures.AddRange(figures);
        return this;
    }

    public DocPage Text(string text, Point at, TextAnchor anchor = TextAnchor.Left) => Add(new Lettering(text, at, LetterMm, anchor));

    /// <summary>Words beside the drawing with a line to what they name.</summary>
    public DocPage Callout(string text, Point target, Point textAt)
    {
        var words = new Box(textAt.X - 1, textAt.Y - 1, textAt.X + TextWidth.Of(text, LetterMm, isBold: false) + 1, textAt.Y + LetterMm + 1);
        Point[] starts = [new(words.Left, words.Center.Y), new(words.Right, words.Center.Y), new(words.Center.X, words.Bottom)];
        return Add(Stroke.Open(LineRole.Note, starts.MinBy(start => start.DistanceMm(target)), target)).Text(text, textAt);
    }

    /// <summary>A level dimension with lines to what it measures; a long text stands after it.</summary>
    public DocPage Across((double From, double To) x, (double At, double Reach) y, string text)
    {
        var (left, right) = (Math.Min(x.From, x.To), Math.Max(x.From, x.To));
        Add(
            Stroke.Open(LineRole.Note, new(left, y.At), new(left, y.Reach)),
            Stroke.Open(LineRole.Note, new(right, y.At), new(right, y.Reach)),
            Stroke.Open(LineRole.Note, new(left, y.At), new(right, y.At)),
            Slash(new(left, y.At)),
            Slash(new(right, y.At)));
        return TextWidth.Of(text, LetterMm, isBold: false) + 1 < right - left
            ? Text(text, new((left + right) / 2, y.At + 1), TextAnchor.Middle)
            : Text(text, new(right + 2, y.At - (LetterMm / 2)));
    }

    /// <summary>An upright dimension with lines to what it measures, its text to the right.</summary>
    public DocPage Upright((double From, double To) y, (double At, double Reach) x, string text) => Add(
        Stroke.Open(LineRole.Note, new(x.At, y.From), new(x.Reach, y.From)),
        Stroke.Open(LineRole.Note, new(x.At, y.To), new(x.Reach, y.To)),
        Stroke.Open(LineRole.Note, new(x.At, y.From), new(x.At, y.To)),
        Slash(new(x.At, y.From)),
        Slash(new(x.At, y.To))).Text(text, new(x.At + 2, ((y.From + y.To) / 2) - (LetterMm / 2)));

    public Sheet ToSheet() => new(name, title, size.X, size.Y, [.. _figures]);

    private static Stroke Slash(Point at) => Stroke.Open(LineRole.Mark, at - new Step(TickMm, TickMm), at + new Step(TickMm, TickMm));
}
