using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>The places that one shape may not take beside another that lies at the origin, as convex parts.</summary>
/// <remarks>
/// A place is forbidden when it lies inside some part, so the parts need not be made one. The distances from all edges
/// lie side by side, each part's filled up to fours, because four are worked out at once; so are the boxes around the
/// parts.
/// </remarks>
internal sealed class NoFitParts
{
    private const int Lanes = 4;

    /// <summary>An edge so nearly along a line does not cross it.</summary>
    private const double Level = 1e-12;

    private readonly double[] _edges;
    private readonly double[] _boxes;
    private readonly int[] _starts;

    private NoFitParts(IReadOnlyList<Outline> parts)
    {
        _starts = new int[parts.Count + 1];
        for (var part = 0; part < parts.Count; part++)
        {
            _starts[part + 1] = _starts[part] + ((parts[part].Count + Lanes - 1) / Lanes * 3 * Lanes);
        }

        _edges = [.. parts.SelectMany(Edges)];
        _boxes = [.. parts.Select(part => part.Bounds).Chunk(Lanes).SelectMany(Boxes)];
        Corners = [.. parts.SelectMany(part => part.Corners)];
    }

    /// <summary>The corners of all parts: where the shapes touch in two ways, if no other part covers them.</summary>
    public Point[] Corners { get; }

    /// <summary>The parts for two shapes.</summary>
    public static NoFitParts Between(IReadOnlyList<Outline> lying, IReadOnlyList<Outline> coming, double gapMm)
    {
        var parts = lying.SelectMany(one => coming.Select(other => Sum(one, other, gapMm))).ToList();
        return new(Needed(parts));
    }

    /// <summary>How deep a place lies inside the parts, all together; 0 when the shapes touch at most.</summary>
    /// <remarks>
    /// The sum leads out of a dent faster than the depth in the deepest part: it falls with every part that is left.
    /// </remarks>
    public double DepthMm(double x, double y)
    {
        var (xs, ys) = (Vector256.Create(x), Vector256.Create(y));
        if (_starts.Length == 2)
        {
            return DepthMm(xs, ys, 0);
        }

        var sum = 0.0;
        ref var boxes = ref MemoryMarshal.GetArrayDataReference(_boxes);
        for (var first = 0; first < _starts.Length - 1; first += Lanes)
        {
            var at = (nuint)(first * 4);
            var isIn = Vector256.LessThan(Vector256.LoadUnsafe(ref boxes, at), xs) & Vector256.GreaterThan(Vector256.LoadUnsafe(ref boxes, at + 4), xs) &
                Vector256.LessThan(Vector256.LoadUnsafe(ref boxes, at + 8), ys) & Vector256.GreaterThan(Vector256.LoadUnsafe(ref boxes, at + 12), ys);
            for (var bits = Vector256.ExtractMostSignificantBits(isIn); bits != 0; bits &= bits - 1)
            {
                sum += DepthMm(xs, ys, first + BitOperations.TrailingZeroCount(bits));
            }
        }

        return sum;
    }

    /// <summary>The first place to the left of one, at the same height or width, where a part that does not hold it ends.</summary>
    /// <param name="place">The place.</param>
    /// <param name="isDown">Whether to look down in place of left.</param>
    /// <returns>The coordinate; minus infinity when the way is free.</returns>
    public double StopBefore(Point place, bool isDown)
    {
        var stop = double.NegativeInfinity;
        for (var part = 0; part + 1 < _starts.Length; part++)
        {
            var (from, to) = Inside(place, isDown, part);
            if (to - from > ForbiddenZone.TouchMm && from < (isDown ? place.Y : place.X))
            {
                stop = Math.Max(stop, to);
            }
        }

        return stop;
    }

    /// <summary>Gathers where a line through a place, along the strip or across it, enters and leaves the parts.</summary>
    public void Ends(Point place, bool isDown, double origin, List<double> ends)
    {
        for (var part = 0; part + 1 < _starts.Length; part++)
        {
            var (from, to) = Inside(place, isDown, part);
            if (to - from > ForbiddenZone.TouchMm)
            {
                ends.Add(origin + from);
                ends.Add(origin + to);
            }
        }
    }

    private static Outline Sum(Outline lying, Outline coming, double gapMm)
    {
        var touching = MinkowskiSum.OfConvex(lying, coming.Turned(2));
        return gapMm > 0 ? Outset.By(touching, gapMm) ?? throw new InvalidOperationException("A convex outline can always be set out.") : touching;
    }

    /// <summary>The parts without those that lie wholly in a single other one.</summary>
    private static List<Outline> Needed(List<Outline> parts)
    {
        var needed = new List<Outline>();
        foreach (var part in parts.OrderByDescending(part => part.AreaMm2))
        {
            if (!needed.Any(larger => larger.Bounds.Holds(part.Bounds) && part.Corners.All(corner => larger.InnerSides.All(side => side.InsideMm(corner) >= 0))))
            {
                needed.Add(part);
            }
        }

        return needed;
    }

    /// <summary>The edges in fours: four steps inward across, four along, four distances; the first four look many ways.</summary>
    private static IEnumerable<double> Edges(Outline part)
    {
        var groups = (part.Count + Lanes - 1) / Lanes;
        for (var group = 0; group < groups; group++)
        {
            (Step Inward, double Distance)[] four = [.. Enumerable.Range(0, Lanes).Select(lane => Edge(((lane * groups) + group) % part.Count))];
            foreach (var number in four.Select(edge => edge.Inward.X).Concat(four.Select(edge => edge.Inward.Y)).Concat(four.Select(edge => edge.Distance)))
            {
                yield return number;
            }
        }

        (Step Inward, double Distance) Edge(int index)
        {
            var inward = (part[index + 1] - part[index]).Unit().Left;
            return (inward, inward.Dot(part[index] - new Point(0, 0)));
        }
    }

    /// <summary>Four boxes: four left sides, right sides, bottoms and tops; what is missing holds nothing.</summary>
    private static IEnumerable<double> Boxes(Box[] boxes) =>
        [.. Side(boxes, box => box.Left), .. Side(boxes, box => box.Right), .. Side(boxes, box => box.Bottom), .. Side(boxes, box => box.Top)];

    private static IEnumerable<double> Side(Box[] boxes, Func<Box, double> side) =>
        boxes.Select(side).Concat(Enumerable.Repeat(double.NaN, Lanes - boxes.Length));

    /// <summary>How deep a place lies inside a part; 0 when it does not, or only touches it.</summary>
    private double DepthMm(Vector256<double> x, Vector256<double> y, int part)
    {
        ref var edges = ref MemoryMarshal.GetArrayDataReference(_edges);
        var least = Vector256.Create(double.MaxValue);
        var floor = Vector256.Create(ForbiddenZone.TouchMm);
        var end = (nuint)_starts[part + 1];
        for (var i = (nuint)_starts[part]; i < end; i += 3 * Lanes)
        {
            var inside = (Vector256.LoadUnsafe(ref edges, i) * x) + (Vector256.LoadUnsafe(ref edges, i + Lanes) * y) - Vector256.LoadUnsafe(ref edges, i + (2 * Lanes));
            if (Vector256.LessThanOrEqualAny(inside, floor))
            {
                return 0;
            }

            least = Vector256.Min(least, inside);
        }

        return Math.Min(Math.Min(least[0], least[1]), Math.Min(least[2], least[3]));
    }

    /// <summary>From where to where a line through a place runs deeper in a part than a touch.</summary>
    private (double From, double To) Inside(Point place, bool isDown, int part)
    {
        ref var edges = ref MemoryMarshal.GetArrayDataReference(_edges);
        var (slopeAt, restAt, held) = isDown ? ((nuint)Lanes, (nuint)0, place.X) : (0, Lanes, place.Y);
        var (from, to) = (Vector256.Create(double.NegativeInfinity), Vector256.Create(double.PositiveInfinity));
        var (end, fixedAt) = ((nuint)_starts[part + 1], Vector256.Create(held));
        for (var i = (nuint)_starts[part]; i < end; i += 3 * Lanes)
        {
            var slope = Vector256.LoadUnsafe(ref edges, i + slopeAt);
            var rest = (Vector256.LoadUnsafe(ref edges, i + restAt) * fixedAt) - Vector256.LoadUnsafe(ref edges, i + (2 * Lanes));
            var isLevel = Vector256.LessThan(Vector256.Abs(slope), Vector256.Create(Level));
            if (Vector256.ExtractMostSignificantBits(isLevel & Vector256.LessThanOrEqual(rest, Vector256.Create(ForbiddenZone.TouchMm))) != 0)
            {
                return (0, double.NegativeInfinity);
            }

            var crossing = -rest / slope;
            var isEntry = Vector256.GreaterThan(slope, Vector256<double>.Zero);
            from = Vector256.ConditionalSelect(isEntry & ~isLevel, Vector256.Max(from, crossing), from);
            to = Vector256.ConditionalSelect(~isEntry & ~isLevel, Vector256.Min(to, crossing), to);
        }

        return (Math.Max(Math.Max(from[0], from[1]), Math.Max(from[2], from[3])), Math.Min(Math.Min(to[0], to[1]), Math.Min(to[2], to[3])));
    }
}
