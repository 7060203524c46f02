using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

/// <summary>Sheets with one of everything, for all formats.</summary>
internal static class ExportSamples
{
    public const double LargestAllowedErrorMm = 0.01;

    /// <summary>A triangle that no rounding to whole numbers leaves as it is.</summary>
    public static Outline Pocket { get; } = new([new(20.123456, 30), new(160 + (1 / 3.0), 30), new(20.123456, 169.87654321)]);

    public static Box MetricSquare { get; } = new(30, 180, 130, 280);

    public static Box InchSquare { get; } = new(30, 180, 30 + (4 * 25.4), 180 + (4 * 25.4));

    public static Lettering Title { get; } = new("Pocket, port: <4⅝ × 3½ in> & 25°", new(100, 100), 4, TextAnchor.Middle, 0, IsBold: true);

    public static ImmutableArray<Figure> Figures { get; } =
    [
        new Tint(Outline.Of(new(40, 40, 60, 60)), 0.2),
        Stroke.Closed(LineRole.Cut, Pocket),
        Stroke.Closed(LineRole.Stitch, Outset.By(Pocket, -10)!),
        Stroke.Open(LineRole.Fold, new(25, 50), new(60, 50), new(80, 55.5)),
        Stroke.Open(LineRole.Mark, new(70, 30), new(70, 36)),
        Stroke.Open(LineRole.Grain, new(35, 60), new(35, 90)),
        Stroke.Closed(LineRole.Note, Outline.Of(MetricSquare)),
        Stroke.Closed(LineRole.Note, Outline.Of(InchSquare)),
        Title,
        new Lettering("forward →", new(50, 60), 3, TextAnchor.Right, 90),
    ];

    public static Sheet A4 { get; } = new("pocket", "Pocket & \"tips\"", 210, 297, Figures);

    public static Sheet Letter { get; } = A4 with { WidthMm = 215.9, HeightMm = 279.4 };

    /// <summary>A sheet that shows another at half size and cut off at a window.</summary>
    public static Sheet WithInset { get; } = A4 with
    {
        Figures = [new Inset(Figures, new(0, 0, 130, 150), new(30, 40), 0.5), Stroke.Closed(LineRole.Note, Outline.Of(new(30, 40, 95, 115)))],
    };
}
