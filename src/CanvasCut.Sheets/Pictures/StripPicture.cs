using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>What holds a weather strip's free edge, seen from above.</summary>
internal static class StripPicture
{
    /// <summary>A ring for a snap, a square for hook-and-loop, a line for a rod.</summary>
    public static IEnumerable<Figure> HeldBy(StripPlace strip, View view)
    {
        const double LeastRingMm = 0.5;
        return strip.Holding switch
        {
            null => [],
            { Kind: StripHold.Rod } => [view.Line(LineRole.Mark, strip.FreeEdge.From, strip.FreeEdge.To)],
            { Kind: StripHold.Snaps } held => held.Centres.Select(centre => Stroke.Closed(LineRole.Mark, RoundedBox.Circle(view.Of(centre), Math.Max(LeastRingMm, held.Size.Millimeters / 2 * view.Scale)))),
            var held => held.Squares.Select(square => view.Line(LineRole.Mark, square)),
        };
    }
}
