using CanvasCut.Drawing;
using PdfSharp.WPFonts;
using SkiaSharp;

namespace CanvasCut.Tests.Drawing;

public sealed class TextWidthTests
{
    /// <summary>What the sheets need beside ASCII and Latin-1.</summary>
    private const string Needed = "–—’‘“”…×°²³½¼¾⅛⅜⅝⅞≥≤±Ø→←";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_letter_is_as_wide_as_the_font_says(bool isBold)
    {
        using var typeface = Typeface(isBold);
        using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };

        Assert.All(LetterTable.Characters, character =>
        {
            Assert.NotEqual(0, font.GetGlyph(character.Value));
            var ours = TextWidth.Of(character.ToString(), LetterTable.CapitalPart * typeface.UnitsPerEm, isBold);
            Assert.Equal(font.MeasureText(character.ToString()), ours, 1e-6);
        });
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_capital_is_as_high_as_asked_for(bool isBold)
    {
        using var typeface = Typeface(isBold);
        using var font = new SKFont(typeface, (float)TextWidth.EmMm(100)) { Hinting = SKFontHinting.None };
        using var outline = font.GetTextPath("H", new SKPoint(0, 0));

        Assert.Equal(100, outline.Bounds.Height, 1e-3);
    }

    [Fact]
    public void Everything_the_sheets_say_can_be_printed()
    {
        var latin = Enumerable.Range(' ', '~' - ' ' + 1).Concat(Enumerable.Range(0xA0, 0x60)).Select(code => (char)code);

        Assert.All(latin.Concat(Needed), character => Assert.True(LetterTable.Has(new(character)), $"{character}"));
    }

    [Fact]
    public void An_unknown_letter_is_as_wide_as_an_m() =>
        Assert.Equal(TextWidth.Of("m", 3, isBold: false), TextWidth.Of("漢", 3, isBold: false));

    [Fact]
    public void A_shortened_text_fits_and_a_short_one_is_left_alone() =>
        Gen.Select(Gen.String[Gen.Char[' ', 'z'], 1, 60], Gen.Double[10, 100]).Sample((text, widthMm) =>
        {
            var shortened = TextWidth.Shortened(text, widthMm, 3, isBold: false);

            Assert.InRange(TextWidth.Of(shortened, 3, isBold: false), 0, widthMm);
            Assert.Equal(TextWidth.Of(text, 3, isBold: false) <= widthMm, shortened == text);
        });

    private static SKTypeface Typeface(bool isBold)
    {
        using var data = SKData.CreateCopy(isBold ? FontDataHelper.SegoeWPBold : FontDataHelper.SegoeWP);
        return SKTypeface.FromData(data);
    }
}
