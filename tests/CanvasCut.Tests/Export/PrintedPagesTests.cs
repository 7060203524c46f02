using System.Globalization;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Export.Pdf;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

/// <summary>Template pages as poppler (Debian package poppler-utils) sees them.</summary>
public sealed class PrintedPagesTests
{
    private const double MmInPoint = 25.4 / 72;

    private const double OverlapMm = 12;

    private const double MarginMm = 10;

    private static readonly TilePiece Piece = new("strip", "Strip", [Stroke.Closed(LineRole.Cut, Outline.Of(new(0, 0, 700, 500)))]);

    public static TheoryData<string, double, double> Printers { get; } = new()
    {
        { "A4", 100, 100 },
        { "A4", 99.2, 99.8 },
        { "Letter", 101.5, 98.6 },
    };

    [Theory]
    [MemberData(nameof(Printers))]
    public void The_squares_are_stretched_by_what_the_printer_shrinks(string paper, double readX, double readY) =>
        Assert.All(Measured(paper, new(readX, readY)), page =>
        {
            Assert.Contains(page.Boxes, box => page.HasTrueSides(box, 100, 100));
            Assert.Contains(page.Boxes, box => page.HasTrueSides(box, 101.6, 101.6));
        });

    [Theory]
    [MemberData(nameof(Printers))]
    public void The_long_scales_run_on_over_the_pages_at_their_length(string paper, double readX, double readY)
    {
        var pages = Measured(paper, new(readX, readY)).Skip(1).ToList();
        var isTurned = pages.TrueForAll(page => !page.Boxes.Exists(box => page.HasTrueSides(box, 700, 0)));
        var (across, up) = isTurned ? (500, 700) : (700, 500);

        Assert.InRange(pages.Count(page => page.Boxes.Exists(box => page.HasTrueSides(box, across, 0))), 2, pages.Count);
        Assert.InRange(pages.Count(page => page.Boxes.Exists(box => page.HasTrueSides(box, 0, up))), 2, pages.Count);
    }

    [Theory]
    [MemberData(nameof(Printers))]
    public void The_marks_of_neighbours_fall_on_each_other(string paper, double readX, double readY)
    {
        var pages = Measured(paper, new(readX, readY));
        var (first, second) = (pages[1], pages[2]);

        // Laid over each other by the strip that both show: the printable width less the stretched overlap.
        var overlapMm = OverlapMm * 100 / first.ReadAcross;
        var step = new Step(first.WidthMm - (2 * MarginMm) - overlapMm, 0);
        var strip = new Box(first.WidthMm - MarginMm - overlapMm, 0, first.WidthMm - MarginMm, 5000).Grown(0.1);
        var marks = first.Boxes.Where(box => first.HasTrueSides(box, 8, 8) && strip.Holds(box)).ToList();
        var matching = second.Boxes.Where(box => second.HasTrueSides(box, 8, 8)).Select(box => box.MovedBy(step)).Where(strip.Holds).ToList();

        Assert.InRange(marks.Count, 2, 4);
        Assert.Equal(marks.Count, matching.Count);
        Assert.All(marks, mark => Assert.Contains(matching, other => mark.Grown(0.1).Holds(other) && other.Grown(0.1).Holds(mark)));
    }

    private static List<MeasuredPage> Measured(string paper, PrintCorrection correction)
    {
        using var folder = new TemporaryFolder();
        var layout = TilePages.LayoutOf(PaperSize.Named(paper)!, (MarginMm, OverlapMm), correction);
        var pages = TilePages.Of([Piece], new("Templates", "a job", "a footer"), layout);
        var file = folder.PathOf("pages.pdf");
        using (var output = File.Create(file))
        {
            PdfWriter.Write(pages, "Templates", output);
        }

        return [.. pages.Select((page, i) => new MeasuredPage(page.WidthMm, Boxes(folder, file, i + 1), page.WidthMm > page.HeightMm, correction))];
    }

    /// <summary>The boxes of all paths of a page, in millimetres from its upper left corner.</summary>
    private static List<Box> Boxes(TemporaryFolder folder, string file, int page)
    {
        var (svg, number) = (folder.PathOf("page.svg"), page.ToString(CultureInfo.InvariantCulture));
        OutsideTool.Run("pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", number, "-l", number, file, svg);
        return [.. SvgGeometry.PathBoxes(File.ReadAllText(svg)).Select(box => new Box(box.Left * MmInPoint, box.Bottom * MmInPoint, box.Right * MmInPoint, box.Top * MmInPoint))];
    }

    /// <summary>A page; on its side the printer's x runs up it.</summary>
    private sealed record MeasuredPage(double WidthMm, List<Box> Boxes, bool IsLandscape, PrintCorrection Printer)
    {
        public double ReadAcross => IsLandscape ? Printer.ReadYMm : Printer.ReadXMm;

        private double ReadUp => IsLandscape ? Printer.ReadXMm : Printer.ReadYMm;

        /// <summary>Whether a box comes out of the printer with such sides.</summary>
        public bool HasTrueSides(Box box, double widthMm, double heightMm) =>
            Math.Abs(box.WidthMm - (widthMm * 100 / ReadAcross)) < ExportSamples.LargestAllowedErrorMm
            && Math.Abs(box.HeightMm - (heightMm * 100 / ReadUp)) < ExportSamples.LargestAllowedErrorMm;
    }
}
