using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>The scales that run across a piece's joins, by which a reader proves that the pages are joined true.</summary>
/// <remarks>They are drawn in the plane of the piece before it is divided, so the joins cannot but cross them.</remarks>
internal static class LongScale
{
    /// <summary>How far beyond a join a scale must reach to prove it.</summary>
    private const double BeyondJoinMm = 20;

    /// <summary>Between the places that are tried.</summary>
    private const double StepMm = 4;

    /// <summary>A scale cut lengthwise by a join, or broken by a page that is not printed, is worse than one over any line or word.</summary>
    private const double JoinCost = 1e6;

    /// <summary>Of equally good places the one nearer the middle is taken.</summary>
    private const double DistanceWeightPerMm = 1e-3;

    /// <summary>The scales that a piece gets: from left to right, and from bottom to top, where it is divided that way.</summary>
    public static IEnumerable<(Ruler Ruler, bool IsUpright)> Of(TileGrid grid)
    {
        var (isLandscape, bounds) = (grid.Plan.IsLandscape, grid.PieceBounds);
        if (grid.Plan.Columns > 1)
        {
            yield return (new(PageLayout.AcrossName(isLandscape), LengthFor(bounds.WidthMm)), false);
        }

        if (grid.Plan.Rows > 1)
        {
            yield return (new(PageLayout.UpName(isLandscape), LengthFor(bounds.HeightMm)), true);
        }
    }

    /// <summary>Their figures, in the plane of the piece as it lies on its pages.</summary>
    public static ImmutableArray<Figure> FiguresOf(TileGrid grid)
    {
        var drawn = ImmutableArray<Figure>.Empty;
        foreach (var (ruler, isUpright) in Of(grid))
        {
            var place = isUpright ? Upright(grid, ruler, drawn) : Level(grid, ruler, drawn);
            drawn = drawn.AddRange(ruler.At(place, isUpright ? new(0, 1) : new(1, 0)));
        }

        return drawn;
    }

    /// <summary>Whole centimetres, so that its end is easily read off a tape measure.</summary>
    private static double LengthFor(double extentMm) => Math.Min(Ruler.LongestMm, Math.Floor(extentMm / 10) * 10);

    private static Point Level(TileGrid grid, Ruler ruler, ImmutableArray<Figure> drawn)
    {
        var bounds = grid.PieceBounds;
        var along = new Span(bounds.Left, bounds.Right, Enumerable.Range(0, grid.Plan.Columns - 1).Select(grid.JoinRightOf));
        var across = new Span(bounds.Bottom, bounds.Top, Enumerable.Range(0, grid.Plan.Rows - 1).Select(grid.JoinBelow));
        return Best(grid, ruler, (along, across), (from, at) => new(from, at), drawn);
    }

    private static Point Upright(TileGrid grid, Ruler ruler, ImmutableArray<Figure> drawn)
    {
        var bounds = grid.PieceBounds;
        var along = new Span(bounds.Bottom, bounds.Top, Enumerable.Range(0, grid.Plan.Rows - 1).Select(grid.JoinBelow));
        var across = new Span(bounds.Left, bounds.Right, Enumerable.Range(0, grid.Plan.Columns - 1).Select(grid.JoinRightOf));
        return Best(grid, ruler, (along, across), (from, at) => new(at, from), drawn);
    }

    /// <summary>Of the starts that cross the most joins, and all places beside each other, the one that disturbs the least.</summary>
    private static Point Best(TileGrid grid, Ruler ruler, (Span Along, Span Across) spans, Func<double, double, Point> point, ImmutableArray<Figure> drawn)
    {
        var (along, across) = spans;
        var occupancy = new Occupancy(grid.PieceBounds, [.. grid.PieceFigures, .. drawn, .. JoinMarks.Of(grid), .. EdgesOf(grid)]);
        var starts = along.Places(0, ruler.LengthMm).GroupBy(from => along.Crossed(from + BeyondJoinMm, from + ruler.LengthMm - BeyondJoinMm)).MaxBy(group => group.Key)!;
        ImmutableArray<Box> leftOut = [.. grid.LeftOut];
        var halfStripMm = (grid.Plan.Layout.OverlapMm / 2) + Ruler.SideMm;
        var places =
            from at in across.Places(Ruler.SideMm, Ruler.SideMm)
            let joinCost = JoinCost * across.Crossed(at - halfStripMm, at + halfStripMm)
            from start in starts
            select (Point: point(start, at), Cost: joinCost + Taken(start, at) + (DistanceWeightPerMm * (across.FromMiddleMm(at) + along.FromMiddleMm(start + (ruler.LengthMm / 2)))));
        return places.MinBy(place => place.Cost).Point;

        double Taken(double start, double at)
        {
            var room = Box.Holding([point(start, at - Ruler.SideMm), point(start + ruler.LengthMm, at + Ruler.SideMm)]);
            return occupancy.Fullness(room) + (JoinCost * leftOut.Count(page => !page.Shared(room).IsEmpty));
        }
    }

    /// <summary>What the pages say along their edges, in the plane of the piece.</summary>
    private static IEnumerable<Figure> EdgesOf(TileGrid grid) =>
        from page in grid.Pages
        from figure in new TileEdges(grid, page.Row, page.Column, grid.WindowOf(page.Row, page.Column)).Figures
        select figure;

    /// <summary>A piece's extent in one direction with the joins across it.</summary>
    private sealed class Span(double fromMm, double toMm, IEnumerable<double> joins)
    {
        private readonly double[] _joins = [.. joins];

        /// <summary>Places so far from both ends.</summary>
        public IEnumerable<double> Places(double beforeMm, double afterMm)
        {
            var lastMm = Math.Max(fromMm + beforeMm, toMm - afterMm);
            for (var place = fromMm + beforeMm; place < lastMm; place += StepMm)
            {
                yield return place;
            }

            yield return lastMm;
        }

        public int Crossed(double lowMm, double highMm) => _joins.Count(join => join > lowMm && join < highMm);

        public double FromMiddleMm(double placeMm) => Math.Abs(placeMm - ((fromMm + toMm) / 2));
    }
}
