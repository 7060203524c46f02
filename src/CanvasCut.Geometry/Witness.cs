using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace CanvasCut.Geometry;

/// <summary>Answers about outlines from NetTopologySuite, which shares no formula with our own constructions.</summary>
public static class Witness
{
    private static readonly GeometryFactory Factory = new();
    private static readonly PrecisionModel Grid = new(1e9);

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

    /// <summary>
    /// The library's overlay on a grid of 1e-9 mm, which cannot go astray where edges coincide but for round-off; over a
    /// piece's perimeter that costs about 1e-5 mm² at the very most, and nothing where the outlines keep apart.
    /// </summary>
    private static double Overlaid(Outline first, Outline second, SpatialFunction function) =>
        OverlayNG.Overlay(ToPolygon(first), ToPolygon(second), function, Grid).Area;
}
