using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A closed outline without holes: straight edges from corner to corner, counter-clockwise.</summary>
/// <remarks>
/// Immutable. Corners given clockwise are turned round. Curves are held as points. Edge <c>i</c> runs from corner
/// <c>i</c> to corner <c>i + 1</c>, the last one back to corner 0. The outline is checked for a size above zero,
/// not for crossing itself: <see cref="Witness.IsValid"/> tells that.
/// </remarks>
public sealed class Outline
{
    private const double SmallestAreaMm2 = 1e-9;
    private const double SamePlaceMm = 1e-9;

    /// <summary>Makes an outline.</summary>
    /// <param name="corners">At least three, finite, the first not repeated at the end.</param>
    /// <exception cref="ArgumentException">There are too few corners, one is not finite, or they enclose nothing.</exception>
    public Outline(IEnumerable<Point> corners)
    {
        ImmutableArray<Point> given = [.. corners];
        if (given.Length < 3 || given.Any(p => !double.IsFinite(p.X) || !double.IsFinite(p.Y)))
        {
            throw new ArgumentException("An outline needs at least three corners, all finite.", nameof(corners));
        }

        var area = SignedAreaMm2(given);
        if (Math.Abs(area) < SmallestAreaMm2)
        {
            throw new ArgumentException("The corners enclose no area.", nameof(corners));
        }

        Corners = area > 0 ? given : [.. given.Reverse()];
        AreaMm2 = Math.Abs(area);
        Bounds = Box.Holding(Corners);
    }

    /// <summary>The corners, counter-clockwise.</summary>
    public ImmutableArray<Point> Corners { get; }

    /// <summary>The area enclosed.</summary>
    public double AreaMm2 { get; }

    /// <summary>The smallest upright box around it.</summary>
    public Box Bounds { get; }

    /// <summary>How many corners, and so edges, there are.</summary>
    public int Count => Corners.Length;

    /// <summary>The length of all edges.</summary>
    public double PerimeterMm => Enumerable.Range(0, Count).Sum(i => this[i].DistanceMm(this[i + 1]));

    /// <summary>A corner, counted round and round in both directions.</summary>
    public Point this[int index] => Corners[((index % Count) + Count) % Count];

    /// <summary>For each edge the half of the plane on its inner side; a convex outline is what they share.</summary>
    public IEnumerable<HalfPlane> InnerSides => Enumerable.Range(0, Count).Select(i => new HalfPlane(this[i], this[i + 1] - this[i]));

    /// <summary>The outline of a box.</summary>
    public static Outline Of(Box box) =>
        new([new(box.Left, box.Bottom), new(box.Right, box.Bottom), new(box.Right, box.Top), new(box.Left, box.Top)]);

    /// <summary>The strip along a straight line, so wide.</summary>
    public static Outline Along(Point from, Point to, double widthMm)
    {
        var aside = (to - from).Unit().Left * (widthMm / 2);
        return new([from - aside, to - aside, to + aside, from + aside]);
    }

    /// <summary>The parts of an open line that lie inside, for a convex outline.</summary>
    public ImmutableArray<ImmutableArray<Point>> Inside(ImmutableArray<Point> line) =>
        InnerSides.Aggregate(ImmutableArray.Create(line), (parts, side) => [.. parts.SelectMany(part => side.Cut(part))]);

    /// <summary>What this outline shares with a convex one; null when that encloses nothing.</summary>
    public Outline? Shared(Outline convex)
    {
        ArgumentNullException.ThrowIfNull(convex);
        return convex.InnerSides.Aggregate((Outline?)this, (rest, side) => rest is null ? null : side.Cut(rest));
    }

    /// <summary>The part of a straight line without ends that lies inside, for a convex outline; null when it passes by.</summary>
    public (Point From, Point To)? Chord(HalfPlane line)
    {
        var middle = line.On + (line.Along.Unit() * line.Along.Unit().Dot(Bounds.Center - line.On));
        var reach = line.Along.Unit() * (Bounds.WidthMm + Bounds.HeightMm);
        return Inside([middle - reach, middle + reach]) is [var part] ? (part[0], part[^1]) : null;
    }

    /// <summary>Whether a point lies inside; on the very edge it may be either.</summary>
    /// <remarks>A line from the point to the right crosses the edges an odd number of times.</remarks>
    public bool Surrounds(Point point)
    {
        var isInside = false;
        for (var i = 0; i < Count; i++)
        {
            var (from, to) = (this[i], this[i + 1]);
            if ((from.Y > point.Y) != (to.Y > point.Y) && point.X < from.X + ((to.X - from.X) * (point.Y - from.Y) / (to.Y - from.Y)))
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }

    /// <summary>The same outline elsewhere.</summary>
    public Outline MovedBy(Step step) => Mapped(p => p + step);

    /// <summary>The same outline turned about the origin by quarter turns to the left.</summary>
    public Outline Turned(int quarters) => Mapped(p => Turn.Quarters(p, quarters));

    /// <summary>The outline as seen in a mirror that stands on the Y axis.</summary>
    public Outline Mirrored() => Mapped(p => new(-p.X, p.Y));

    /// <summary>The outline of the corners moved one by one.</summary>
    public Outline Mapped(Func<Point, Point> move) => new(Corners.Select(move));

    /// <summary>The outline of these corners, those that round-off made two made one again; null when they enclose nothing.</summary>
    internal static Outline? Enclosing(IReadOnlyList<Point> corners)
    {
        ImmutableArray<Point> apart = [.. corners.Where((corner, i) => corner.DistanceMm(corners[(i + 1) % corners.Count]) > SamePlaceMm)];
        return apart.Length >= 3 && Math.Abs(SignedAreaMm2(apart)) >= SmallestAreaMm2 ? new(apart) : null;
    }

    private static double SignedAreaMm2(ImmutableArray<Point> corners)
    {
        // Measured from the first corner, so that a small outline far from the origin loses no digits.
        var origin = corners[0];
        var twice = 0.0;
        for (var i = 1; i + 1 < corners.Length; i++)
        {
            twice += (corners[i] - origin).Cross(corners[i + 1] - origin);
        }

        return twice / 2;
    }
}
