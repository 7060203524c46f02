using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>The edge of a top as something to stay inside of.</summary>
/// <remarks>
/// What lies inside an outline lies inside its convex hull and clear of the hollows between the two, each a convex area or divided into
/// such; and it is as far from the outline as from the nearest of them.
/// </remarks>
public static class TopRim
{
    /// <summary>How far a part lies inside one side of the top; negative by how far it reaches over it.</summary>
    public static double InsideMm(TopCloth top, Side side, Box part) => Of(top, side).DistanceMm(part);

    /// <summary>One side of the top.</summary>
    internal static Obstacle Of(TopCloth top, Side side) =>
        top.Outline.IsRectangle ? new RimObstacle(Straight(Plan.Of(top), side)) : new AllObstacles([.. Parts(top.Outline).Where(part => part.Side == side).Select(part => part.Obstacle)]);

    private static HalfPlane Straight(Box whole, Side side) => side switch
    {
        Side.Port => new(new(whole.Left, 0), new(0, -1)),
        Side.Starboard => new(new(whole.Right, 0), new(0, 1)),
        Side.Forward => new(new(0, whole.Top), new(-1, 0)),
        _ => new(new(0, whole.Bottom), new(1, 0)),
    };

    /// <summary>What must be kept, for every edge of the hull, and for the hollow behind those that the outline does not follow.</summary>
    private static IEnumerable<(Side Side, Obstacle Obstacle)> Parts(TopOutline outline)
    {
        var (shape, hull) = (outline.Shape, ConvexHull.Of(outline.Shape.Corners));
        for (var i = 0; i < hull.Count; i++)
        {
            var (from, to) = (shape.Corners.IndexOf(hull[i]), shape.Corners.IndexOf(hull[i + 1]));
            var edges = ((to - from) + shape.Count) % shape.Count;
            var side = outline.SideOf(from + (edges / 2));
            yield return (side, new RimObstacle(new(hull[i], hull[i + 1] - hull[i])));
            if (edges > 1 && Hollow(shape, from, edges) is { } hollow)
            {
                foreach (var part in ConvexDivision.Of(hollow))
                {
                    yield return (side, new ZoneObstacle(part.Corners, 0));
                }
            }
        }
    }

    /// <summary>The area between an edge of the hull and the outline inside it; null where the two are one.</summary>
    private static Outline? Hollow(Outline shape, int from, int edges)
    {
        const double LeastMm = 1e-6;
        ImmutableArray<Point> line = [.. Enumerable.Range(from, edges + 1).Select(i => shape[i])];
        var chord = new HalfPlane(line[0], line[^1] - line[0]);
        return line.Any(point => chord.InsideMm(point) > LeastMm) ? new(line) : null;
    }
}
