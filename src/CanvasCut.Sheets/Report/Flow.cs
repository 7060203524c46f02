using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>Fills pages from the top with headings, paragraphs, tables and pictures.</summary>
internal sealed class Flow
{
    private const double TextMm = 2.2;
    private const double PitchMm = 4;
    private const double HeadingMm = 3.6;
    private const double FooterMm = 8;
    private const double MarginMm = 14;

    /// <summary>A table up to this part of a page is not torn.</summary>
    private const double WholePart = 0.25;

    private readonly Box _frame;
    private readonly (double WidthMm, double HeightMm) _paper;
    private readonly List<List<Figure>> _pages = [[]];
    private double _y;

    /// <summary>Begins on the paper of a job.</summary>
    public Flow(SheetContext context)
    {
        _paper = context.Paper;
        _frame = new(MarginMm, MarginMm + FooterMm, _paper.WidthMm - MarginMm, _paper.HeightMm - MarginMm);
        _y = _frame.Top;
    }

    /// <summary>The width between the margins.</summary>
    public double WidthMm => _frame.WidthMm;

    private bool IsAtTop => _y >= _frame.Top;

    /// <summary>A title across the page.</summary>
    public void Title(string text)
    {
        const double TitleMm = 6;
        Put([new Lettering(text, new(0, -TitleMm), TitleMm, IsBold: true)], TitleMm + 4);
    }

    /// <summary>A heading that stays with what follows it.</summary>
    /// <param name="text">The heading.</param>
    /// <param name="picture">The picture that follows; null for words or a table.</param>
    public void Heading(string text, Sheet? picture = null)
    {
        const double BeforeMm = 6;
        const double KeptTogetherMm = 40;
        const double AfterMm = 6;
        BreakUnless(HeadingMm + BeforeMm + (picture is null ? KeptTogetherMm : (picture.HeightMm * ScaleOf(picture)) + AfterMm));
        if (!IsAtTop)
        {
            _y -= BeforeMm;
        }

        Put(
            [
                new Lettering(text, new(0, -HeadingMm), HeadingMm, IsBold: true),
                Stroke.Open(LineRole.Mark, new(0, -HeadingMm - 1.6), new(WidthMm, -HeadingMm - 1.6)),
            ],
            HeadingMm + 4);
    }

    /// <summary>A paragraph.</summary>
    public void Text(string text, bool isBold = false)
    {
        foreach (var line in TextWrap.Lines(text, WidthMm, TextMm, isBold))
        {
            Put([new Lettering(line, new(0, -TextMm), TextMm, IsBold: isBold)], PitchMm);
        }
    }

    /// <summary>Paragraphs with a dash before each.</summary>
    public void List(IEnumerable<string> items)
    {
        const double IndentMm = 4;
        foreach (var item in items)
        {
            foreach (var (i, line) in TextWrap.Lines(item, WidthMm - IndentMm, TextMm, isBold: false).Index())
            {
                Figure[] dash = i == 0 ? [Stroke.Open(LineRole.Mark, new(0, -TextMm / 2), new(2, -TextMm / 2))] : [];
                Put([.. dash, new Lettering(line, new(IndentMm, -TextMm), TextMm)], PitchMm);
            }
        }
    }

    /// <summary>A table; its heads are repeated on every page it reaches. A short one stays whole.</summary>
    public void Rows(Table table, IEnumerable<ImmutableArray<string>> rows)
    {
        var head = table.Head();
        var isHeadDue = true;
        var drawn = rows.Select(cells => table.Row(cells)).ToList();
        var wholeMm = head.HeightMm + drawn.Sum(row => row.HeightMm);
        if (wholeMm <= _frame.HeightMm * WholePart)
        {
            BreakUnless(wholeMm);
        }

        foreach (var (figures, height) in drawn)
        {
            isHeadDue |= BreakUnless(height + (isHeadDue ? head.HeightMm : 0));
            if (isHeadDue)
            {
                Put(head.Figures, head.HeightMm);
                isHeadDue = false;
            }

            Put(figures, height);
        }
    }

    /// <summary>A sheet as a picture, as wide as the page allows.</summary>
    public void Picture(Sheet sheet)
    {
        var scale = ScaleOf(sheet);
        var height = sheet.HeightMm * scale;
        Put([new Inset(sheet.Figures, new(0, 0, sheet.WidthMm, sheet.HeightMm), new(0, -height), scale)], height + 2);
    }

    /// <summary>Figures that stay together, their upper left corner at the origin.</summary>
    public void Block(ImmutableArray<Figure> figures, double heightMm) => Put(figures, heightMm);

    /// <summary>Goes on at the top of a page.</summary>
    public void NewPage() => BreakUnless(double.PositiveInfinity);

    private double ScaleOf(Sheet picture) => Math.Min(WidthMm / picture.WidthMm, _frame.HeightMm * 0.9 / picture.HeightMm);

    /// <summary>The pages, each with a footer.</summary>
    public ImmutableArray<Sheet> Pages(string name, string title, string footer) =>
    [
        .. _pages.Select((figures, i) => new Sheet(
            $"{name}-{i + 1}",
            title,
            _paper.WidthMm,
            _paper.HeightMm,
            [.. figures, .. Foot(footer, Say.Of($"page {i + 1} of {_pages.Count}"))])),
    ];

    private IEnumerable<Figure> Foot(string footer, string page)
    {
        var y = _frame.Bottom - FooterMm + 1;
        var room = WidthMm - TextWidth.Of(page, 2, isBold: false) - 4;
        yield return Stroke.Open(LineRole.Note, new(_frame.Left, y + 4), new(_frame.Right, y + 4));
        yield return new Lettering(TextWidth.Shortened(footer, room, 2, isBold: false), new(_frame.Left, y), 2);
        yield return new Lettering(page, new(_frame.Right, y), 2, TextAnchor.Right);
    }

    /// <summary>Starts a new page when less than so much is left; whether it did.</summary>
    private bool BreakUnless(double neededMm)
    {
        if (_y - neededMm >= _frame.Bottom || IsAtTop)
        {
            return false;
        }

        _pages.Add([]);
        _y = _frame.Top;
        return true;
    }

    private void Put(ImmutableArray<Figure> figures, double heightMm)
    {
        BreakUnless(heightMm);
        _pages[^1].AddRange(Figures.Moved(figures, new(_frame.Left, _y)));
        _y -= heightMm;
    }
}
