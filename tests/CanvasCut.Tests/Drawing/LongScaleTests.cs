using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

public sealed class LongScaleTests
{
    private static readonly TileJob Words = new("Templates", "a job", "a footer");

    [Fact]
    public void A_piece_joined_both_ways_bears_a_scale_each_way()
    {
        var scales = ScalesOf("A4", 1300, 700);

        Assert.Equal([(1000, 0), (0, 700)], scales.Select(scale => (Math.Round(scale.WidthMm, 9), Math.Round(scale.HeightMm, 9))).Order().Reverse());
    }

    [Fact]
    public void A_piece_joined_one_way_bears_one_scale() => Assert.Equal(650, Assert.Single(ScalesOf("A4", 100, 655)).HeightMm, 1e-9);

    [Fact]
    public void A_piece_on_one_page_bears_none() => Assert.Empty(ScalesOf("A4", 100, 200));

    [Theory]
    [InlineData("A4", 1300, 700)]
    [InlineData("Letter", 2040, 410)]
    [InlineData("A0", 1300, 700)]
    [InlineData("A0", 2500, 2500)]
    public void A_scale_lies_within_the_piece_and_crosses_a_join(string paper, double widthMm, double heightMm)
    {
        var pages = Pages(paper, widthMm, heightMm).Skip(1).SelectMany(page => page.Figures.OfType<Inset>()).ToList();
        var piece = pages.SelectMany(page => page.Figures).OfType<Stroke>().First(stroke => stroke.Role == LineRole.Cut);

        Assert.All(ScalesOf(paper, widthMm, heightMm), scale =>
        {
            Assert.True(Box.Holding(piece.Points).Holds(scale));
            Assert.InRange(pages.Count(page => !page.Window.Shared(scale).IsEmpty), 2, 99);
        });
    }

    /// <summary>Inches of 25.4 mm, by definition; 620 mm are 24.409 in, nearest to 24 13/32.</summary>
    [Fact]
    public void A_scale_says_at_both_ends_how_long_it_is()
    {
        var texts = Texts(Pages("A4", 150, 628));

        Assert.Equal(2, texts.Where(text => text == "long scale y: 620 mm = 24 13/32 in").Distinct().Count() + texts.Count(text => text.Contains("of 620 mm = 24 13/32 in", StringComparison.Ordinal)));
        Assert.InRange(texts.Count(text => text == "long scale y: 620 mm = 24 13/32 in"), 2, 6);
        Assert.Contains("24 in = 609.6 mm", texts);
    }

    [Fact]
    public void A_metre_and_36_inches_have_their_ticks()
    {
        var ticks = Distinct(Pages("A4", 1300, 150)).Where(stroke => stroke is { IsClosed: false, Points.Length: 2 }).ToList();
        var line = ticks.Single(stroke => Math.Abs(Box.Holding(stroke.Points).WidthMm - 1000) < 1e-9);
        var onLine = ticks.Where(tick => tick.Points[0].Y == line.Points[0].Y && tick.Points[0].X == tick.Points[1].X).ToList();

        Assert.Equal(Enumerable.Range(0, 1001).Select(mm => (double)mm), Places(onLine.Where(tick => tick.Points[1].Y > tick.Points[0].Y)));
        Assert.Equal(Enumerable.Range(0, 145).Select(quarter => Math.Round(quarter * 6.35, 6)), Places(onLine.Where(tick => tick.Points[1].Y < tick.Points[0].Y)));

        IEnumerable<double> Places(IEnumerable<Stroke> some) => some.Select(tick => Math.Round(tick.Points[0].X - line.Points[0].X, 6)).Order();
    }

    [Fact]
    public void The_map_has_a_blank_for_every_page_and_every_scale()
    {
        var pages = Pages("A4", 1300, 700);
        var map = Texts([pages[0]]);

        Assert.All(Enumerable.Range(2, pages.Length - 1), number => Assert.Contains(map, text => text.StartsWith($"{number} ", StringComparison.Ordinal)));
        Assert.Contains("of 1000 mm = 39 3/8 in", map);
        Assert.Contains("of 700 mm = 27 9/16 in", map);
        Assert.Contains(map, text => text.Contains("within 0.5 mm", StringComparison.Ordinal) && text.Contains("0.15 %", StringComparison.Ordinal));
    }

    private static IEnumerable<Box> ScalesOf(string paper, double widthMm, double heightMm) =>
        Distinct(Pages(paper, widthMm, heightMm)).Where(stroke => stroke is { Role: LineRole.Note, IsClosed: false }).Select(stroke => Box.Holding(stroke.Points)).Where(box => Math.Max(box.WidthMm, box.HeightMm) > 150);

    /// <summary>The lines in the planes of the pieces, each once however many pages show it.</summary>
    private static IEnumerable<Stroke> Distinct(IEnumerable<Sheet> pages) =>
        pages.SelectMany(page => page.Figures.OfType<Inset>()).SelectMany(inset => inset.Figures.OfType<Stroke>()).Distinct();

    private static List<string> Texts(IEnumerable<Sheet> pages) =>
        [.. pages.SelectMany(page => page.Figures.Concat(page.Figures.OfType<Inset>().SelectMany(inset => inset.Figures))).OfType<Lettering>().Select(text => text.Text)];

    private static ImmutableArray<Sheet> Pages(string paper, double widthMm, double heightMm) => TilePages.Of(
        [new("piece", "Piece", [Stroke.Closed(LineRole.Cut, Outline.Of(new(0, 0, widthMm, heightMm)))])], Words, PaperSize.Named(paper)!, 10, 10);
}
