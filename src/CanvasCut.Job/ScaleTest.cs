using CanvasCut.Drawing.Pages;
using CanvasCut.Export.Pdf;
using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>The page by which a printer is measured.</summary>
public static class ScaleTest
{
    /// <summary>What an office printer leaves blank along every edge.</summary>
    private const double MarginMm = 10;

    /// <summary>The papers it can be had on.</summary>
    public static IReadOnlyList<string> Papers { get; } = [.. PaperSize.Standard.Select(paper => paper.Name)];

    /// <summary>The page as a PDF file; null when there is no paper of that name.</summary>
    /// <param name="paperName">One of <see cref="Papers"/>, in capitals or not.</param>
    public static ReadOnlyMemory<byte>? Pdf(string paperName)
    {
        if (PaperSize.Named(paperName) is not { } paper)
        {
            return null;
        }

        using var stream = new MemoryStream();
        var layout = TilePages.LayoutOf(paper, (MarginMm, 0), PrintCorrection.None);
        PdfWriter.Write([ScaleSheet.Of(layout, $"CanvasCut {JobRun.Version}")], Say.Of("Scale test"), stream, Languages.Code);
        return stream.ToArray();
    }
}
