using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace CanvasCut.Geometry;

/// <summary>Answers about outlines from NetTopologySuite, which shares no formula with our own constructions.</summary>
public static class Witness
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>Grids of 1e-9, 1e-8 and 1e-7 mm. Off a grid the library goes astray at steps such as 1e-50 mm.</summary>
    private static readonly PrecisionModel[] Grids = [new(1e9), new(1e8), new(1e7)];

    /// <summary>The area that may be lost for each millimetre of edge.</summary>
    private const double LargestLossMm = 2e-7;

    /// <summary>The outline as NetTopologySuite holds it.</summary>
    public static Polygon ToPolygon(Outline outline) =>
        Factory.CreatePolygon([.. outline.Corners.Append(outline[0]).Select(p => new Coordinate(p.X, p.Y))]);

    /// <summary>Whether the outline does not touch or cross itself.</summary>
    public static bool IsValid(Outline outline) => ToPolygon(outline).IsValid;

    /// <summary>The area two outlines share.</summary>
    public static double OverlapMm2(Outline first, Outline second) => Overlaid(first, second).SharedMm2;

    /// <summary>The area of <paramref name="inner"/> that sticks out of <paramref name="outer"/>.</summary>
    public static double OutsideMm2(Outline inner, Outline outer) => Overlaid(inner, outer).OutsideMm2;

    /// <summary>The smallest distance between two outlines; 0 when they meet.</summary>
    public static double DistanceMm(Outline first, Outline second) => ToPolygon(first).Distance(ToPolygon(second));

    /// <summary>
    /// The area that the first outline shares with the second, and the rest of it. Where edges coincide but for round-off
    /// an overlay can go astray; then the two do not make up the first outline, and it is done again on a wider grid.
    /// </summary>
    private static (double SharedMm2, double OutsideMm2) Overlaid(Outline first, Outline second)
    {
        var (one, other) = (ToPolygon(first), ToPolygon(second));
        foreach (var grid in Grids)
        {
            if (Overlaid(one, other, grid) is { } areas && Math.Abs(areas.SharedMm2 + areas.OutsideMm2 - one.Area) <= LargestLossMm * first.PerimeterMm)
            {
                return areas;
            }
        }

        throw new InvalidOperationException("No overlay of the two outlines holds together.");
    }

    private static (double SharedMm2, double OutsideMm2)? Overlaid(Polygon one, Polygon other, PrecisionModel grid)
    {
        try
        {
            return (OverlayNG.Overlay(one, other, SpatialFunction.Intersection, grid).Area, OverlayNG.Overlay(one, other, SpatialFunction.Difference, grid).Area);
        }
        catch (TopologyException)
        {
            return null;
        }
    }
}
