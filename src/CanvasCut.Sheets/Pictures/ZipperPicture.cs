using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>Where a zipper starts, seen from above.</summary>
internal static class ZipperPicture
{
    /// <summary>The box on paper, from the start along the chain.</summary>
    private const double BoxMm = 2.5;

    /// <summary>The arrow beyond it.</summary>
    private const double ArrowMm = 9;

    /// <summary>A dark box for pin and box, and an arrow the way it is closed.</summary>
    public static IEnumerable<Figure> Start(ZipperPlace zipper, View view)
    {
        var (start, along) = (view.Of(zipper.Start), (view.Of(zipper.Stop) - view.Of(zipper.Start)).Unit());
        var across = along.Left * (zipper.AsEnd.Band.HeightMm * view.Scale / 2);
        var end = start + (along * BoxMm);
        return
        [
            new Tint(new Outline([start - across, end - across, end + across, start + across]), 0.7),
            .. Arrows.Between(LineRole.Note, end, end + (along * ArrowMm), isTwoHeaded: false),
        ];
    }
}
