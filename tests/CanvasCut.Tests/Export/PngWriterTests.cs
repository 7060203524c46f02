using CanvasCut.Drawing;
using CanvasCut.Export.Png;
using CanvasCut.Geometry;
using SkiaSharp;

namespace CanvasCut.Tests.Export;

public sealed class PngWriterTests
{
    [Fact]
    public void A_picture_has_so_many_dots_a_millimetre()
    {
        using var picture = SKBitmap.Decode(Written(ExportSamples.Letter, 4));

        Assert.Equal((864, 1118), (picture.Width, picture.Height));
    }

    [Fact]
    public void Lines_and_tints_lie_where_they_should_on_white()
    {
        Figure[] figures = [new Tint(Outline.Of(new(10, 10, 20, 20)), 0.5), Stroke.Open(LineRole.Cut, new(5, 30), new(45, 30))];
        using var picture = SKBitmap.Decode(Written(new("s", "S", 50, 40, [.. figures]), 10));

        Assert.Equal(255, picture.GetPixel(2, 2).Red);
        Assert.InRange(picture.GetPixel(150, 250).Red, 126, 129);
        Assert.Equal(0, picture.GetPixel(250, 100).Red);
        Assert.Equal(255, picture.GetPixel(250, 95).Red);
        Assert.Equal(255, picture.GetPixel(460, 100).Red);
    }

    [Fact]
    public void Two_runs_give_the_same_bytes() =>
        Assert.Equal(Written(ExportSamples.WithInset, 3), Written(ExportSamples.WithInset, 3));

    [Fact]
    public void A_picture_too_large_for_memory_is_refused() =>
        Assert.Throws<ArgumentException>(() => Written(ExportSamples.A4, 100));

    private static byte[] Written(Sheet sheet, double dotsPerMm)
    {
        using var output = new MemoryStream();
        PngWriter.Write(sheet, dotsPerMm, output);
        return output.ToArray();
    }
}
