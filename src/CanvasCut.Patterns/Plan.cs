using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The top seen from above as a plane: X is the offset to starboard, Y points forward, millimetres.</summary>
/// <remarks>The origin is where the centreline meets the top's forward edge, so Y is minus the station.</remarks>
public static class Plan
{
    /// <summary>A place on the top as a point of the plane.</summary>
    public static Point Of(TopPlace place) => new(place.Offset.Millimeters, -place.Station.Millimeters);

    /// <summary>A point of the plane as a place on the top.</summary>
    public static TopPlace PlaceOf(Point point) => new(Length.FromMillimeters(-point.Y), Length.FromMillimeters(point.X));

    /// <summary>The box round the whole top.</summary>
    public static Box Of(TopCloth top) => top.Outline.Shape.Bounds;

    /// <summary>The edge of the top.</summary>
    public static Outline OutlineOf(TopCloth top) => top.Outline.Shape;

    /// <summary>The part of the top on which something may be mounted; null when the margin leaves nothing.</summary>
    public static Outline? UsableOf(TopCloth top) => top.Outline.IsRectangle
        ? Outline.Of(Of(top).Grown(-top.Edges.Margin.Millimeters))
        : InnerOutline.By(OutlineOf(top), top.Edges.Margin.Millimeters);

    /// <summary>A keep-out without its clearance.</summary>
    public static Box Of(KeepOut keepOut) => new(
        keepOut.Offset.From.Millimeters,
        -keepOut.Station.To.Millimeters,
        keepOut.Offset.To.Millimeters,
        -keepOut.Station.From.Millimeters);

    /// <summary>A band of cloth as far as the top reaches; null where it lies beside the top.</summary>
    public static Outline? OnTop(TopCloth top, Box band) => top.Outline.IsRectangle ? Outline.Of(band) : OutlineOf(top).Shared(Outline.Of(band));

    /// <summary>The band of cloth that lies on a bow's tube, across the whole top.</summary>
    public static Box BandOf(TopCloth top, Bow bow)
    {
        var whole = Of(top);
        var (middle, half) = (-bow.Station.Millimeters, bow.Diameter.Millimeters / 2);
        return new(whole.Left, middle - half, whole.Right, middle + half);
    }
}
