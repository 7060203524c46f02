namespace CanvasCut.Geometry;

/// <summary>An upright rectangle.</summary>
/// <param name="Left">The smallest X, in millimetres.</param>
/// <param name="Bottom">The smallest Y, in millimetres.</param>
/// <param name="Right">The largest X, in millimetres.</param>
/// <param name="Top">The largest Y, in millimetres.</param>
/// <remarks>A box whose right lies left of its left, or top below its bottom, is empty; see <see cref="IsEmpty"/>.</remarks>
public readonly record struct Box(double Left, double Bottom, double Right, double Top)
{
    /// <summary>From left to right.</summary>
    public double WidthMm => Right - Left;

    /// <summary>From bottom to top.</summary>
    public double HeightMm => Top - Bottom;

    /// <summary>The middle.</summary>
    public Point Center => new((Left + Right) / 2, (Bottom + Top) / 2);

    /// <summary>The lower left corner.</summary>
    public Point LowerLeft => new(Left, Bottom);

    /// <summary>Whether there is no point in it.</summary>
    public bool IsEmpty => Right < Left || Top < Bottom;

    /// <summary>The box around a middle point.</summary>
    public static Box Around(Point center, double widthMm, double heightMm) =>
        new(center.X - (widthMm / 2), center.Y - (heightMm / 2), center.X + (widthMm / 2), center.Y + (heightMm / 2));

    /// <summary>The smallest box that holds all the points.</summary>
    /// <exception cref="InvalidOperationException">There are none.</exception>
    public static Box Holding(IEnumerable<Point> points)
    {
        var all = points as IReadOnlyCollection<Point> ?? [.. points];
        return new(all.Min(p => p.X), all.Min(p => p.Y), all.Max(p => p.X), all.Max(p => p.Y));
    }

    /// <summary>The box set out by a distance on every side; a negative distance sets it in.</summary>
    public Box Grown(double byMm) => new(Left - byMm, Bottom - byMm, Right + byMm, Top + byMm);

    /// <summary>The same box elsewhere.</summary>
    public Box MovedBy(Step step) => new(Left + step.X, Bottom + step.Y, Right + step.X, Top + step.Y);

    /// <summary>The smallest box that holds both.</summary>
    public Box Joined(Box other) =>
        new(Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));

    /// <summary>What both boxes share; may be empty.</summary>
    public Box Shared(Box other) =>
        new(Math.Max(Left, other.Left), Math.Max(Bottom, other.Bottom), Math.Min(Right, other.Right), Math.Min(Top, other.Top));

    /// <summary>The same box turned about the origin by quarter turns to the left.</summary>
    public Box Turned(int quarters) => Holding([Turn.Quarters(LowerLeft, quarters), Turn.Quarters(new(Right, Top), quarters)]);

    /// <summary>Whether a straight line between two points has a point in the box or on its edge.</summary>
    public bool Meets(Point from, Point to) => PartOf(from, to) is not null;

    /// <summary>The part of a straight line between two points that lies in the box or on its edge; null when it passes by.</summary>
    /// <remarks>The line is cut down to what lies between the box's sides, as Liang and Barsky clip lines (ACM Transactions on Graphics 3, 1984).</remarks>
    public (Point From, Point To)? PartOf(Point from, Point to)
    {
        var (first, last) = (0.0, 1.0);
        return Keeps(from.X - Left, to.X - Left) && Keeps(Right - from.X, Right - to.X)
            && Keeps(from.Y - Bottom, to.Y - Bottom) && Keeps(Top - from.Y, Top - to.Y)
            ? (from.Toward(to, first), from.Toward(to, last))
            : null;

        bool Keeps(double startMm, double endMm)
        {
            if (startMm < 0 && endMm < 0)
            {
                return false;
            }

            var crossing = startMm / (startMm - endMm);
            first = startMm < 0 ? Math.Max(first, crossing) : first;
            last = endMm < 0 ? Math.Min(last, crossing) : last;
            return first <= last;
        }
    }

    /// <summary>The distance of another box; negative by the shorter way out when they lie on each other.</summary>
    public double DistanceMm(Box other)
    {
        var (inX, inY) = (Math.Max(Left - other.Right, other.Left - Right), DistanceInYMm(other));
        return inX > 0 && inY > 0 ? double.Hypot(inX, inY) : Math.Max(inX, inY);
    }

    /// <summary>The distance of another box in Y alone, as if both reached all across.</summary>
    public double DistanceInYMm(Box other) => Math.Max(Bottom - other.Top, other.Bottom - Top);

    /// <summary>Whether the other box lies inside this one or on its edge.</summary>
    public bool Holds(Box other) => other.Left >= Left && other.Bottom >= Bottom && other.Right <= Right && other.Top <= Top;
}
