using CanvasCut.Drawing.Pages;
using CanvasCut.Export.Pdf;
using CanvasCut.Language;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>The page to take to the boat.</summary>
public static class MeasuringPage
{
    /// <summary>The papers it can be had on.</summary>
    public static IReadOnlyList<string> Papers { get; } = [PaperSize.A4.Name, PaperSize.Letter.Name];

    /// <summary>The page as a PDF file; null when it cannot be had on such paper.</summary>
    /// <param name="paperName">One of <see cref="Papers"/>, in capitals or not.</param>
    public static ReadOnlyMemory<byte>? Pdf(string paperName)
    {
        if (!Papers.Contains(paperName, StringComparer.OrdinalIgnoreCase))
        {
            return null;
        }

        using var stream = new MemoryStream();
        PdfWriter.Write([MeasuringSheet.Of(PaperSize.Named(paperName)!, $"CanvasCut {JobRun.Version}")], Say.Of("Measuring sheet"), stream, Languages.Code);
        return stream.ToArray();
    }
}
