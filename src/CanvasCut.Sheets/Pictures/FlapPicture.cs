using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>A flap and what it is fastened to, seen from above.</summary>
internal static class FlapPicture
{
    /// <summary>The flap, its counterpart on the top, and a ring at every centre; of a sleeve the lugs as they lie on the rod.</summary>
    public static IEnumerable<Figure> Of(FlapPlace flap, View view) => flap.Kind == MountKind.Sleeve ? Sleeve(flap, view) : Fastened(flap, view);

    private static IEnumerable<Figure> Fastened(FlapPlace flap, View view)
    {
        const double LeastRingMm = 0.5;
        yield return view.Line(LineRole.Mark, flap.Flap);
        yield return view.Line(LineRole.Stitch, flap.OnTop);
        var ring = Math.Max(LeastRingMm, (flap.Parts.Spec?.Diameter ?? Length.Zero).Millimeters / 2 * view.Scale);
        foreach (var centre in flap.CentresOnCarrier.Concat(flap.Kind == MountKind.Lacing ? flap.CentresOnTop : []))
        {
            yield return Stroke.Closed(LineRole.Mark, RoundedBox.Circle(view.Of(centre), ring));
        }
    }

    private static IEnumerable<Figure> Sleeve(FlapPlace flap, View view) =>
    [
        .. SleeveLug.Of(flap).Select(lug => view.Line(lug.IsOnTop ? LineRole.Stitch : LineRole.Mark, lug.Box)),
        new Tint(view.Of(Outline.Of(flap.Rod!.Value)), 0.6),
    ];
}
