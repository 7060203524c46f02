using System.Collections.Immutable;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Why the measures of a top make no outline.</summary>
public enum OutlineFault
{
    /// <summary>The edges cross or touch each other.</summary>
    Crosses,

    /// <summary>An end of the forward or aft edge lies beyond the other end of the top's side.</summary>
    EndBeyond,

    /// <summary>The edges at the forward port corner are too short for what is cut or rounded there.</summary>
    ForwardPort,

    /// <summary>The same forward to starboard.</summary>
    ForwardStarboard,

    /// <summary>The same aft to port.</summary>
    AftPort,

    /// <summary>The same aft to starboard.</summary>
    AftStarboard,
}

/// <summary>Draws the outline of a top from its measures.</summary>
/// <remarks>
/// The sides run from station to station, straight or as an arc; they end where the forward and the aft edge meet them. Then each corner is
/// rounded or cut.
/// </remarks>
public sealed class TopOutlineDrawing
{
    /// <summary>Three points that leave a straight line by less lie on one.</summary>
    private const double StraightMm = 1e-6;

    private readonly TopShape _shape;

    /// <summary>Draws.</summary>
    public TopOutlineDrawing(TopShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        _shape = shape;
        Outline = shape.IsRectangle ? TopOutline.Rectangle(shape.Length, shape.Widths[0].Port * 2) : Drawn();
    }

    /// <summary>The outline; null when there is none.</summary>
    public TopOutline? Outline { get; }

    /// <summary>Why there is none; null when there is one.</summary>
    public OutlineFault? Fault { get; private set; }

    private TopOutline? Drawn()
    {
        if (SideLine(1) is not { } starboard || SideLine(-1) is not { } port)
        {
            Fault = OutlineFault.EndBeyond;
            return null;
        }

        var sides = new[]
        {
            (Side: Side.Aft, Line: EndLine(port[^1], -_shape.Length.Millimeters, starboard[^1], _shape.Aft.IsRound)),
            (Side: Side.Starboard, Line: new OpenLine(starboard.Reverse())),
            (Side: Side.Forward, Line: EndLine(starboard[0], 0, port[0], _shape.Forward.IsRound)),
            (Side: Side.Port, Line: new OpenLine(port)),
        };
        return Crosses(TopOutline.Drawn(sides.Select(side => (side.Side, side.Line.Points)))) ? null : Blended(sides);
    }

    private TopOutline? Blended((Side Side, OpenLine Line)[] sides)
    {
        var corners = _shape.Corners;
        (TopCorner Corner, OutlineFault Fault)[] ends =
        [
            (corners.AftStarboard, OutlineFault.AftStarboard), (corners.ForwardStarboard, OutlineFault.ForwardStarboard),
            (corners.ForwardPort, OutlineFault.ForwardPort), (corners.AftPort, OutlineFault.AftPort),
        ];
        var across = new ImmutableArray<Point>[sides.Length];
        for (var i = 0; i < sides.Length; i++)
        {
            var (next, corner) = ((i + 1) % sides.Length, ends[i].Corner);
            across[i] = [];
            if (corner.Size <= Length.Zero)
            {
                continue;
            }

            var blend = corner.IsCut ? CornerBlend.Cut : (Func<OpenLine, OpenLine, double, BlendedCorner?>)CornerBlend.Round;
            if (blend(sides[i].Line, sides[next].Line, corner.Size.Millimeters) is not { } blended)
            {
                Fault = ends[i].Fault;
                return null;
            }

            (sides[i].Line, sides[next].Line, across[i]) = (blended.Before, blended.After, blended.Across);
        }

        var outline = TopOutline.Drawn(sides.SelectMany((side, i) => WithCorner(side, across[i], sides[(i + 1) % sides.Length].Side)));
        return Crosses(outline) ? null : outline;
    }

    /// <summary>Half of what lies across a corner belongs to each side; one straight cut belongs to port or starboard.</summary>
    private static IEnumerable<(Side Side, ImmutableArray<Point> Line)> WithCorner((Side Side, OpenLine Line) side, ImmutableArray<Point> across, Side next)
    {
        yield return (side.Side, side.Line.Points);
        if (across.Length == 2)
        {
            yield return (side.Side is Side.Port or Side.Starboard ? side.Side : next, across);
        }
        else if (across.Length > 2)
        {
            yield return (side.Side, across[..((across.Length / 2) + 1)]);
            yield return (next, across[(across.Length / 2)..]);
        }
    }

    private bool Crosses(TopOutline outline)
    {
        Fault = Witness.IsValid(outline.Shape) ? Fault : OutlineFault.Crosses;
        return Fault is not null;
    }

    /// <summary>A side from the forward edge to the aft one; null when its ends are in the wrong order.</summary>
    private ImmutableArray<Point>? SideLine(int hand)
    {
        double EndOf(EdgeEnds ends) => (hand < 0 ? ends.Port : ends.Starboard).Millimeters;
        var (forward, aft) = (EndOf(_shape.Forward), _shape.Length.Millimeters + EndOf(_shape.Aft));
        if (forward >= aft)
        {
            return null;
        }

        Point At(TopWidth width) => new(hand * (hand < 0 ? width.Port : width.Starboard).Millimeters, -width.Station.Millimeters);
        var nodes = _shape.Widths;
        var points = new List<Point> { new(At(nodes[0]).X, Math.Max(-forward, At(nodes[0]).Y) + 1) };
        foreach (var (node, next) in nodes.Zip(nodes.Skip(1)))
        {
            // From forward to aft the top lies to the left of its port side.
            points.AddRange(OpenLine.Arc(At(node), At(next), -hand * node.HollowAft.Millimeters));
        }

        points.Add(At(nodes[^1]));
        points.Add(new(At(nodes[^1]).X, Math.Min(-aft, At(nodes[^1]).Y) - 1));
        return Between([.. points], -forward, -aft);
    }

    /// <summary>The part of a line that runs aft between two heights of the plan.</summary>
    private static ImmutableArray<Point> Between(ImmutableArray<Point> line, double high, double low)
    {
        var kept = new HalfPlane(new(0, high), new(-1, 0)).Cut(line)[0];
        return new HalfPlane(new(0, low), new(1, 0)).Cut(kept)[0];
    }

    /// <summary>The forward or the aft edge from one end through the middle to the other.</summary>
    private static OpenLine EndLine(Point from, double middleY, Point to, bool isRound)
    {
        var middle = new Point(0, middleY);
        return isRound && Math.Abs(new HalfPlane(from, to - from).InsideMm(middle)) > StraightMm
            ? new([.. ThroughMiddle(from, middle, to), to])
            : new(Math.Abs(new HalfPlane(from, to - from).InsideMm(middle)) > StraightMm ? [from, middle, to] : [from, to]);
    }

    /// <summary>The arc through three points, in two parts so that it has the middle as a point.</summary>
    private static IEnumerable<Point> ThroughMiddle(Point from, Point middle, Point to)
    {
        var (first, second) = (middle - from, to - middle);
        var turn = Math.Atan2(first.Cross(to - from), first.Dot(to - from));
        var other = Math.Atan2((to - from).Cross(second), (to - from).Dot(second));

        // The angle between a chord and its tangent is that of the other chord seen from the far end (Euclid III, 32).
        return OpenLine.Arc(from, middle, -first.LengthMm / 2 * Math.Tan(other / 2)).Concat(OpenLine.Arc(middle, to, -second.LengthMm / 2 * Math.Tan(turn / 2)));
    }
}
