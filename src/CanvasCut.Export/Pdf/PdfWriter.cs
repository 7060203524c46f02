using CanvasCut.Drawing;
using CanvasCut.Export.Skia;
using SkiaSharp;

namespace CanvasCut.Export.Pdf;

/// <summary>Writes sheets as the pages of a PDF file, true to size, with the fonts in it.</summary>
public static class PdfWriter
{
    private const double PointsInMm = 72 / 25.4;

    /// <summary>The largest page side that PDF viewers show true to size: 14,400 points (PDF Reference 1.6, appendix C).</summary>
    private const double LargestSideMm = 14400 / 72.0 * 25.4;

    /// <summary>Writes one page a sheet.</summary>
    /// <param name="sheets">The pages; at least one.</param>
    /// <param name="title">What a viewer shows as the document's title.</param>
    /// <param name="output">Where to; stays open.</param>
    /// <param name="language">The code of the language that is printed.</param>
    /// <exception cref="ArgumentException">There is no sheet, or one is longer than 5080 mm.</exception>
    public static void Write(IReadOnlyList<Sheet> sheets, string title, Stream output, string language = "en")
    {
        if (sheets.Count == 0)
        {
            throw new ArgumentException("A PDF file needs at least one page.", nameof(sheets));
        }

        if (sheets.FirstOrDefault(sheet => Math.Max(sheet.WidthMm, sheet.HeightMm) > LargestSideMm) is { } large)
        {
            throw new ArgumentException($"\"{large.Title}\" is longer than {LargestSideMm:0} mm, the most a PDF page can be.", nameof(sheets));
        }

        using var pdf = new MemoryStream();
        WritePages(sheets, pdf);
        output.Write(PdfFinish.Of(pdf.ToArray(), (title, language), [.. sheets.Select(sheet => (sheet.WidthMm * PointsInMm, sheet.HeightMm * PointsInMm))]));
    }

    private static void WritePages(IReadOnlyList<Sheet> sheets, Stream pdf)
    {
        var metadata = new SKDocumentPdfMetadata(SKDocumentPdfMetadata.DefaultRasterDpi, SKDocumentPdfMetadata.DefaultEncodingQuality)
        {
            Creator = "CanvasCut",
            Producer = "CanvasCut",
            Creation = DateTime.UnixEpoch,
            Modified = DateTime.UnixEpoch,
        };
        using var document = SKDocument.CreatePdf(pdf, metadata);
        foreach (var sheet in sheets)
        {
            WritePage(sheet, document);
        }

        document.Close();
    }

    private static void WritePage(Sheet sheet, SKDocument document)
    {
        var (width, height) = (Math.Ceiling(sheet.WidthMm * PointsInMm), Math.Ceiling(sheet.HeightMm * PointsInMm));
        using var canvas = document.BeginPage((float)width, (float)height);

        // The page is cut to its exact size afterwards, and PDF measures from the bottom.
        canvas.Translate(0, (float)(height - (sheet.HeightMm * PointsInMm)));
        canvas.Scale((float)PointsInMm);
        new SheetPainter(canvas).Paint(sheet);
        document.EndPage();
    }
}
