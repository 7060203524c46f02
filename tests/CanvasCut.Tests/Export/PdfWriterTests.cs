using System.Globalization;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Export.Pdf;
using CanvasCut.Geometry;
using PdfSharp.Pdf.IO;

namespace CanvasCut.Tests.Export;

public sealed class PdfWriterTests
{
    private const double MmInPoint = 25.4 / 72;

    private static readonly TileJob Words = new("Templates", "a job", "a footer");

    /// <summary>Sizes in points of ISO 216 A4 and ANSI/ASME Y14.1 A (letter), at 72 points an inch.</summary>
    [Fact]
    public void Pages_have_their_published_size_in_points()
    {
        using var stream = new MemoryStream(Written(ExportSamples.A4, ExportSamples.Letter));
        using var document = PdfReader.Open(stream, PdfDocumentOpenMode.Import);

        Assert.Equal(2, document.PageCount);
        Assert.Equal("Pocket & tips", document.Info.Title);
        Assert.Equal(595.276, document.Pages[0].MediaBox.Width, 0.01);
        Assert.Equal(841.890, document.Pages[0].MediaBox.Height, 0.01);
        Assert.Equal(612, document.Pages[1].MediaBox.Width, 0.01);
        Assert.Equal(792, document.Pages[1].MediaBox.Height, 0.01);
    }

    /// <summary>ISO 32000-1: 12.2 viewer preferences, 14.9.2 language, 7.9.4 dates, of which the zone may be left out.</summary>
    [Fact]
    public void It_asks_to_be_printed_at_its_size_on_one_side_and_tells_its_language()
    {
        using var stream = new MemoryStream();
        PdfWriter.Write([ExportSamples.A4], "Vorlagen", stream, "de");
        using var document = PdfReader.Open(stream, PdfDocumentOpenMode.Import);
        var catalog = document.Internals.Catalog;
        var wishes = catalog.Elements.GetDictionary("/ViewerPreferences")!;

        Assert.Equal(("/None", "/Simplex", "de"), (wishes.Elements.GetName("/PrintScaling"), wishes.Elements.GetName("/Duplex"), catalog.Elements.GetString("/Lang")));
        Assert.Equal(("D:20000101000000", "D:20000101000000"), (document.Info.Elements.GetString("/CreationDate"), document.Info.Elements.GetString("/ModDate")));
    }

    /// <summary>A title that looks like parts of the file changes nothing in it.</summary>
    [Theory]
    [InlineData("a /MediaBox [0 0 5 5] b")]
    [InlineData("<</Type /Catalog startxref\n1\n")]
    [InlineData("/CreationDate (D:1)\n/ModDate (D:1)")]
    [InlineData("½ × ) ( \\ 😀")]
    public void A_title_is_only_a_title(string title)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write([ExportSamples.A4], title, stream);
        using var document = PdfReader.Open(stream, PdfDocumentOpenMode.Import);

        Assert.Equal((title, 1), (document.Info.Title, document.PageCount));
    }

    [Fact]
    public void Two_runs_give_the_same_bytes() =>
        Assert.Equal(Written(ExportSamples.A4, ExportSamples.WithInset), Written(ExportSamples.A4, ExportSamples.WithInset));

    /// <summary>qpdf is the witness that the file is whole after its page sizes were corrected.</summary>
    [Fact]
    public void Another_program_finds_nothing_wrong()
    {
        using var folder = new TemporaryFolder();
        var file = Saved(folder, [.. TilePages.Of([Piece], Words, PaperSize.Letter, 10, 10)]);

        Assert.Contains("No syntax or stream encoding errors", OutsideTool.Run("qpdf", "--check", file), StringComparison.Ordinal);
        Assert.DoesNotContain("WARNING", OutsideTool.Run("qpdf", "--check", file), StringComparison.Ordinal);
    }

    /// <summary>Measured in what poppler (Debian package poppler-utils) makes of the file.</summary>
    [Fact]
    public void Another_program_sees_everything_at_its_true_size_and_place()
    {
        var boxes = Measured(ExportSamples.A4, page: 1);

        AssertContains(boxes, Flipped(ExportSamples.MetricSquare, 297));
        AssertContains(boxes, Flipped(ExportSamples.InchSquare, 297));
        AssertContains(boxes, Flipped(ExportSamples.Pocket.Bounds, 297));
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Another_program_measures_both_squares_on_every_template_page(string paper)
    {
        var pages = TilePages.Of([Piece], Words, PaperSize.Named(paper)!, 10, 10);
        using var folder = new TemporaryFolder();
        var file = Saved(folder, [.. pages]);

        for (var page = 1; page <= pages.Length; page++)
        {
            var boxes = Measured(folder, file, page);
            Assert.Contains(boxes, box => IsSquare(box, 100));
            Assert.Contains(boxes, box => IsSquare(box, 101.6));
        }
    }

    [Fact]
    public void Text_can_be_read_and_searched()
    {
        using var folder = new TemporaryFolder();

        Assert.Contains("4⅝ × 3½ in> & 25°", OutsideTool.Run("pdftotext", Saved(folder, ExportSamples.A4), "-"), StringComparison.Ordinal);
    }

    [Fact]
    public void Both_fonts_are_in_the_file()
    {
        using var folder = new TemporaryFolder();
        var rows = OutsideTool.Run("pdffonts", Saved(folder, ExportSamples.A4)).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];

        Assert.Equal(2, rows.Length);
        Assert.All(rows, row => Assert.Matches(@"\byes\s+yes\s+yes\b", row));
    }

    [Fact]
    public void A_page_longer_than_viewers_can_show_is_refused() =>
        Assert.Throws<ArgumentException>(() => Written(ExportSamples.A4 with { WidthMm = 5081 }));

    [Fact]
    public void No_pages_are_refused() => Assert.Throws<ArgumentException>(() => Written());

    private static TilePiece Piece { get; } = new("pocket", "Pocket", [Stroke.Closed(LineRole.Cut, new([new(0, 0), new(420, 0), new(0, 420)]))]);

    private static byte[] Written(params Sheet[] sheets)
    {
        using var output = new MemoryStream();
        PdfWriter.Write(sheets, "Pocket & tips", output);
        return output.ToArray();
    }

    private static string Saved(TemporaryFolder folder, params Sheet[] sheets)
    {
        var file = folder.PathOf("sheets.pdf");
        File.WriteAllBytes(file, Written(sheets));
        return file;
    }

    private static List<Box> Measured(Sheet sheet, int page)
    {
        using var folder = new TemporaryFolder();
        return Measured(folder, Saved(folder, sheet), page);
    }

    /// <summary>The boxes of all paths of a page, in millimetres from its upper left corner.</summary>
    private static List<Box> Measured(TemporaryFolder folder, string file, int page)
    {
        var number = page.ToString(CultureInfo.InvariantCulture);
        var svg = folder.PathOf("page.svg");

        // Left alone it fits the page into one of a whole number of points: the very shrinking that the squares give away.
        OutsideTool.Run("pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", number, "-l", number, file, svg);
        return [.. SvgGeometry.PathBoxes(File.ReadAllText(svg)).Select(box => new Box(box.Left * MmInPoint, box.Bottom * MmInPoint, box.Right * MmInPoint, box.Top * MmInPoint))];
    }

    private static Box Flipped(Box box, double heightMm) => new(box.Left, heightMm - box.Top, box.Right, heightMm - box.Bottom);

    private static bool IsSquare(Box box, double sideMm) =>
        Math.Abs(box.WidthMm - sideMm) < ExportSamples.LargestAllowedErrorMm && Math.Abs(box.HeightMm - sideMm) < ExportSamples.LargestAllowedErrorMm;

    private static void AssertContains(List<Box> boxes, Box expected) => Assert.Contains(boxes, box =>
        expected.Grown(ExportSamples.LargestAllowedErrorMm).Holds(box) && box.Grown(ExportSamples.LargestAllowedErrorMm).Holds(expected));
}
