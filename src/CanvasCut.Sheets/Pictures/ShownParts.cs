using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>Strokes that say which part of the top they show.</summary>
internal static class ShownParts
{
    /// <summary>Figures that show a part.</summary>
    public static IEnumerable<Figure> Shown(PartKey key, params IEnumerable<Figure> figures) => Figures.Showing(key.Id, figures);

    /// <summary>An edge at a time, so that each can be pointed out.</summary>
    public static IEnumerable<Figure> Edges(View view, Box box, Func<Side, PartKey> key) =>
    [
        .. Shown(key(Side.Forward), view.Line(LineRole.Cut, new(box.Left, box.Top), new(box.Right, box.Top))),
        .. Shown(key(Side.Aft), view.Line(LineRole.Cut, new(box.Left, box.Bottom), new(box.Right, box.Bottom))),
        .. Shown(key(Side.Port), view.Line(LineRole.Cut, new(box.Left, box.Bottom), new(box.Left, box.Top))),
        .. Shown(key(Side.Starboard), view.Line(LineRole.Cut, new(box.Right, box.Bottom), new(box.Right, box.Top))),
    ];
}
