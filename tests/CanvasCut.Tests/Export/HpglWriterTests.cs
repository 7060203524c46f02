using CanvasCut.Drawing;
using CanvasCut.Export.Hpgl;

namespace CanvasCut.Tests.Export;

public sealed class HpglWriterTests
{
    private const double UnitMm = 0.025;

    [Fact]
    public void Every_line_comes_back_within_a_plotter_unit()
    {
        var read = new HpglReader(Written(ExportSamples.A4));
        var strokes = ExportSamples.Figures.OfType<Stroke>().OrderByDescending(stroke => HpglWriter.PenOf(stroke.Role)).ToList();

        Assert.Equal(strokes.Count, read.Lines.Count);
        Assert.All(strokes.Zip(read.Lines), pair =>
        {
            var expected = pair.First.IsClosed ? pair.First.Points.Add(pair.First.Points[0]) : pair.First.Points;
            Assert.Equal(HpglWriter.PenOf(pair.First.Role), pair.Second.Pen);
            Assert.Equal(expected.Length, pair.Second.Points.Length);
            Assert.All(expected.Zip(pair.Second.Points), points => Assert.True(points.First.DistanceMm(points.Second) <= UnitMm));
        });
    }

    [Fact]
    public void Text_is_as_high_as_wanted_no_wider_than_its_room_and_turned()
    {
        var texts = new HpglReader(Written(ExportSamples.A4)).Texts;
        var turned = ExportSamples.Figures.OfType<Lettering>().Last();

        Assert.Equal(["Pocket, port: <4? x 3 1/2 in> & 25 deg", "forward ->"], texts.Select(text => text.Text));
        Assert.Equal([0.0, 90], texts.Select(text => text.TurnDegrees));
        Assert.Equal((4.0, 3.0), (texts[0].Letter.HeightMm, texts[1].Letter.HeightMm));
        Assert.All(texts, text => Assert.Equal(6, text.Pen));

        // The device's letters stand half a width apart; SI has four decimals of a centimetre.
        Assert.Equal(TextWidth.Of(turned), texts[1].Letter.WidthMm * 1.5 * texts[1].Text.Length, 0.01);
        Assert.True(texts[1].At.DistanceMm(Figures.StartOf(turned)) <= UnitMm);
    }

    [Fact]
    public void What_pen_1_cuts_comes_last() => Assert.Equal([6, 5, 4, 3, 2, 1, 0], new HpglReader(Written(ExportSamples.A4)).Pens);

    [Fact]
    public void The_file_is_plain_ASCII_and_the_same_in_any_culture()
    {
        var text = Written(ExportSamples.A4);

        ForeignCulture.In(() => Assert.Equal(text, Written(ExportSamples.A4)));
        Assert.DoesNotContain(text, character => character > '~');
        Assert.DoesNotMatch("IP|SC", text.Replace("LB", "\n", StringComparison.Ordinal));
    }

    /// <summary>16-bit numbers reach 32767 units of 0.025 mm.</summary>
    [Fact]
    public void Old_plotters_reach_819_mm() => Assert.Equal(819.175, HpglWriter.OldReachMm, 9);

    [Fact]
    public void What_no_device_can_number_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Written(ExportSamples.A4 with { Figures = [Stroke.Open(LineRole.Cut, new(0, 0), new(209716, 0))] }));
        Assert.Throws<ArgumentException>(() => Written(ExportSamples.WithInset));
    }

    private static string Written(Sheet sheet)
    {
        using var output = new StringWriter();
        HpglWriter.Write(sheet, output);
        return output.ToString();
    }
}
