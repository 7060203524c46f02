using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using CanvasCut.Geometry;
using CanvasCut.Job;
using CanvasCut.Patterns;
using CanvasCut.Tests.Export;

namespace CanvasCut.Tests.Job;

/// <summary>The files of whole examples, read back by programs that share no code with ours.</summary>
public sealed partial class ReferenceReaderTests
{
    private const double LargestDxfErrorMm = 1e-6;
    private const double LargestErrorMm = 0.01;
    private const double MmInPixel = 25.4 / 96;

    /// <summary>ezdxf (MIT licence, Debian package python3-ezdxf): no error, and every piece with its area and extents.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Ezdxf_reads_every_piece_of_an_example(string example)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        using var folder = new TemporaryFolder();
        var python = OutsideTool.PythonWithEzdxf();
        using var read = JsonDocument.Parse(OutsideTool.Run(python, Repository.PathOf("tests/CanvasCut.Tests/Export/read_dxf.py"), Saved(folder, outcome, "pieces.dxf")));
        var cuts = read.RootElement.GetProperty("lines").EnumerateArray().Where(line => line.GetProperty("layer").GetString() == "CUT").ToList();
        var pieces = outcome.Content.Patterns.Pieces;

        Assert.Empty(read.RootElement.GetProperty("errors").EnumerateArray());
        Assert.Equal(4, read.RootElement.GetProperty("units").GetInt32());
        Assert.Equal(pieces.Length, cuts.Count);
        Assert.All(cuts.Zip(pieces), pair => AssertSame(pair.Second, pair.First));
        Assert.DoesNotContain(read.RootElement.GetProperty("texts").EnumerateArray(), text => text.GetProperty("layer").GetString() == "CUT");
    }

    /// <summary>
    /// Chromium: each piece's cut line in user units, and the sheet on the page at 96 pixels an inch (CSS), which must be as
    /// many millimetres as its view box has units. Its layout rounds to 1/64 of a pixel, 0.004 mm.
    /// </summary>
    [Fact]
    public void Chromium_shows_every_piece_true_size()
    {
        var outcome = ExampleTests.OutcomeOf("three-bow-middle-tube");
        using var folder = new TemporaryFolder();
        var pieces = outcome.Content.Patterns.Pieces;
        var page = folder.PathOf("page.html");
        File.WriteAllText(page, PageOf(outcome, pieces.Select(piece => $"pieces/{piece.Key.Id}.svg")));

        var measured = Measured().Matches(Browser.Dump(folder, page)).Select(match => Number(match.Groups[1])).Chunk(4).ToList();

        Assert.Equal(pieces.Length, measured.Count);
        Assert.All(measured.Zip(pieces), pair =>
        {
            Assert.Equal(pair.Second.CutSize.Athwart.Millimeters, pair.First[0], LargestErrorMm);
            Assert.Equal(pair.Second.CutSize.ForeAft.Millimeters, pair.First[1], LargestErrorMm);
            Assert.Equal(pair.First[2], pair.First[3] * MmInPixel, LargestErrorMm);
        });
    }

    /// <summary>poppler: every page bears both squares true size, and a page of the templates is an A4 sheet.</summary>
    [Theory]
    [InlineData("templates.pdf", "595.276 x 841.89")]
    [InlineData("plot.pdf", "pts")]
    public void Poppler_measures_both_squares_on_every_page(string name, string size)
    {
        using var folder = new TemporaryFolder();
        var file = Saved(folder, ExampleTests.OutcomeOf("two-bow-small-top"), name);
        var pages = int.Parse(PageCount().Match(OutsideTool.Run("pdfinfo", file)).Groups[1].Value, CultureInfo.InvariantCulture);

        for (var page = 1; page <= pages; page++)
        {
            var number = page.ToString(CultureInfo.InvariantCulture);
            var svg = folder.PathOf("page.svg");
            OutsideTool.Run("pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", number, "-l", number, file, svg);
            var sizes = SvgGeometry.PathBoxes(File.ReadAllText(svg)).Select(box => (Width: box.WidthMm * 25.4 / 72, Height: box.HeightMm * 25.4 / 72)).ToList();

            Assert.All([100.0, 101.6], side => Assert.Contains(sizes, size => Math.Abs(size.Width - side) < LargestErrorMm && Math.Abs(size.Height - side) < LargestErrorMm));
        }

        Assert.Contains(size, OutsideTool.Run("pdfinfo", file), StringComparison.Ordinal);
    }

    private static void AssertSame(PatternPiece piece, JsonElement read)
    {
        var box = Box.Holding(read.GetProperty("points").EnumerateArray().Select(point => new Point(point[0].GetDouble(), point[1].GetDouble())));

        Assert.True(read.GetProperty("closed").GetBoolean(), piece.Key.Id);
        Assert.Equal(piece.CutSize.Athwart.Millimeters, box.WidthMm, LargestDxfErrorMm);
        Assert.Equal(piece.CutSize.ForeAft.Millimeters, box.HeightMm, LargestDxfErrorMm);
        Assert.Equal(piece.Shape.Cut.AreaMm2, Math.Abs(read.GetProperty("area").GetDouble()), piece.Shape.Cut.PerimeterMm * LargestDxfErrorMm);
    }

    private static string Saved(TemporaryFolder folder, JobRun outcome, string name)
    {
        var path = folder.PathOf(name);
        File.WriteAllBytes(path, ResultFiles.Of(outcome).Single(file => file.Name == name).Bytes.ToArray());
        return path;
    }

    /// <summary>A page that holds every drawing as it is and writes the size of each one's cut line into its title.</summary>
    private static string PageOf(JobRun outcome, IEnumerable<string> names)
    {
        var files = ResultFiles.Of(outcome).ToDictionary(file => file.Name);
        var drawings = string.Concat(names.Select(name => $"<div>{Encoding.UTF8.GetString(files[name].Bytes.Span).Split("?>").Last()}</div>"));
        return $$"""
            <!doctype html><meta charset="utf-8"><body style="margin:0">{{drawings}}
            <script>
            for (const svg of document.querySelectorAll("div > svg")) {
                const box = svg.querySelector('[data-role="cut"]').getBBox();
                for (const side of [box.width, box.height, svg.viewBox.baseVal.width, svg.getBoundingClientRect().width]) {
                    const text = document.createElement("i");
                    text.textContent = "measured:" + side;
                    document.body.appendChild(text);
                }
            }
            </script>
            """;
    }

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"<i>measured:([0-9.]+)</i>")]
    private static partial Regex Measured();

    [GeneratedRegex(@"Pages:\s+(\d+)")]
    private static partial Regex PageCount();
}
