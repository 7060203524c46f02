using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>The places that a piece may not take because of one that lies already: the inside of a convex outline.</summary>
internal sealed class ForbiddenZone
{
    /// <summary>
    /// How deep inside a place may lie and still count as on the edge. Enough for round-off on a strip of tens of
    /// metres, and an edge of metres shared so deep stays below <see cref="LayoutCheck.OverlapMm2"/>.
    /// </summary>
    public const double TouchMm = 5e-11;

    private readonly Point[] _corners;
    private readonly Step[] _inward;

    private ForbiddenZone(Point[] corners, Step[] inward, Box bounds) => (_corners, _inward, Bounds) = (corners, inward, bounds);

    /// <summary>The smallest box around it.</summary>
    public Box Bounds { get; }

    /// <summary>How many corners, and so edges, there are.</summary>
    public int Count => _corners.Length;

    /// <summary>The zone of places for one convex shape beside another that lies at the origin.</summary>
    /// <param name="lying">The shape that lies.</param>
    /// <param name="coming">The shape to be placed.</param>
    /// <param name="gapMm">The smallest distance between the two.</param>
    /// <remarks>
    /// The no-fit polygon of two convex shapes is the sum of the one and the other turned by half: J. Bennell and
    /// J. Oliveira, "The geometry of nesting problems: a tutorial", European Journal of Operational Research 184 (2008).
    /// It is set out by the gap with pointed corners, which keeps a little more than the gap there.
    /// </remarks>
    public static ForbiddenZone Between(Outline lying, Outline coming, double gapMm)
    {
        var touching = MinkowskiSum.OfConvex(lying, coming.Turned(2));
        var grown = Outset.By(touching, gapMm) ?? throw new InvalidOperationException("A convex outline can always be set out.");
        Step[] inward = [.. Enumerable.Range(0, grown.Count).Select(i => (touching[i + 1] - touching[i]).Unit().Left)];
        return new([.. grown.Corners], inward, grown.Bounds);
    }

    /// <summary>The zone of a shape that lies elsewhere.</summary>
    public ForbiddenZone MovedBy(Step step) => new([.. _corners.Select(corner => corner + step)], _inward, Bounds.MovedBy(step));

    /// <summary>An edge of the zone.</summary>
    public Stretch Edge(int index) => new(_corners[index], _corners[index + 1 < Count ? index + 1 : 0]);

    /// <summary>The part of a stretch that lies inside; null when it only touches.</summary>
    public StretchPart? Covered(Stretch stretch)
    {
        var (from, to) = (StretchPart.Before, StretchPart.Beyond);
        for (var i = 0; i < _corners.Length; i++)
        {
            var (startMm, endMm) = (InsideMm(stretch.From, i), InsideMm(stretch.To, i));
            if (Math.Max(startMm, endMm) <= TouchMm)
            {
                return null;
            }

            if (startMm <= TouchMm)
            {
                from = Math.Max(from, startMm < 0 ? startMm / (startMm - endMm) : 0);
            }
            else if (endMm <= TouchMm)
            {
                to = Math.Min(to, endMm < 0 ? startMm / (startMm - endMm) : 1);
            }
        }

        return from < to && DepthMm(Middle(stretch, from, to)) > TouchMm ? new(from, to) : null;
    }

    private static Point Middle(Stretch stretch, double from, double to) =>
        stretch.At((Math.Max(from, 0) + Math.Min(to, 1)) / 2);

    private double InsideMm(Point point, int edge) => _inward[edge].Dot(point - _corners[edge]);

    private double DepthMm(Point point)
    {
        var depthMm = double.PositiveInfinity;
        for (var i = 0; i < _corners.Length; i++)
        {
            depthMm = Math.Min(depthMm, InsideMm(point, i));
        }

        return depthMm;
    }
}
