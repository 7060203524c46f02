using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>Dimension lines, on paper.</summary>
internal static class Dimension
{
    private const double HeightMm = 2.5;
    private const double TickMm = 1.5;
    private const double AboveMm = 1;

    /// <summary>A level dimension between two places, its text above the line.</summary>
    public static IEnumerable<Figure> Level(double fromX, double toX, double y, string text) =>
    [
        Stroke.Open(LineRole.Note, new(fromX, y), new(toX, y)),
        Slash(new(fromX, y)),
        Slash(new(toX, y)),
        new Lettering(text, new((fromX + toX) / 2, y + AboveMm), HeightMm, TextAnchor.Middle),
    ];

    /// <summary>An upright dimension between two places, its text to the left, reading upward.</summary>
    public static IEnumerable<Figure> Upright(double fromY, double toY, double x, string text) =>
    [
        Stroke.Open(LineRole.Note, new(x, fromY), new(x, toY)),
        Slash(new(x, fromY)),
        Slash(new(x, toY)),
        new Lettering(text, new(x - AboveMm, (fromY + toY) / 2), HeightMm, TextAnchor.Middle, 90),
    ];

    private static Stroke Slash(Point at) => Stroke.Open(LineRole.Mark, at - new Step(TickMm, TickMm), at + new Step(TickMm, TickMm));
}
