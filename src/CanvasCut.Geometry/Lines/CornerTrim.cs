using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>Cuts off the corners of an outline along straight lines.</summary>
public static class CornerTrim
{
    /// <summary>Keeps of a convex outline what lies inside every line.</summary>
    /// <exception cref="ArgumentException">Nothing would be left.</exception>
    public static Outline By(Outline outline, ImmutableArray<HalfPlane> lines) =>
        lines.Aggregate(outline, (left, line) => line.Cut(left) ?? throw new ArgumentException("Nothing would be left.", nameof(lines)));

    /// <summary>
    /// The line along which a mitred corner is trimmed: parallel to the mitre's fold, so far outside the finished corner.
    /// </summary>
    /// <param name="finished">The finished outline.</param>
    /// <param name="corner">Which corner.</param>
    /// <param name="depthsMm">The hem's depth on the edge that ends at the corner, and on the one that starts there; above zero.</param>
    /// <param name="outsideMm">how much is kept outside the fold.</param>
    /// <remarks>
    /// The two hems meet in a line from the finished corner to the corner of their inner edges. Unfolded, that line
    /// lies on both hems, and on a right-angled corner the two images make one straight line through the finished
    /// corner: the fold. With equal depths it stands square to the corner's bisector.
    /// </remarks>
    public static HalfPlane Mitre(Outline finished, int corner, (double Before, double After) depthsMm, double outsideMm)
    {
        var outwardBefore = -(finished[corner] - finished[corner - 1]).Unit().Left;
        var outwardAfter = -(finished[corner + 1] - finished[corner]).Unit().Left;
        var fold = ((outwardAfter * depthsMm.After) - (outwardBefore * depthsMm.Before)).Unit();
        return new(finished[corner] - (fold.Left * outsideMm), fold);
    }
}
