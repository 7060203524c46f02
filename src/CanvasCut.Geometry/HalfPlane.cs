using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>One side of a straight line: every point that lies on the line or to its left.</summary>
/// <param name="On">A point of the line.</param>
/// <param name="Along">The line's direction; not zero.</param>
public readonly record struct HalfPlane(Point On, Step Along)
{
    /// <summary>How far a point lies inside (to the left of the line); negative outside.</summary>
    public double InsideMm(Point point) => Along.Unit().Cross(point - On);

    /// <summary>The part of a convex outline that lies inside; null when that encloses nothing.</summary>
    /// <remarks>For an outline that is not convex the parts may be joined along the line.</remarks>
    public Outline? Cut(Outline outline)
    {
        var kept = new List<Point>();
        for (var i = 0; i < outline.Count; i++)
        {
            var (from, to) = (outline[i], outline[i + 1]);
            var (fromMm, toMm) = (InsideMm(from), InsideMm(to));
            if (fromMm >= 0)
            {
                kept.Add(from);
            }

            if ((fromMm > 0 && toMm < 0) || (fromMm < 0 && toMm > 0))
            {
                kept.Add(from.Toward(to, fromMm / (fromMm - toMm)));
            }
        }

        return Outline.Enclosing(kept);
    }

    /// <summary>The parts of an open line that lie inside, in order.</summary>
    public ImmutableArray<ImmutableArray<Point>> Cut(ImmutableArray<Point> line)
    {
        var parts = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
        var part = new List<Point>();
        for (var i = 0; i < line.Length; i++)
        {
            var hereMm = InsideMm(line[i]);
            if (i > 0 && InsideMm(line[i - 1]) is var beforeMm && (beforeMm < 0) != (hereMm < 0))
            {
                part.Add(line[i - 1].Toward(line[i], beforeMm / (beforeMm - hereMm)));
            }

            if (hereMm >= 0)
            {
                part.Add(line[i]);
            }
            else
            {
                Finish(parts, part);
            }
        }

        Finish(parts, part);
        return parts.ToImmutable();
    }

    private static void Finish(ImmutableArray<ImmutableArray<Point>>.Builder parts, List<Point> part)
    {
        if (part.Count > 1)
        {
            parts.Add([.. part]);
        }

        part.Clear();
    }
}
