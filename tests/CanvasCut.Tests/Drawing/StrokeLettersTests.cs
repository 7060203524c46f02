using System.Text;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

public sealed class StrokeLettersTests
{
    private const double HeightMm = 7;

    /// <summary>Printable ASCII and what our own sheets say besides.</summary>
    private static readonly string Needed = string.Concat(Enumerable.Range(0x20, 0x5f).Select(code => (char)code)) + "×·°½¼¾⅛⅜⅝⅞–‘’“”′″…";

    [Fact]
    public void Every_character_that_our_sheets_need_has_strokes_of_its_own()
    {
        var known = StrokeLetters.Characters.ToHashSet();

        Assert.All(Needed.EnumerateRunes(), character => Assert.Contains(character, known));
        Assert.All(Needed.EnumerateRunes().Where(character => !Rune.IsWhiteSpace(character)), character => Assert.NotEmpty(StrokeLetters.Of(Letter(character))));
    }

    /// <summary>The cell: from a descender below the base line to a capital's height, and as wide as the text is said to be.</summary>
    [Fact]
    public void Every_letter_stays_within_its_cell()
    {
        foreach (var letter in StrokeLetters.Characters.Where(character => !Rune.IsWhiteSpace(character)).Select(Letter))
        {
            var box = Box.Holding(StrokeLetters.Of(letter).Cast<Stroke>().SelectMany(stroke => stroke.Points));

            Assert.True(new Box(0, -4 / 14.0 * HeightMm, StrokeLetters.WidthMm(letter), HeightMm).Grown(1e-9).Holds(box), letter.Text);
            Assert.Equal(StrokeLetters.WidthMm(letter), box.WidthMm, 0.3 * HeightMm);
        }
    }

    [Fact]
    public void No_two_letters_look_alike()
    {
        var drawn = StrokeLetters.Characters.Select(character => string.Join(
            ' ', StrokeLetters.Of(Letter(character)).Cast<Stroke>().Select(stroke => string.Join(';', stroke.Points))));

        Assert.Distinct(drawn);
    }

    [Theory]
    [InlineData("Finished 1125 mm (44 5/16 in) athwart")]
    [InlineData("iiiiii")]
    [InlineData("WWWWMMMM@@@")]
    public void A_text_takes_no_more_room_than_when_printed(string text)
    {
        var printed = new Lettering(text, new(0, 0), HeightMm);

        Assert.True(StrokeLetters.WidthMm(printed) <= TextWidth.Of(printed) + 1e-9);
        Assert.True(StrokeLetters.WidthMm(printed) > 0.5 * TextWidth.Of(printed));
    }

    [Fact]
    public void The_anchor_tells_which_part_stands_at_the_place()
    {
        foreach (var (anchor, part) in new[] { (TextAnchor.Left, 0), (TextAnchor.Middle, 0.5), (TextAnchor.Right, 1) })
        {
            var text = new Lettering("HH", new(100, 20), HeightMm, anchor);
            var box = Figures.BoundsOf(StrokeLetters.Of(text));

            Assert.Equal(100 - (part * StrokeLetters.WidthMm(text)), box.Left, 1e-9);
            Assert.Equal((20, 20 + HeightMm), (Math.Round(box.Bottom, 9), Math.Round(box.Top, 9)));
        }
    }

    [Fact]
    public void A_turned_text_is_the_upright_one_turned()
    {
        var upright = new Lettering("R2", new(3, 4), HeightMm, TextAnchor.Middle);
        var expected = Figures.Turned(StrokeLetters.Of(upright), 1).Cast<Stroke>().SelectMany(stroke => stroke.Points);
        var turned = StrokeLetters.Of((Lettering)Figures.Turned([upright], 1)[0]).Cast<Stroke>().SelectMany(stroke => stroke.Points);

        Assert.All(expected.Zip(turned), pair => Assert.Equal(0, pair.First.DistanceMm(pair.Second), 1e-9));
    }

    [Fact]
    public void A_letter_that_is_not_known_becomes_a_box()
    {
        var stroke = Assert.IsType<Stroke>(Assert.Single(StrokeLetters.Of(new Lettering("Ж", new(0, 0), HeightMm))));

        Assert.Equal(stroke.Points[0], stroke.Points[^1]);
        Assert.Equal(HeightMm, Box.Holding(stroke.Points).HeightMm, 1e-9);
    }

    [Fact]
    public void Texts_behind_windows_become_strokes_too()
    {
        var inset = new Inset([new Lettering("A", new(0, 0), HeightMm)], new(0, 0, 10, 10), new(0, 0), 1);

        Assert.All(Assert.IsType<Inset>(Assert.Single(StrokeLetters.In([inset]))).Figures, figure => Assert.Equal(LineRole.Note, Assert.IsType<Stroke>(figure).Role));
    }

    private static Lettering Letter(Rune character) => new(character.ToString(), new(0, 0), HeightMm);
}
