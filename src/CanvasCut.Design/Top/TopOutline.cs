using System.Collections.Immutable;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The edge of a top seen from above: X is the offset to starboard, Y minus the station, in millimetres.</summary>
public sealed class TopOutline
{
    private readonly ImmutableArray<Side> _sides;

    private TopOutline(Outline shape, ImmutableArray<Side> sides, bool isRectangle) => (Shape, _sides, IsRectangle) = (shape, sides, isRectangle);

    /// <summary>The outline, counter-clockwise.</summary>
    public Outline Shape { get; }

    /// <summary>Whether it is a rectangle with the centreline in its middle.</summary>
    public bool IsRectangle { get; }

    /// <summary>A rectangle with the centreline in its middle.</summary>
    public static TopOutline Rectangle(Length length, Length width) => new(
        Outline.Of(new Box(-width.Millimeters / 2, -length.Millimeters, width.Millimeters / 2, 0)),
        [Side.Aft, Side.Starboard, Side.Forward, Side.Port],
        isRectangle: true);

    /// <summary>The outline of a shape; null when its measures make none, which <see cref="TopOutlineDrawing"/> tells in full.</summary>
    public static TopOutline? Of(TopShape shape) => new TopOutlineDrawing(shape).Outline;

    /// <summary>The side that an edge of the outline belongs to; of a rounded corner one half belongs to each.</summary>
    /// <param name="edge">The number of the edge, that of the corner at which it starts.</param>
    public Side SideOf(int edge) => _sides[((edge % _sides.Length) + _sides.Length) % _sides.Length];

    /// <summary>The line of one side: from port to starboard, or from aft to forward.</summary>
    public ImmutableArray<Point> LineOf(Side side)
    {
        // The first edge of a side is the one whose forerunner belongs to another.
        var first = Enumerable.Range(0, Shape.Count).First(edge => SideOf(edge) == side && SideOf(edge - 1) != side);
        ImmutableArray<Point> line = [Shape[first], .. Enumerable.Range(first, Shape.Count).TakeWhile(edge => SideOf(edge) == side).Select(edge => Shape[edge + 1])];
        return side is Side.Forward or Side.Port ? [.. line.Reverse()] : line;
    }

    /// <summary>From the port edge to the starboard edge at a height of the plan; null where the top has none.</summary>
    public (Point From, Point To)? Across(double y) => Extent(y, point => point.Y, point => point.X) is { } at ? (new(at.Least, y), new(at.Most, y)) : null;

    /// <summary>From the aft edge to the forward edge at an offset; null where the top has none.</summary>
    public (Point From, Point To)? Along(double x) => Extent(x, point => point.X, point => point.Y) is { } at ? (new(x, at.Least), new(x, at.Most)) : null;

    /// <summary>How far the top reaches from the centreline to both sides at a station; beyond its ends as far as at the nearest end.</summary>
    public (Length Port, Length Starboard) HalvesAt(Length station)
    {
        var (from, to) = Across(Math.Clamp(-station.Millimeters, Shape.Bounds.Bottom, Shape.Bounds.Top))!.Value;
        return (Length.FromMillimeters(-from.X), Length.FromMillimeters(to.X));
    }

    /// <summary>Whether a place lies on the top, its edge included.</summary>
    public bool Holds(TopPlace place)
    {
        const double EdgeMm = 0.5;
        ArgumentNullException.ThrowIfNull(place);
        var at = new Point(place.Offset.Millimeters, -place.Station.Millimeters);
        return Shape.Surrounds(at) || new OpenLine([.. Shape.Corners, Shape[0]]).Nearest(at).AwayMm < EdgeMm;
    }

    /// <summary>An outline of lines that have been drawn.</summary>
    internal static TopOutline Drawn(IEnumerable<(Side Side, ImmutableArray<Point> Line)> lines)
    {
        var (corners, sides) = (ImmutableArray.CreateBuilder<Point>(), ImmutableArray.CreateBuilder<Side>());
        foreach (var (side, line) in lines)
        {
            corners.AddRange(line.SkipLast(1));
            sides.AddRange(Enumerable.Repeat(side, line.Length - 1));
        }

        return new(new(corners), sides.ToImmutable(), isRectangle: false);
    }

    private (double Least, double Most)? Extent(double at, Func<Point, double> level, Func<Point, double> along)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < Shape.Count; i++)
        {
            var (from, to) = (Shape[i], Shape[i + 1]);
            var (low, high) = (level(from), level(to));
            if (at < Math.Min(low, high) || at > Math.Max(low, high))
            {
                continue;
            }

            double[] met = low == high ? [along(from), along(to)] : [along(from) + ((along(to) - along(from)) * (at - low) / (high - low))];
            (least, most) = (Math.Min(least, met.Min()), Math.Max(most, met.Max()));
        }

        return least <= most ? (least, most) : null;
    }
}
