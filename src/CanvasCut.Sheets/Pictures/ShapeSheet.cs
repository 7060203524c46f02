using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The top in space.</summary>
public static class ShapeSheet
{
    private const double WidthMm = 240;
    private const double TallestMm = 170;
    private const double MarginMm = 12;
    private const double RoomMm = 18;
    private const double RoomAboveMm = 6;
    private const double HeadMm = 26;

    /// <summary>Draws the top; null when its surface is not known.</summary>
    public static Sheet? Of(PatternSet patterns, SheetContext context) =>
        patterns.Surface.Surface is { } surface ? Of(patterns, surface, context) : null;

    /// <summary>Why there is no picture, in a sentence; null when there is one.</summary>
    public static string? WhyNot(PatternSet patterns) => patterns.Surface is { IsKnown: false } unknown
        ? Say.Of($"The top's shape in space is not known: the job does not give {string.Join(", ", unknown.Missing)}.")
        : null;

    private static Sheet Of(PatternSet patterns, TopSurface surface, SheetContext context)
    {
        var picture = new ShapePicture(patterns, surface);
        var bounds = picture.Bounds();
        var view = View.Fitting(bounds, new Box(MarginMm + RoomMm, 0, WidthMm - MarginMm - RoomMm, TallestMm));
        var frame = new Box(MarginMm, view.Of(bounds).Bottom - RoomMm + 4, WidthMm - MarginMm, view.Of(bounds).Top + RoomAboveMm);
        ImmutableArray<Figure> figures = [.. picture.Figures(view, frame), .. Figures.Moved([.. Head(context, view)], new(0, frame.Top + HeadMm))];
        return new("top-shape", Say.Of($"Top in space, {context.JobName}"), WidthMm, frame.Top + HeadMm - frame.Bottom, Figures.Moved(figures, new(0, -frame.Bottom)));
    }

    /// <summary>Title and notes, hanging from the top of the sheet.</summary>
    private static IEnumerable<Figure> Head(SheetContext context, View view)
    {
        yield return new Lettering(Say.Of($"The top in space: {context.JobName}"), new(MarginMm, -MarginMm - 5), 5, IsBold: true);
        yield return new Lettering(
            Say.Of($"Isometric, seen from aft and starboard and from above. Athwart, fore and aft on the level, and upright, lengths are true at {view.ScaleText}."),
            new(MarginMm, -MarginMm - 11),
            2.5);
        yield return new Lettering(Say.Of("Dashed: hidden under the cloth. Pockets and weather strips are not drawn."), new(MarginMm, -MarginMm - 15.5), 2.5);
        if (context.Warning.Length > 0)
        {
            yield return new Lettering(context.Warning, new(MarginMm, -MarginMm - 21.5), 3, IsBold: true);
        }
    }
}
