using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>Large text from the top of a box downward.</summary>
/// <param name="frame">Where it may stand.</param>
/// <param name="size">By which all of it is made smaller; 1 for as large as asked.</param>
internal sealed class BigColumn(Box frame, double size)
{
    private const double Pitch = 1.7;
    private const double MarginMm = 16;

    /// <summary>A card with many words is written smaller, as little as need be; the smallest is still read from a step away.</summary>
    private static readonly double[] Sizes = [1, 0.94, 0.88, 0.82, 0.76, 0.7];

    /// <summary>Room between the frame and a footer.</summary>
    private const double BelowMm = 3;

    private double _y = frame.Top;

    /// <summary>What has been put.</summary>
    public List<Figure> Figures { get; } = [];

    /// <summary>Whether the last line ends above the frame's lower edge.</summary>
    public bool IsWithin => Figures.OfType<Lettering>().All(text => text.At.Y >= frame.Bottom - BelowMm);

    /// <summary>A removal card, as large as all of it goes on the page.</summary>
    public static Sheet Card(SheetContext context, Action<BigColumn> write)
    {
        var (width, height) = context.Paper;
        BigColumn Written(double size)
        {
            var column = new BigColumn(new(MarginMm, MarginMm, width - MarginMm, height - MarginMm), size);
            write(column);
            return column;
        }

        var fitting = Sizes.Select(Written).FirstOrDefault(each => each.IsWithin) ?? Written(Sizes[^1]);
        return new("removal-card", Say.Of($"Removal card, {context.JobName}"), width, height, [.. fitting.Figures, new Lettering(TextWidth.Shortened(context.Footer, width - (2 * MarginMm), 2.2, isBold: false), new(MarginMm, MarginMm - 6), 2.2)]);
    }

    /// <summary>A paragraph.</summary>
    public void Put(string text, double heightMm, bool isBold = false) => Lines(text, 0, heightMm * size, isBold);

    /// <summary>A paragraph with a number in a box before it.</summary>
    public void Numbered(int number, string text, double heightMm)
    {
        const double IndentMm = 16;
        Figures.Add(new Lettering($"{number}", new(frame.Left, _y - (heightMm * size * 1.6)), heightMm * size * 1.6, IsBold: true));
        Lines(text, IndentMm, heightMm * size, isBold: false);
    }

    /// <summary>A line across.</summary>
    public void Rule()
    {
        Figures.Add(Stroke.Open(LineRole.Cut, new(frame.Left, _y), new(frame.Right, _y)));
        _y -= 6 * size;
    }

    private void Lines(string text, double indentMm, double heightMm, bool isBold)
    {
        foreach (var line in TextWrap.Lines(text, frame.WidthMm - indentMm, heightMm, isBold))
        {
            Figures.Add(new Lettering(line, new(frame.Left + indentMm, _y - heightMm), heightMm, IsBold: isBold));
            _y -= heightMm * Pitch;
        }

        _y -= heightMm * 0.7;
    }
}
