namespace CanvasCut.Geometry;

/// <summary>Compares closed lines through points.</summary>
public static class ClosedLine
{
    /// <summary>The largest distance from a corner of either line to the other line.</summary>
    /// <param name="one">Its corners, the first not repeated; at least one.</param>
    /// <param name="other">Likewise.</param>
    public static double DistanceMm(IReadOnlyList<Point> one, IReadOnlyList<Point> other) => Math.Max(FarthestMm(one, other), FarthestMm(other, one));

    private static double FarthestMm(IReadOnlyList<Point> corners, IReadOnlyList<Point> line) =>
        corners.Max(corner => Enumerable.Range(0, line.Count).Min(i => ToSegmentMm(corner, line[i], line[(i + 1) % line.Count])));

    private static double ToSegmentMm(Point point, Point from, Point to)
    {
        var along = to - from;
        var square = along.Dot(along);
        var part = square > 0 ? Math.Clamp((point - from).Dot(along) / square, 0, 1) : 0;
        return point.DistanceMm(from.Toward(to, part));
    }
}
