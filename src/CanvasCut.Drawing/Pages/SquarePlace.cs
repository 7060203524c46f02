using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>Puts the test squares where a page is emptiest.</summary>
internal static class SquarePlace
{
    private const double SideMm = TestSquares.InchSideMm;

    /// <summary>How far the squares' lines stay from the area's edge.</summary>
    private const double InsetMm = 0.5;

    /// <summary>A word over a line of the piece is worse than a line over it.</summary>
    private const double LabelWeight = 4;

    /// <summary>Between equally good places the one nearer the lower left corner is taken.</summary>
    private const double DistanceWeightPerMm = 1e-6;

    /// <summary>The corner at which the squares disturb the least.</summary>
    /// <param name="area">Where they may stand; at least their size.</param>
    /// <param name="figures">What is drawn on the page already.</param>
    public static Point BestCorner(Box area, ImmutableArray<Figure> figures)
    {
        var allowed = area.Grown(-InsetMm);
        var occupancy = new Occupancy(area, figures);
        var corners =
            from y in Places(allowed.Bottom, allowed.Top - SideMm)
            from x in Places(allowed.Left, allowed.Right - SideMm)
            select new Point(x, y);
        return corners.MinBy(corner => Cost(occupancy, corner) + (DistanceWeightPerMm * (corner.X + corner.Y)));
    }

    private static IEnumerable<double> Places(double fromMm, double toMm)
    {
        for (var place = fromMm; place < toMm; place += Occupancy.CellMm)
        {
            yield return place;
        }

        yield return toMm;
    }

    private static double Cost(Occupancy occupancy, Point corner)
    {
        var square = new Box(corner.X, corner.Y, corner.X + SideMm, corner.Y + SideMm);
        var label = square with { Right = corner.X + TestSquares.LabelSize.WidthMm, Top = corner.Y + TestSquares.LabelSize.HeightMm };
        var frame = occupancy.Fullness(square.Grown(Occupancy.CellMm / 2)) - occupancy.Fullness(square.Grown(-2 * Occupancy.CellMm));
        return frame + (LabelWeight * (occupancy.Fullness(label) + TestSquares.NamesAt(corner).Sum(occupancy.Fullness)));
    }
}
