namespace CanvasCut.Geometry;

/// <summary>Finds the smallest convex outline around points.</summary>
public static class ConvexHull
{
    /// <summary>The hull of the points, from the leftmost corner (the lowest of several) counter-clockwise.</summary>
    /// <returns>A hull without corners inside a straight edge.</returns>
    /// <remarks>
    /// The monotone chain of A. M. Andrew, "Another efficient algorithm for convex hulls in two dimensions",
    /// Information Processing Letters 9 (1979).
    /// </remarks>
    /// <exception cref="ArgumentException">The points enclose no area.</exception>
    public static Outline Of(IEnumerable<Point> points)
    {
        Point[] sorted = [.. points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y)];
        return new([.. Chain(sorted), .. Chain(sorted.Reverse())]);
    }

    private static List<Point> Chain(IEnumerable<Point> points)
    {
        var chain = new List<Point>();
        foreach (var point in points)
        {
            while (chain.Count > 1 && (chain[^1] - chain[^2]).Cross(point - chain[^1]) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(point);
        }

        // The last point begins the chain that runs back.
        chain.RemoveAt(chain.Count - 1);
        return chain;
    }
}
