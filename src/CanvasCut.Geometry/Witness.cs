using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace CanvasCut.Geometry;

/// <summary>Answers about outlines from NetTopologySuite, which shares no formula with our own constructions.</summary>
public static class Witness
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>The outline as NetTopologySuite holds it.</summary>
    public static Polygon ToPolygon(Outline outline) =>
        Factory.CreatePolygon([.. outline.Corners.Append(outline[0]).Select(p => new Coordinate(p.X, p.Y))]);

    /// <summary>Whether the outline does not touch or cross itself.</summary>
    public static bool IsValid(Outline outline) => ToPolygon(outline).IsValid;

    /// <summary>The area two outlines share.</summary>
    public static double OverlapMm2(Outline first, Outline second) => Overlaid(first, second, SpatialFunction.Intersection);

    /// <summary>The area of <paramref name="inner"/> that sticks out of <paramref name="outer"/>.</summary>
    public static double OutsideMm2(Outline inner, Outline outer) => Overlaid(inner, outer, SpatialFunction.Difference);

    /// <summary>The smallest distance between two outlines; 0 when they meet.</summary>
    public static double DistanceMm(Outline first, Outline second) => ToPolygon(first).Distance(ToPolygon(second));

    /// <summary>The library's newer overlay, which holds its ground where edges nearly coincide.</summary>
    private static double Overlaid(Outline first, Outline second, SpatialFunction function) =>
        OverlayNGRobust.Overlay(ToPolygon(first), ToPolygon(second), function).Area;
}
