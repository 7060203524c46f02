using CanvasCut.Drawing;
using CanvasCut.Export.Svg;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Docs;

/// <summary>The figures of the documents are drawn by the program, so that they cannot differ from it.</summary>
public sealed class DocFiguresTests
{
    private static readonly string[] Documents = ["docs/how-patterns-are-made.md", "docs/mounts.md", "docs/weather.md"];

    private static readonly Dictionary<string, Func<Sheet>> Drawn = new()
    {
        ["arc-across"] = TopFigures.Arc,
        ["bent-strip"] = BendingFigures.Strip,
        ["bonding-window"] = WeatherFigures.Bonding,
        ["carrier"] = CarrierFigures.Carrier,
        ["cloth-pull"] = WeatherFigures.Pull,
        ["corner-pocket"] = FasteningFigures.CornerPocket,
        ["cut-pocket"] = FasteningFigures.CutPocket,
        ["felled-seam"] = CarrierFigures.FelledSeam,
        ["hanging-span"] = SupportFigures.Span,
        ["hem-and-cells"] = SupportFigures.Hem,
        ["marks"] = TopFigures.Marks,
        ["mitre"] = CarrierFigures.Mitre,
        ["ridge-way"] = BendingFigures.Ridge,
        ["rod-sleeve"] = SleeveFigures.Sleeve,
        ["slope-corner"] = WeatherFigures.Slope,
        ["strip-on-carrier"] = StripFigures.OnCarrier,
        ["tiling"] = TopFigures.Tiling,
        ["weather-strip"] = FasteningFigures.WeatherStrip,
        ["wind-loads"] = WeatherFigures.Wind,
        ["zipper"] = FasteningFigures.Zippers,
    };

    public static TheoryData<string> Names { get; } = new(Drawn.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_figure_is_what_the_program_draws(string name)
    {
        using var output = new StringWriter();
        SvgWriter.Write(Drawn[name](), output);

        Golden.Matches($"docs/figures/{name}.svg", output.ToString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_on_a_figure_leaves_its_sheet(string name)
    {
        var sheet = Drawn[name]();
        var bounds = Figures.BoundsOf(sheet.Figures);

        Assert.Equal(name, sheet.Name);
        Assert.True(new Box(0, 0, sheet.WidthMm, sheet.HeightMm).Holds(bounds), $"{bounds} on {sheet.WidthMm} by {sheet.HeightMm}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_two_texts_of_a_figure_overlap(string name)
    {
        var texts = Drawn[name]().Figures.OfType<Lettering>().Where(text => text.Text.Length > 0).ToList();

        Assert.All(texts.Index(), text => Assert.DoesNotContain(
            texts.Take(text.Index),
            other => !Figures.BoundsOf(text.Item).Shared(Figures.BoundsOf(other)).IsEmpty));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_figure_is_shown_in_the_text(string name) =>
        Assert.Contains(Documents, document => Repository.Read(document).Contains($"(figures/{name}.svg)", StringComparison.Ordinal));

    [Fact]
    public void There_is_no_figure_that_the_program_does_not_draw() => Assert.Equal(
        Drawn.Keys.Order(StringComparer.Ordinal),
        Directory.GetFiles(Repository.PathOf("docs/figures")).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));
}
