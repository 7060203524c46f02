using System.Collections.Immutable;
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

    /// <summary>The cloth that lies on a tube.</summary>
    public static Outline BandOf(TopTube tube) => Outline.Along(Of(tube.From), Of(tube.To), tube.Diameter.Millimeters);

    /// <summary>What is on the top already in convex parts, each set out by so much; a part with two corners is a line.</summary>
    public static ImmutableArray<(ImmutableArray<Point> Corners, double HalfMm)> PartsOf(TopFixture fixture)
    {
        ImmutableArray<Point> places = [.. fixture.Places.Select(Of)];
        return fixture.LineWidth is { } width ? [.. places.Zip(places.Skip(1), (from, to) => (ImmutableArray.Create(from, to), width.Millimeters / 2))]
            : places.Length == 2 ? [(CornersOf(Box.Holding(places)), 0)]
            : [.. ConvexDivision.Of(new(places)).Select(part => (part.Corners, 0.0))];
    }

    /// <summary>The outlines of what is on the top already, for drawing; a line without breadth is drawn a little wide.</summary>
    public static ImmutableArray<Outline> OutlinesOf(TopFixture fixture)
    {
        const double LeastMm = 2;
        ImmutableArray<Point> places = [.. fixture.Places.Select(Of)];
        return fixture.LineWidth is { } width ? [.. places.Zip(places.Skip(1), (from, to) => Outline.Along(from, to, Math.Max(width.Millimeters, LeastMm)))]
            : places.Length > 2 ? [new(places)]
            : Box.Holding(places) is { WidthMm: > LeastMm, HeightMm: > LeastMm } box ? [Outline.Of(box)] : [Outline.Along(places[0], places[1], LeastMm)];
    }

    /// <summary>The area over which a boom swings, and which it shades when the sun stands above it.</summary>
    /// <remarks>Its rounded end is held as straight pieces outside the arc, on the safe side.</remarks>
    public static Outline SwingOf(TopBoom boom)
    {
        const double PieceDegrees = 2.5;
        var (pivot, swing) = (new Point(0, -boom.Pivot.Millimeters), boom.Swing.Radians);
        var pieces = Math.Max(2, (int)Math.Ceiling(2 * boom.Swing.Degrees / PieceDegrees));
        var reach = (boom.End - boom.Pivot).Millimeters / Math.Cos(swing / pieces);
        return new([pivot, .. Enumerable.Range(0, pieces + 1).Select(i => -swing + (2 * swing * i / pieces)).Select(angle => pivot + (new Step(Math.Sin(angle), -Math.Cos(angle)) * reach))]);
    }

    private static ImmutableArray<Point> CornersOf(Box box) => [box.LowerLeft, new(box.Right, box.Bottom), new(box.Right, box.Top), new(box.Left, box.Top)];

    /// <summary>An area as far as the top reaches; null where it lies beside the top.</summary>
    public static Outline? OnTop(TopCloth top, Outline convex) => OutlineOf(top).Shared(convex);

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
