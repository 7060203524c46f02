using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using CanvasCut.Drawing;
using CanvasCut.Export.Dxf;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

public sealed partial class DxfWriterTests
{
    private const double LargestErrorMm = 1e-6;

    /// <summary>Read back by ezdxf (MIT licence, Debian package python3-ezdxf).</summary>
    [Fact]
    public void Another_reader_finds_no_error_and_every_line_where_it_was()
    {
        var read = ReadByEzdxf(ExportSamples.A4);
        var strokes = ExportSamples.Figures.OfType<Stroke>().ToList();
        var lines = read.GetProperty("lines").EnumerateArray().ToList();

        Assert.Empty(read.GetProperty("errors").EnumerateArray());
        Assert.Equal(strokes.Count, lines.Count);
        Assert.All(strokes.Zip(lines), pair => AssertSame(pair.First, pair.Second));
    }

    [Fact]
    public void Another_reader_finds_millimetres_extents_and_layers()
    {
        var read = ReadByEzdxf(ExportSamples.A4);
        var extent = Box.Holding(ExportSamples.Figures.OfType<Stroke>().SelectMany(stroke => stroke.Points));
        var lineTypes = read.GetProperty("linetypes").EnumerateArray().Select(name => name.GetString()).ToList();
        var layers = read.GetProperty("layers");

        Assert.Equal(("AC1009", 4), (read.GetProperty("version").GetString(), read.GetProperty("units").GetInt32()));
        AssertAt(extent.LowerLeft, read.GetProperty("extmin"));
        AssertAt(new(extent.Right, extent.Top), read.GetProperty("extmax"));
        Assert.All(
            ["CUT", "STITCH", "FOLD", "MARK", "GRAIN", "NOTE"],
            layer => Assert.Contains(layers.GetProperty(layer).GetString(), lineTypes, StringComparer.OrdinalIgnoreCase));
        Assert.NotEqual(layers.GetProperty("CUT").GetString(), layers.GetProperty("STITCH").GetString());
    }

    [Fact]
    public void Another_reader_finds_the_text_on_the_note_layer_only()
    {
        var texts = ReadByEzdxf(ExportSamples.A4).GetProperty("texts").EnumerateArray().ToList();

        Assert.Equal(2, texts.Count);
        Assert.All(texts, text => Assert.Equal("NOTE", text.GetProperty("layer").GetString()));
        Assert.Equal(ExportSamples.Title.Text, Decoded(texts[0].GetProperty("text").GetString()!));
        Assert.Equal((4.0, 1), (texts[0].GetProperty("height").GetDouble(), texts[0].GetProperty("align").GetInt32()));
        AssertAt(ExportSamples.Title.At, texts[0].GetProperty("at"));
        Assert.Equal(90, texts[1].GetProperty("turn").GetDouble());
    }

    [Fact]
    public void A_window_that_shows_all_is_moved_and_scaled()
    {
        var whole = new Inset([Stroke.Open(LineRole.Mark, new(1, 2), new(5, 8))], new(0, 1, 9, 9), new(100, 50), 2);
        var line = Assert.Single(ReadByEzdxf(ExportSamples.A4 with { Figures = [whole] }).GetProperty("lines").EnumerateArray());

        AssertSame(Stroke.Open(LineRole.Mark, new(102, 52), new(110, 64)), line);
    }

    [Fact]
    public void A_window_that_hides_something_is_refused() =>
        Assert.Throws<ArgumentException>(() => Written(ExportSamples.WithInset));

    [Fact]
    public void In_inches_another_reader_finds_every_length_in_inches()
    {
        var read = ReadByEzdxf(ExportSamples.A4, DxfForm.Plain with { IsInInches = true });
        var cut = read.GetProperty("lines")[0].GetProperty("points");
        var square = read.GetProperty("lines").EnumerateArray().Last().GetProperty("points");

        Assert.Empty(read.GetProperty("errors").EnumerateArray());
        Assert.Equal(1, read.GetProperty("units").GetInt32());
        AssertAt(new(ExportSamples.Pocket[1].X / 25.4, ExportSamples.Pocket[1].Y / 25.4), cut[1]);
        Assert.Equal(4, square[1][0].GetDouble() - square[0][0].GetDouble(), LargestErrorMm);
        Assert.Equal(4 / 25.4, read.GetProperty("texts")[0].GetProperty("height").GetDouble(), LargestErrorMm);
        AssertAt(new(20.123456 / 25.4, 30 / 25.4), read.GetProperty("extmin"));
    }

    /// <summary>A rounded box as four straight lines and four quarter circles: bulge tan 22.5°.</summary>
    [Fact]
    public void With_arcs_another_reader_finds_the_corners_round()
    {
        var box = RoundedBox.Of(new(0, 0, 300, 200), 40);
        var read = ReadByEzdxf(ExportSamples.A4 with { Figures = [Stroke.Closed(LineRole.Cut, box)] }, DxfForm.Plain with { HasArcs = true });
        var line = Assert.Single(read.GetProperty("lines").EnumerateArray());
        var bulges = line.GetProperty("bulges").EnumerateArray().Select(bulge => bulge.GetDouble()).ToList();

        Assert.Empty(read.GetProperty("errors").EnumerateArray());
        Assert.True(line.GetProperty("closed").GetBoolean());
        Assert.Equal(8, bulges.Count);
        Assert.Equal([4, 4], [bulges.Count(bulge => bulge == 0), bulges.Count(bulge => Math.Abs(bulge - 0.414213562) < 1e-9)]);
        Assert.Equal((300 * 200) - ((4 - Math.PI) * 40 * 40), line.GetProperty("area").GetDouble(), 1e-3);
        Assert.Equal(box.AreaMm2, line.GetProperty("area").GetDouble(), box.PerimeterMm * RoundedBox.SagittaMm);
    }

    [Fact]
    public void The_file_is_plain_ASCII_without_exponents_and_the_same_in_any_culture()
    {
        var text = Written(ExportSamples.A4);

        ForeignCulture.In(() => Assert.Equal(text, Written(ExportSamples.A4)));
        Assert.DoesNotContain(text, character => character > '~');
        Assert.DoesNotMatch(@"\d[eE][-+]?\d", text);
        Assert.DoesNotContain("\n-0.0\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("100 %%", "100 %%%%%%")]
    [InlineData("a^b", "a^ b")]
    [InlineData("3½ →", "3\\U+00BD \\U+2192")]
    [InlineData("two\nlines", "two lines")]
    public void Signs_that_mean_something_to_a_reader_are_escaped(string text, string expected) =>
        Assert.Contains($"\n{expected}\n", Written(ExportSamples.A4 with { Figures = [new Lettering(text, new(1, 1), 3)] }), StringComparison.Ordinal);

    private static void AssertSame(Stroke expected, JsonElement line)
    {
        var points = line.GetProperty("points").EnumerateArray().ToList();

        Assert.Equal(expected.Role.ToString().ToUpperInvariant(), line.GetProperty("layer").GetString());
        Assert.Equal(expected.IsClosed, line.GetProperty("closed").GetBoolean());
        Assert.Equal(expected.Points.Length, points.Count);
        Assert.All(expected.Points.Zip(points), pair => AssertAt(pair.First, pair.Second));
        if (expected.IsClosed)
        {
            // Over the whole outline the error of a place grows with the length of the edges.
            var outline = new Outline(expected.Points);
            Assert.Equal(outline.AreaMm2, line.GetProperty("area").GetDouble(), LargestErrorMm * outline.PerimeterMm);
        }
    }

    private static void AssertAt(Point expected, JsonElement actual)
    {
        Assert.Equal(expected.X, actual[0].GetDouble(), LargestErrorMm);
        Assert.Equal(expected.Y, actual[1].GetDouble(), LargestErrorMm);
    }

    private static JsonElement ReadByEzdxf(Sheet sheet, DxfForm? form = null)
    {
        var python = OutsideTool.PythonWithEzdxf();
        using var folder = new TemporaryFolder();
        var file = folder.PathOf("sheet.dxf");
        File.WriteAllText(file, Written(sheet, form));
        return JsonElement.Parse(OutsideTool.Run(python, Repository.PathOf("tests/CanvasCut.Tests/Export/read_dxf.py"), file));
    }

    private static string Written(Sheet sheet, DxfForm? form = null)
    {
        using var output = new StringWriter();
        DxfWriter.Write(sheet, form ?? DxfForm.Plain, output);
        return output.ToString();
    }

    private static string Decoded(string text) =>
        Escape().Replace(text, match => ((char)int.Parse(match.Groups[1].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());

    [GeneratedRegex(@"\\U\+([0-9A-F]{4})")]
    private static partial Regex Escape();
}
