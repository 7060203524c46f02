using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace CanvasCut.Geometry;

/// <summary>What lies further inside an outline than a distance; for drawing alone, nothing is measured by it.</summary>
public static class InnerOutline
{
    /// <summary>The largest part of it; null when nothing is left.</summary>
    /// <param name="outline">An outline that does not cross itself.</param>
    /// <param name="byMm">How far inside; not negative.</param>
    public static Outline? By(Outline outline, double byMm)
    {
        var rest = BufferOp.Buffer(Witness.ToPolygon(outline), -byMm, new BufferParameters { JoinStyle = JoinStyle.Round, QuadrantSegments = 16 });
        return Enumerable.Range(0, rest.NumGeometries).Select(rest.GetGeometryN).OfType<Polygon>().MaxBy(part => part.Area) is { IsEmpty: false } largest
            ? new(largest.ExteriorRing.Coordinates.SkipLast(1).Select(at => new Point(at.X, at.Y)))
            : null;
    }
}
