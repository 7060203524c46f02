using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

public sealed class PagePackingTests
{
    private static readonly TileJob Words = new("Templates", "a job", "a footer");

    private static readonly Gen<ImmutableArray<(int Width, int Height)>> Sizes =
        Gen.Select(Gen.Int[20, 400], Gen.Int[20, 400]).Array[1, 9].Select(sizes => sizes.ToImmutableArray());

    [Fact]
    public void Small_pieces_share_a_page_and_the_page_and_the_map_name_them()
    {
        var pages = Pages([(90, 60), (80, 50), (70, 120)]);

        Assert.Equal(2, pages.Length);
        Assert.All(pages, page => Assert.Contains(page.Figures.OfType<Lettering>(), text => text.Text == "piece 0 · piece 1 · piece 2"));
        Assert.Equal("piece 0 · piece 1 · piece 2, A1", pages[1].Title);
    }

    [Fact]
    public void A_page_of_many_pieces_names_all_at_its_foot()
    {
        var page = Pages([.. Enumerable.Repeat((20, 20), 12)])[1];
        var words = string.Join(' ', page.Figures.OfType<Lettering>().Select(text => text.Text));

        Assert.All(Enumerable.Range(0, 12), i => Assert.Contains($"piece {i}", words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_that_shares_a_page_is_whole_upright_and_8_mm_from_the_next() => Sizes.Sample(sizes =>
    {
        foreach (var page in Pages(sizes).Skip(1).Where(page => page.Title.Contains('·', StringComparison.Ordinal)))
        {
            var window = Assert.Single(page.Figures.OfType<Inset>());
            var pieces = window.Figures.OfType<Stroke>().Where(stroke => stroke.Role == LineRole.Cut).Select(stroke => Box.Holding(stroke.Points)).ToList();
            var turns = window.Figures.OfType<Lettering>().Select(text => text.TurnDegrees).ToList();

            Assert.InRange(pieces.Count, 2, 9);
            Assert.Equal(pieces.Count, turns.Count);
            Assert.Single(turns.Distinct());
            Assert.All(pieces, piece => Assert.True(window.Window.Holds(piece)));
            Assert.All(
                pieces.SelectMany((first, i) => pieces.Skip(i + 1).Select(second => (first, second))),
                pair => Assert.True(pair.first.Grown(8 - 1e-6).Shared(pair.second).IsEmpty));
        }
    });

    [Fact]
    public void Every_piece_is_printed_and_sharing_never_takes_more_pages() => Sizes.Sample(sizes =>
    {
        var (pages, alone) = (Pages(sizes), sizes.Sum(size => Pages([size]).Length - 1));
        var titles = pages.Skip(1).SelectMany(page => page.Title.Split(", ")[0].Split(" · ")).Distinct();

        Assert.InRange(pages.Length, 2, 1 + alone);
        Assert.Equal(Enumerable.Range(0, sizes.Length).Select(i => $"piece {i}"), titles.Order(StringComparer.Ordinal));
    });

    /// <summary>Worked by hand: beside 10 mm margins, a 12 mm footer and half a millimetre for lines, 189.5 mm are 90 + 8 + 91.5.</summary>
    [Theory]
    [InlineData(91, 2)]
    [InlineData(92, 3)]
    public void Two_pieces_share_a_page_only_when_they_fit(int secondMm, int pages) =>
        Assert.Equal(pages, Pages([(90, 260), (secondMm, 260)]).Length);

    private static ImmutableArray<Sheet> Pages(ImmutableArray<(int Width, int Height)> sizes) =>
        TilePages.Of([.. sizes.Select((size, i) => Piece(i, size.Width, size.Height))], Words, PaperSize.A4, 10, 10);

    private static TilePiece Piece(int number, double widthMm, double heightMm) => new($"piece-{number}", $"piece {number}",
    [
        Stroke.Closed(LineRole.Cut, Outline.Of(new(100, -50, 100 + widthMm, heightMm - 50))),
        new Lettering("up", new(101, -40), 2),
    ]);
}
