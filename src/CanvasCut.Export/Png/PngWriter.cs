using CanvasCut.Drawing;
using CanvasCut.Export.Skia;
using SkiaSharp;

namespace CanvasCut.Export.Png;

/// <summary>Writes a sheet as a picture, black and grey on white.</summary>
public static class PngWriter
{
    private const int BestQuality = 100;

    /// <summary>At one byte a dot a picture of this size still fits into a small computer's memory.</summary>
    private const int LargestSideDots = 16384;

    /// <summary>Writes one sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="dotsPerMm">How many dots a millimetre has on each side; above zero.</param>
    /// <param name="output">Where to; stays open.</param>
    /// <exception cref="ArgumentException">A side would have more than 16,384 dots.</exception>
    public static void Write(Sheet sheet, double dotsPerMm, Stream output)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerMm);
        var size = new SKImageInfo((int)Math.Ceiling(sheet.WidthMm * dotsPerMm), (int)Math.Ceiling(sheet.HeightMm * dotsPerMm), SKColorType.Gray8, SKAlphaType.Opaque);
        if (Math.Max(size.Width, size.Height) > LargestSideDots)
        {
            throw new ArgumentException($"A picture of {size.Width} x {size.Height} dots is too large; use fewer dots a millimetre.", nameof(dotsPerMm));
        }

        using var surface = SKSurface.Create(size);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)dotsPerMm);
        new SheetPainter(surface.Canvas).Paint(sheet);
        using var picture = surface.Snapshot();
        using var bytes = picture.Encode(SKEncodedImageFormat.Png, BestQuality);
        bytes.SaveTo(output);
    }
}
