using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>The numbered diamonds by which neighbouring pages are joined.</summary>
/// <remarks>
/// They are drawn in the plane of the piece, and each page shows what its window holds of them: so a mark lies at the
/// same place of the piece on both neighbours by construction.
/// </remarks>
internal static class JoinMarks
{
    private const double LargestRadiusMm = 4;

    private const double NumberHeightMm = 2.5;

    /// <summary>On a long edge, one mark for about so much of it, and never fewer than two.</summary>
    private const double SpacingMm = 150;

    /// <summary>The marks of all joins of a piece.</summary>
    public static ImmutableArray<Figure> Of(TileGrid grid) =>
        [.. Places(grid).SelectMany((place, i) => Mark(place.At, place.Across, i + 1, grid.Plan.Layout.OverlapMm))];

    /// <summary>Where the marks are, and the direction across their join.</summary>
    private static IEnumerable<(Point At, Step Across)> Places(TileGrid grid)
    {
        foreach (var (row, column) in grid.Pages)
        {
            var window = grid.WindowOf(row, column);
            foreach (var part in grid.LabelOf(row, column + 1) is null ? [] : Parts(window.HeightMm))
            {
                yield return (new(grid.JoinRightOf(column), window.Top - (part * window.HeightMm)), new(1, 0));
            }

            foreach (var part in grid.LabelOf(row + 1, column) is null ? [] : Parts(window.WidthMm))
            {
                yield return (new(window.Left + (part * window.WidthMm), grid.JoinBelow(row)), new(0, 1));
            }
        }
    }

    private static IEnumerable<double> Parts(double lengthMm)
    {
        // Even, so that the middle of an edge is free for the neighbour's name.
        var marks = 2 * Math.Max(1, (int)Math.Round(lengthMm / SpacingMm / 2));
        return Enumerable.Range(0, marks).Select(i => (i + 0.5) / marks);
    }

    private static IEnumerable<Figure> Mark(Point at, Step across, int number, double overlapMm)
    {
        var radiusMm = overlapMm > 0 ? Math.Min(LargestRadiusMm, overlapMm / 2) : LargestRadiusMm;
        Step[] tips = [new(radiusMm, 0), new(0, radiusMm), new(-radiusMm, 0), new(0, -radiusMm)];
        yield return Stroke.Closed(LineRole.Note, new(tips.Select(tip => at + tip)));
        yield return Stroke.Open(LineRole.Note, at - (across.Left * radiusMm), at + (across.Left * radiusMm));

        // Outside the shared strip, so that each number is printed whole on one page and neither is cut off or glued over.
        var awayMm = Math.Max(overlapMm / 2, radiusMm) + 1;
        yield return Number(number, at + (across * awayMm), across, TextAnchor.Left);
        yield return Number(number, at - (across * awayMm), across, TextAnchor.Right);
    }

    private static Lettering Number(int number, Point at, Step across, TextAnchor anchor)
    {
        var text = number.ToString(CultureInfo.InvariantCulture);
        if (across.X > 0)
        {
            return new(text, at - new Step(0, NumberHeightMm / 2), NumberHeightMm, anchor);
        }

        var below = anchor == TextAnchor.Right ? NumberHeightMm : 0;
        return new(text, at - new Step(0, below), NumberHeightMm, TextAnchor.Middle);
    }
}
