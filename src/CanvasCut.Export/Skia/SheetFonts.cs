using System.Text;
using CanvasCut.Drawing;
using PdfSharp.WPFonts;
using SkiaSharp;

namespace CanvasCut.Export.Skia;

/// <summary>The two fonts that sheets are printed with, loaded from a package, so that no system font is needed.</summary>
/// <remarks>They are loaded once and shared by all threads; a font in a size is each caller's own.</remarks>
internal static class SheetFonts
{
    private const char ForUnknown = '?';

    private static readonly SKTypeface Regular = Load(FontDataHelper.SegoeWP);
    private static readonly SKTypeface Bold = Load(FontDataHelper.SegoeWPBold);

    /// <summary>The font in which capitals are so high; the caller disposes of it.</summary>
    public static SKFont Of(double heightMm, bool isBold) => new(isBold ? Bold : Regular, (float)TextWidth.EmMm(heightMm))
    {
        // Hinting and whole-pixel steps would make the same text wider or narrower with the resolution.
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
        Subpixel = true,
    };

    /// <summary>The text with "?" for every character the fonts lack, rather than an empty box.</summary>
    public static string Printable(string text) =>
        string.Concat(text.EnumerateRunes().Select(character => LetterTable.Has(character) ? character : new Rune(ForUnknown)));

    private static SKTypeface Load(byte[] bytes)
    {
        using var data = SKData.CreateCopy(bytes);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException("The package's font cannot be read.");
    }
}
