using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

public sealed class TilePagesTests
{
    private const double MarginMm = 10;

    private const double OverlapMm = 12;

    private static readonly TileJob Words = new("Templates", "a job", "a footer");

    private static readonly TilePiece Large = Piece("large", 1300, 700);

    public static TheoryData<string> Papers { get; } = new(PaperSize.Standard.Select(paper => paper.Name));

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_page_has_both_squares_of_exact_size(string paper) =>
        Assert.All(Pages(paper, Large, Piece("small", 60, 80)), page =>
        {
            var squares = page.Figures.OfType<Stroke>().Where(stroke => stroke is { IsClosed: true, Points.Length: 4 }).ToList();
            Assert.Contains(squares, stroke => IsSquare(stroke, 100));
            Assert.Contains(squares, stroke => IsSquare(stroke, 4 * 25.4));
        });

    [Theory]
    [MemberData(nameof(Papers))]
    public void Nothing_is_drawn_in_the_printers_margin(string paper) =>
        Assert.All(Pages(paper, Large, Piece("small", 60, 80)), page =>
            Assert.All(page.Figures, figure => Assert.True(new Box(0, 0, page.WidthMm, page.HeightMm).Grown(1e-9 - MarginMm).Holds(Figures.BoundsOf(figure)), $"{page.Name}: {figure}")));

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_point_of_a_piece_is_on_some_page_at_full_size(string paper)
    {
        var windows = Windows(Pages(paper, Large)).ToList();
        var line = windows.SelectMany(window => window.Figures.OfType<Stroke>()).First(stroke => stroke.Role == LineRole.Cut);

        Assert.All(windows, window => Assert.Equal(1, window.Scale));
        for (var part = 0.0; part <= 1; part += 0.001)
        {
            for (var i = 0; i < line.Points.Length; i++)
            {
                var point = line.Points[i].Toward(line.Points[(i + 1) % line.Points.Length], part);
                Assert.Contains(windows, window => window.Window.Holds(new(point.X, point.Y, point.X, point.Y)) && window.Figures.Contains(line));
            }
        }
    }

    [Fact]
    public void Neighbours_show_the_same_marks_at_the_same_place_of_the_piece()
    {
        var windows = Windows(Pages("A4", Large)).ToList();
        var pairs = windows.SelectMany((first, i) => windows.Skip(i + 1).Select(second => (first, second)))
            .Where(pair => pair.first.Window.Shared(pair.second.Window) is { IsEmpty: false } strip && Math.Max(strip.WidthMm, strip.HeightMm) > 100)
            .ToList();

        Assert.NotEmpty(pairs);
        Assert.All(pairs, pair =>
        {
            var strip = pair.first.Window.Shared(pair.second.Window);
            var marks = Diamonds(pair.first).Where(strip.Holds).ToList();
            Assert.InRange(marks.Count, 2, 10);
            Assert.Equal(marks, Diamonds(pair.second).Where(strip.Holds));
        });
    }

    [Fact]
    public void Pages_are_named_by_row_and_column_and_numbered()
    {
        var pages = Pages("A4", Large);
        var texts = pages.Select(page => page.Figures.OfType<Lettering>().Select(text => text.Text).ToList()).ToList();

        Assert.Equal("map", pages[0].Name);
        Assert.Equal("large-a1", pages[1].Name);
        Assert.Equal("large-c8", pages[^1].Name);
        Assert.Contains("A1", texts[1]);
        Assert.Contains("cut here, lay on A2", texts[1]);
        Assert.Contains("cut here, lay on B1", texts[1]);
        Assert.Contains("glue: A1 lies up to this line", texts[2]);
        Assert.All(texts, (text, i) => Assert.Contains(text, line => line.EndsWith($"page {i + 1} of {pages.Length}", StringComparison.Ordinal)));
    }

    /// <summary>So many pieces with so long names leave each some 12 mm of height; the letters may not push a picture out of its cell.</summary>
    [Fact]
    public void The_map_of_many_pieces_with_long_names_shows_a_picture_of_each()
    {
        var name = string.Join(' ', Enumerable.Repeat("a long name", 8));
        var strokes = ImmutableArray.Create<Figure>(Stroke.Closed(LineRole.Cut, Outline.Of(new(0, 0, 400, 600))));
        var pieces = Enumerable.Range(0, 60).Select(i => new TilePiece($"piece-{i}", $"{name} {i}", strokes));
        var map = TilePages.Of([.. pieces], Words, PaperSize.A4, MarginMm, OverlapMm)[0];

        Assert.Equal(60, map.Figures.OfType<Tint>().Count());
        Assert.All(map.Figures.OfType<Tint>(), tint => Assert.InRange(tint.Outline.Bounds.HeightMm, 2, 20));
    }

    [Fact]
    public void The_map_shows_every_page_once()
    {
        var pages = Pages("A4", Large);
        var map = pages[0].Figures.OfType<Lettering>().Select(text => text.Text).ToList();

        Assert.All(
            from row in "ABC" from column in Enumerable.Range(1, 8) select $"{row}{column}",
            label => Assert.Single(map, label));
    }

    [Theory]
    [InlineData(189, 264)]
    [InlineData(264, 189)]
    [InlineData(276, 177)]
    public void A_piece_that_one_page_can_hold_is_not_cut_by_a_join(double widthMm, double heightMm) =>
        Assert.Equal(2, Pages("A4", Piece("small", widthMm, heightMm)).Length);

    [Fact]
    public void The_squares_keep_off_the_words_of_a_piece_where_they_can()
    {
        ImmutableArray<Figure> label = [.. Enumerable.Range(0, 8).Select(i => new Lettering("forward, right side up", new(20, 20 + (8 * i)), 4))];
        var piece = Piece("small", 180, 250);
        var page = Pages("A4", piece with { Figures = [.. piece.Figures, .. label] })[1];
        var window = Assert.Single(Windows([page]));
        var square = page.Figures.OfType<Stroke>().First(stroke => IsSquare(stroke, 4 * 25.4));

        Assert.All(window.Figures.OfType<Lettering>(), text =>
            Assert.True(Figures.BoundsOf(text).MovedBy(window.At - window.Window.LowerLeft).Shared(Box.Holding(square.Points)).IsEmpty));
    }

    [Theory]
    [InlineData(1300, 700)]
    [InlineData(800, 600)]
    [InlineData(60, 80)]
    public void A_piece_narrower_than_the_roll_is_printed_in_one(double widthMm, double heightMm)
    {
        ImmutableArray<TilePiece> pieces = [Piece("one", widthMm, heightMm)];

        Assert.Equal(2, TilePages.Of(pieces, Words, RollPaper.For(914, pieces, MarginMm), MarginMm, OverlapMm).Length);
    }

    [Fact]
    public void Paper_that_cannot_hold_the_squares_is_refused() =>
        Assert.Throws<ArgumentException>(() => TilePages.Of([Large], Words, new("card", 100, 150), 5, 5));

    private static ImmutableArray<Sheet> Pages(string paper, params ImmutableArray<TilePiece> pieces) =>
        TilePages.Of(pieces, Words, PaperSize.Named(paper)!, MarginMm, OverlapMm);

    private static IEnumerable<Inset> Windows(IEnumerable<Sheet> pages) => pages.SelectMany(page => page.Figures.OfType<Inset>());

    private static IEnumerable<Box> Diamonds(Inset window) =>
        window.Figures.OfType<Stroke>().Where(stroke => stroke is { Role: LineRole.Note, IsClosed: true }).Select(stroke => Box.Holding(stroke.Points));

    private static bool IsSquare(Stroke stroke, double sideMm)
    {
        var box = Box.Holding(stroke.Points);
        return stroke is { IsClosed: true, Role: LineRole.Note } && Math.Abs(box.WidthMm - sideMm) < 1e-9 && Math.Abs(box.HeightMm - sideMm) < 1e-9;
    }

    private static TilePiece Piece(string name, double widthMm, double heightMm) => new(name, name,
    [
        Stroke.Closed(LineRole.Cut, RoundedBox.Of(new(0, 0, widthMm, heightMm), 12)),
        Stroke.Closed(LineRole.Stitch, Outline.Of(new(15, 15, widthMm - 15, heightMm - 15))),
        Stroke.Open(LineRole.Mark, new(widthMm / 2, 0), new(widthMm / 2, heightMm)),
    ]);
}
