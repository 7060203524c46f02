using System.Collections.Immutable;
using System.Text.Json;
using System.Xml.Linq;
using CanvasCut.Drawing;
using CanvasCut.Export.Svg;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

public sealed class SvgWriterTests
{
    private const double PixelsInMm = 96 / 25.4;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_file_gives_its_size_in_millimetres_with_a_matching_view_box()
    {
        var root = XDocument.Parse(Written(ExportSamples.Letter)).Root!;

        Assert.Equal("215.9mm", root.Attribute("width")!.Value);
        Assert.Equal("279.4mm", root.Attribute("height")!.Value);
        Assert.Equal("0 0 215.9 279.4", root.Attribute("viewBox")!.Value);
        Assert.Equal(ExportSamples.A4.Title, root.Element(Svg + "title")!.Value);
    }

    [Fact]
    public void Every_line_tells_its_role_and_no_colour_tells_anything()
    {
        var drawing = XDocument.Parse(Written(ExportSamples.A4));
        var roles = drawing.Descendants(Svg + "path").Select(path => path.Attribute("data-role")?.Value).OfType<string>();

        Assert.Equal(ExportSamples.Figures.OfType<Stroke>().Select(stroke => stroke.Role.ToString().ToLowerInvariant()), roles);
        Assert.All(
            drawing.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "stroke" or "fill"),
            colour => Assert.Contains(colour.Value, new[] { "none", "#000", "#cccccc" }));
    }

    /// <summary>Measured by headless Chromium at the 96 pixels an inch that CSS lays down.</summary>
    [Fact]
    public void A_browser_shows_everything_at_its_true_size_and_place()
    {
        var boxes = MeasuredByBrowser(ExportSamples.A4, "path[data-role]");
        var strokes = ExportSamples.Figures.OfType<Stroke>().ToList();

        Assert.Equal(strokes.Count, boxes.Count);
        Assert.All(strokes.Zip(boxes), pair => AssertSame(Box.Holding(pair.First.Points), pair.Second));
    }

    [Fact]
    public void A_browser_shows_a_window_moved_and_scaled()
    {
        var inset = Assert.Single(ExportSamples.WithInset.Figures.OfType<Inset>());
        var cut = inset.Figures.OfType<Stroke>().First();
        var expected = Box.Holding(cut.Points.Select(point => inset.At + ((point - inset.Window.LowerLeft) * inset.Scale)));

        AssertSame(expected, MeasuredByBrowser(ExportSamples.WithInset, "path[data-role]")[0]);
    }

    [Fact]
    public void A_browser_makes_text_as_wide_as_planned_whatever_font_it_has()
    {
        var box = MeasuredByBrowser(ExportSamples.A4, "text")[0];

        // A letter's ink may lie a hair inside or outside the width that it takes up.
        Assert.Equal(TextWidth.Of(ExportSamples.Title), box.WidthMm, 0.5);
        Assert.Equal(ExportSamples.Title.At.X, box.Center.X, 0.5);
    }

    [Fact]
    public void The_same_sheet_gives_the_same_file_in_any_culture()
    {
        var text = Written(ExportSamples.WithInset);

        ForeignCulture.In(() => Assert.Equal(text, Written(ExportSamples.WithInset)));
    }

    [Theory]
    [InlineData(0, "M0 297")]
    [InlineData(-0.00001, "M0 297")]
    [InlineData(1e-3, "M0.001 297")]
    [InlineData(1e7 / 3, "M3333333.3333 297")]
    public void Numbers_have_four_decimals_and_neither_exponent_nor_minus_zero(double x, string expected) =>
        Assert.Contains(expected, Written(ExportSamples.A4 with { Figures = [Stroke.Open(LineRole.Cut, new(x, 0), new(1, 1))] }), StringComparison.Ordinal);

    /// <summary>A program that shows the drawing finds the lines of a thing by its key.</summary>
    [Fact]
    public void What_a_figure_shows_is_carried_as_data()
    {
        ImmutableArray<Figure> figures =
        [
            .. Figures.Moved([.. Figures.Showing("bow-2", Stroke.Open(LineRole.Note, new(0, 0), new(1, 1)), new Tint(Outline.Of(new Box(0, 0, 5, 5)), 0.2))], new(3, 4)),
            new Lettering("bow 2", new(9, 9), 3) { Shows = "a\"&b" },
            Stroke.Open(LineRole.Note, new(0, 0), new(2, 2)),
        ];
        var drawn = XDocument.Parse(Written(ExportSamples.A4 with { Figures = figures })).Descendants().Where(element => element.Name.LocalName is "path" or "text");

        Assert.Equal(["bow-2", "bow-2", "a\"&b", null], drawn.Select(element => element.Attribute("data-shows")?.Value));
    }

    private static void AssertSame(Box expected, Box actual)
    {
        Assert.Equal(expected.Left, actual.Left, ExportSamples.LargestAllowedErrorMm);
        Assert.Equal(expected.Bottom, actual.Bottom, ExportSamples.LargestAllowedErrorMm);
        Assert.Equal(expected.Right, actual.Right, ExportSamples.LargestAllowedErrorMm);
        Assert.Equal(expected.Top, actual.Top, ExportSamples.LargestAllowedErrorMm);
    }

    /// <summary>The boxes of the chosen elements in sheet coordinates: millimetres from the lower left corner.</summary>
    private static List<Box> MeasuredByBrowser(Sheet sheet, string selector)
    {
        using var folder = new TemporaryFolder();
        var page = folder.PathOf("page.html");
        var drawing = Written(sheet);
        File.WriteAllText(page, $$"""
            <!DOCTYPE html><meta charset="utf-8"><style>body{margin:0}</style>
            {{drawing[drawing.IndexOf("<svg", StringComparison.Ordinal)..]}}
            <pre id="result"></pre>
            <script>
            const boxes = [...document.querySelectorAll('{{selector}}')].map(e => e.getBoundingClientRect()).map(b => [b.left, b.top, b.right, b.bottom]);
            document.getElementById('result').textContent = JSON.stringify(boxes);
            </script>
            """);
        var text = Browser.Dump(folder, page);
        var result = text[(text.IndexOf("[[", StringComparison.Ordinal))..(text.LastIndexOf("]]", StringComparison.Ordinal) + 2)];
        return
        [
            .. JsonElement.Parse(result).EnumerateArray()
                .Select(box => box.EnumerateArray().Select(value => value.GetDouble() / PixelsInMm).ToArray())
                .Select(mm => new Box(mm[0], sheet.HeightMm - mm[3], mm[2], sheet.HeightMm - mm[1])),
        ];
    }

    private static string Written(Sheet sheet)
    {
        using var output = new StringWriter();
        SvgWriter.Write(sheet, output);
        return output.ToString();
    }
}
