using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

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

    private const double NameMm = 24;

    /// <summary>How wide and high the label in the lower left corner is, with some room round it.</summary>
    internal static PageExtent LabelSize { get; } = new(62, 12);

    /// <summary>The room of the two axes' names.</summary>
    internal static IEnumerable<Box> NamesAt(Point corner) =>
    [
        new(corner.X + MetricSideMm - NameMm, corner.Y + 1, corner.X + MetricSideMm - 1, corner.Y + 6),
        new(corner.X + 1, corner.Y + MetricSideMm - NameMm, corner.X + 6, corner.Y + MetricSideMm - 1),
    ];

    /// <summary>The two squares with their label.</summary>
    /// <param name="corner">The corner they share, lower left.</param>
    /// <param name="isLandscape">Whether the sheet lies on its side, so that its y runs from left to right.</param>
    public static ImmutableArray<Figure> At(Point corner, bool isLandscape = false)
    {
        var text = corner + new Step(LabelInsetMm, LabelInsetMm);
        return
        [
            Stroke.Closed(LineRole.Note, Outline.Of(new(corner.X, corner.Y, corner.X + MetricSideMm, corner.Y + MetricSideMm))),
            Stroke.Closed(LineRole.Note, Outline.Of(new(corner.X, corner.Y, corner.X + InchSideMm, corner.Y + InchSideMm))),
            new Lettering(Say.Of("inner line 100 mm, outer line 4 in"), text + new Step(0, 2 * LabelHeightMm), LabelHeightMm),
            new Lettering(Say.Of("Measure both ways before you cut."), text, LabelHeightMm),
            new Lettering($"{PageLayout.AcrossName(isLandscape)} = 100 mm", corner + new Step(MetricSideMm - LabelInsetMm, LabelInsetMm), LabelHeightMm, TextAnchor.Right, IsBold: true),
            new Lettering($"{PageLayout.UpName(isLandscape)} = 100 mm", corner + new Step(LabelInsetMm + LabelHeightMm, MetricSideMm - LabelInsetMm), LabelHeightMm, TextAnchor.Right, TurnDegrees: 90, IsBold: true),
        ];
    }
}
