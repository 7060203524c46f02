using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>A 100 mm and a 4 in square with one corner in common, by which a reader proves that a page is true to size.</summary>
public static class TestSquares
{
    /// <summary>The side of the smaller square.</summary>
    public const double MetricSideMm = 100;

    /// <summary>The side of the larger square, 4 in; exact, since an inch is 25.4 mm by definition.</summary>
    public const double InchSideMm = 101.6;

    private const double LabelHeightMm = 2.2;

    private const double LabelInsetMm = 2.5;

    /// <summary>How wide and high the label in the lower left corner is, with some room round it.</summary>
    internal static PageExtent LabelSize { get; } = new(62, 12);

    /// <summary>The two squares with their label.</summary>
    /// <param name="corner">The corner they share, lower left.</param>
    public static ImmutableArray<Figure> At(Point corner)
    {
        var text = corner + new Step(LabelInsetMm, LabelInsetMm);
        return
        [
            Stroke.Closed(LineRole.Note, Outline.Of(new(corner.X, corner.Y, corner.X + MetricSideMm, corner.Y + MetricSideMm))),
            Stroke.Closed(LineRole.Note, Outline.Of(new(corner.X, corner.Y, corner.X + InchSideMm, corner.Y + InchSideMm))),
            new Lettering("inner line 100 mm, outer line 4 in", text + new Step(0, 2 * LabelHeightMm), LabelHeightMm),
            new Lettering("Measure both ways before you cut.", text, LabelHeightMm),
        ];
    }
}
