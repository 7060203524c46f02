using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

public sealed class PrintCorrectionTests
{
    private const double MarginMm = 10;

    private static readonly TileJob Words = new("Templates", "a job", "a footer");

    private static readonly TilePiece Large = Piece("large", 1300, 700);

    /// <summary>Fits one page only on its side.</summary>
    private static readonly TilePiece Wide = Piece("wide", 268, 165);

    private static readonly Gen<(PaperSize Paper, PrintCorrection Correction)> AnyPrinter = Gen.Select(
        Gen.Int[0, PaperSize.Standard.Length - 1], Gen.Double[97.1, 103.09], Gen.Double[97.1, 103.09], (i, x, y) => (PaperSize.Standard[i], new PrintCorrection(x, y)));

    [Fact]
    public void A_printer_that_is_true_changes_nothing() => Assert.True(new PrintCorrection(100, 100).IsNone);

    /// <summary>Worked by hand: 100/99.2 = 1.00806 and 100/99.8 = 1.00200.</summary>
    [Fact]
    public void Every_page_says_how_it_is_corrected_and_for_which_printer() => Assert.All(
        Pages(PaperSize.A4, new(99.2, 99.8)),
        page => Assert.Contains(page.Figures.OfType<Lettering>(), text => text.Text == "corrected x 1.0081, y 1.0020 for a printer that read 99.2 and 99.8"));

    [Fact]
    public void The_squares_read_true_on_the_printer_they_are_corrected_for() => AnyPrinter.Sample(printer => Assert.All(
        Pages(printer.Paper, printer.Correction),
        page =>
        {
            var squares = Printed(page, printer.Correction).OfType<Stroke>().Where(stroke => stroke is { Role: LineRole.Note, IsClosed: true, Points.Length: 4 }).Select(stroke => Box.Holding(stroke.Points)).ToList();
            Assert.Contains(squares, box => IsSquare(box, 100));
            Assert.Contains(squares, box => IsSquare(box, 101.6));
        }), iter: 12);

    [Fact]
    public void Nothing_of_a_stretched_page_lies_in_the_margin() => AnyPrinter.Sample(printer => Assert.All(
        Pages(printer.Paper, printer.Correction),
        page =>
        {
            var (width, height) = (printer.Paper.WidthMm, printer.Paper.HeightMm);
            Assert.Equal((width, height), (Math.Min(page.WidthMm, page.HeightMm), Math.Max(page.WidthMm, page.HeightMm)));
            Assert.All(page.Figures, figure => Assert.True(new Box(0, 0, page.WidthMm, page.HeightMm).Grown(1e-6 - MarginMm).Holds(Figures.BoundsOf(figure)), $"{page.Name}: {figure}"));
        }), iter: 12);

    [Fact]
    public void A_piece_comes_out_of_the_printer_at_its_true_size_whichever_way_it_lies() => AnyPrinter.Sample(printer => Assert.All(
        Pages(printer.Paper, printer.Correction).SelectMany(page => Printed(page, printer.Correction).OfType<Inset>()),
        window => Assert.Contains(window.Figures.OfType<Stroke>().Where(stroke => stroke.Role == LineRole.Cut).Select(stroke => Box.Holding(stroke.Points)), box =>
            Math.Abs(Math.Max(box.WidthMm, box.HeightMm) - 1300) < 1e-6 || Math.Abs(Math.Max(box.WidthMm, box.HeightMm) - 268) < 1e-6)), iter: 12);

    /// <summary>The printer's own axes: a page on its side is fed as the others are, so its width is the sheet's long side.</summary>
    [Fact]
    public void A_page_on_its_side_is_stretched_along_the_same_sides_of_the_sheet()
    {
        var page = Pages(PaperSize.A4, new(99, 100)).Single(page => page.WidthMm > page.HeightMm);
        var square = page.Figures.OfType<Stroke>().Select(stroke => Box.Holding(stroke.Points)).First(box => Math.Abs(box.WidthMm - 100) < 1e-9);

        Assert.Equal(100 / 0.99, square.HeightMm, 1e-9);
    }

    [Fact]
    public void A_page_that_is_to_be_stretched_shows_less()
    {
        var (plain, stretched) = (LayoutFor(PaperSize.A4, PrintCorrection.None), LayoutFor(PaperSize.A4, new(98, 99)));

        Assert.Equal(190 * 0.98, stretched.WindowSizeMm(isLandscape: false).WidthMm, 1e-9);
        Assert.Equal((277 * 0.99) - 16, stretched.WindowSizeMm(isLandscape: false).HeightMm, 1e-9);
        Assert.Equal(190, plain.WindowSizeMm(isLandscape: false).WidthMm, 1e-9);
    }

    private static bool IsSquare(Box box, double sideMm) => Math.Abs(box.WidthMm - sideMm) < 1e-9 && Math.Abs(box.HeightMm - sideMm) < 1e-9;

    /// <summary>What such a printer makes of a page: it is fed with the short side first, however the page lies.</summary>
    private static ImmutableArray<Figure> Printed(Sheet page, PrintCorrection printer)
    {
        var (alongShort, alongLong) = (printer.ReadXMm / 100, printer.ReadYMm / 100);
        return page.WidthMm > page.HeightMm ? Figures.Stretched(page.Figures, alongLong, alongShort) : Figures.Stretched(page.Figures, alongShort, alongLong);
    }

    private static PageLayout LayoutFor(PaperSize paper, PrintCorrection correction) => TilePages.LayoutOf(paper, (MarginMm, 12), correction);

    private static ImmutableArray<Sheet> Pages(PaperSize paper, PrintCorrection correction) => TilePages.Of([Large, Wide], Words, LayoutFor(paper, correction));

    private static TilePiece Piece(string name, double widthMm, double heightMm) =>
        new(name, name, [Stroke.Closed(LineRole.Cut, Outline.Of(new(0, 0, widthMm, heightMm)))]);
}
