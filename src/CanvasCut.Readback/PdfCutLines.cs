using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Content;
using PdfSharp.Pdf.IO;

namespace CanvasCut.Readback;

/// <summary>Reads the cut lines of a PDF file: closed lines of the cut line's width, without dashes.</summary>
/// <remarks>PDF has no place for a line's role. On our sheets no other line is 0.5 mm wide.</remarks>
internal static class PdfCutLines
{
    /// <summary>The lines page after page, in millimetres.</summary>
    /// <exception cref="InvalidDataException">It is no PDF file, or a broken one.</exception>
    public static IEnumerable<ImmutableArray<Point>> In(byte[] content)
    {
        try
        {
            using var stream = new MemoryStream(content);
            using var document = PdfReader.Open(stream, PdfDocumentOpenMode.Import);
            return document.Pages.Cast<PdfPage>().SelectMany(page => LinesOf(page)).ToList();
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            // The reader throws whatever comes: its own exceptions, null references, index and format errors.
            throw new InvalidDataException(Say.Of($"the PDF file is broken or cut short: {exception.Message}"), exception);
        }
    }

    private static ImmutableArray<ImmutableArray<Point>> LinesOf(PdfPage page)
    {
        var states = page.Resources.Elements.GetDictionary("/ExtGState");
        var interpreter = new PdfPaths(name => WidthIn(states?.Elements.GetDictionary(name)));
        interpreter.Run(ContentReader.ReadContent(page));
        return interpreter.CutLines;
    }

    private static double? WidthIn(PdfDictionary? state) => state?.Elements.ContainsKey("/LW") == true ? state.Elements.GetReal("/LW") : null;
}
