using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>Sets an outline out (or in), each edge by a distance of its own.</summary>
public static class Outset
{
    /// <summary>How nearly parallel two neighbouring edges may be before their crossing is too far away to trust.</summary>
    private const double ParallelSine = 1e-6;

    /// <summary>Moves every edge outward by its distance and joins the moved edges where they cross.</summary>
    /// <param name="outline">The outline to set out.</param>
    /// <param name="distancesMm">One an edge, in the order of the edges; a negative one sets in.</param>
    /// <returns>
    /// An outline with as many corners in the same order; null when there is none: a moved edge would turn round
    /// because its neighbours pass it, or two edges in one line have different distances.
    /// </returns>
    /// <exception cref="ArgumentException">There is not one distance an edge.</exception>
    public static Outline? By(Outline outline, ImmutableArray<double> distancesMm)
    {
        if (distancesMm.Length != outline.Count)
        {
            throw new ArgumentException("There must be one distance an edge.", nameof(distancesMm));
        }

        var corners = new Point[outline.Count];
        for (var i = 0; i < outline.Count; i++)
        {
            var before = ((i - 1) + outline.Count) % outline.Count;
            if (CornerOf(outline, i, distancesMm[before], distancesMm[i]) is not { } corner)
            {
                return null;
            }

            corners[i] = corner;
        }

        return KeepsDirections(outline, corners) ? new(corners) : null;
    }

    /// <summary>Moves every edge outward by the same distance.</summary>
    /// <returns>The outline, or null as above.</returns>
    public static Outline? By(Outline outline, double distanceMm) =>
        By(outline, [.. Enumerable.Repeat(distanceMm, outline.Count)]);

    private static Point? CornerOf(Outline outline, int corner, double beforeMm, double afterMm)
    {
        var along = (outline[corner] - outline[corner - 1]).Unit();
        var onward = (outline[corner + 1] - outline[corner]).Unit();
        var sine = along.Cross(onward);
        if (Math.Abs(sine) < ParallelSine)
        {
            var samePlace = Math.Abs(beforeMm - afterMm) < 1e-12 && along.Dot(onward) > 0;
            return samePlace ? outline[corner] - (along.Left * beforeMm) : null;
        }

        // The corner q with (q - p)·n1 = d1 and (q - p)·n2 = d2, the n pointing outward, to the right of each edge.
        return outline[corner] + (along * (afterMm / sine)) - (onward * (beforeMm / sine));
    }

    private static bool KeepsDirections(Outline outline, Point[] corners)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var moved = corners[(i + 1) % corners.Length] - corners[i];
            if (moved.Dot(outline[i + 1] - outline[i]) <= 0)
            {
                return false;
            }
        }

        return true;
    }
}
