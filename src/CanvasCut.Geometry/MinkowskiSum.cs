namespace CanvasCut.Geometry;

/// <summary>Adds outlines point by point.</summary>
public static class MinkowskiSum
{
    /// <summary>All sums of a point of one convex outline and a point of another.</summary>
    /// <remarks>
    /// Every corner is the sum of two corners, so upright edges stay upright to the last digit. The edges of both,
    /// merged by direction: M. de Berg and others, "Computational Geometry" (2008), section 13.3.
    /// </remarks>
    /// <exception cref="ArgumentException">An outline is not convex enough for the sum to enclose an area.</exception>
    public static Outline OfConvex(Outline first, Outline second)
    {
        var (firstHull, secondHull) = (ConvexHull.Of(first.Corners), ConvexHull.Of(second.Corners));
        var corners = new List<Point>();
        var (i, j) = (0, 0);
        while (i < firstHull.Count || j < secondHull.Count)
        {
            corners.Add(firstHull[i] + (secondHull[j] - new Point(0, 0)));
            var turn = TurnBetween(firstHull, i, secondHull, j);
            i += turn >= 0 ? 1 : 0;
            j += turn <= 0 ? 1 : 0;
        }

        return ConvexHull.Of(corners);
    }

    /// <summary>Above zero when the first hull's next edge comes before the second's, going round.</summary>
    private static double TurnBetween(Outline first, int i, Outline second, int j)
    {
        if (i == first.Count || j == second.Count)
        {
            return i == first.Count ? -1 : 1;
        }

        // Both hulls start at their leftmost corner, so both run to the right first and back afterwards.
        var (edge, other) = (first[i + 1] - first[i], second[j + 1] - second[j]);
        var (half, otherHalf) = (RunsBack(edge), RunsBack(other));
        return half == otherHalf ? edge.Cross(other) : otherHalf.CompareTo(half);
    }

    private static bool RunsBack(Step edge) => edge.X < 0 || (edge.X == 0 && edge.Y < 0);
}
