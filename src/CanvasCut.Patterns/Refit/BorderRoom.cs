using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>Which borders a sewn half and the panel's cells allow, in millimetres, and hence which panels.</summary>
/// <param name="least">The narrowest border of each side.</param>
/// <param name="most">The widest border of each side.</param>
/// <param name="corners">What the two borders at each corner must add up to, in the order of <see cref="Corner.All"/>.</param>
/// <remarks>
/// All rules are straight lines: the borders of two opposite sides add up to what the panel leaves of the carrier, each
/// lies between its least and its most, and at a corner with a pocket the two that meet add up to a least. So the
/// borders that will do form a polygon in the plane of (port, forward) border, and the panels that will do one in the
/// plane of their sizes.
/// </remarks>
internal sealed class BorderRoom(SidesMm least, SidesMm most, CornersMm corners)
{
    private const double RoundOffMm = 1e-7;

    /// <summary>The borders nearest to what is wanted; null when none will do.</summary>
    /// <param name="across">What the panel leaves of the carrier athwart.</param>
    /// <param name="along">What it leaves fore and aft.</param>
    /// <param name="wanted">The borders wanted; of each pair the difference counts.</param>
    /// <returns>
    /// The nearest point of the polygon: the wanted one, or its foot on one of the lines, or a corner where two lines meet.
    /// </returns>
    public SidesMm? Nearest(double across, double along, SidesMm wanted)
    {
        var lines = Lines(across, along);
        var ideal = new Point((across + wanted.Port - wanted.Starboard) / 2, (along + wanted.Forward - wanted.Aft) / 2);
        var nearest = Candidates(ideal, lines)
            .Where(point => lines.All(line => line.Spare(point) >= -RoundOffMm))
            .Select(point => (Point?)point)
            .MinBy(point => point!.Value.DistanceMm(ideal));
        return nearest is { } at ? new(at.Y, along - at.Y, at.X, across - at.X) : null;
    }

    /// <summary>The rules for what the panel may leave of the carrier: so many times across and along together at least.</summary>
    /// <remarks>
    /// The border rules added up so that each pair of borders stands in the sum as a pair (elimination after Fourier and
    /// Motzkin); longer sums follow from these.
    /// </remarks>
    public IEnumerable<(int Across, int Along, double LeastMm)> SumRules()
    {
        var (low, corner) = (Tightened(), corners);
        yield return (1, 0, low.Port + low.Starboard);
        yield return (0, 1, low.Forward + low.Aft);
        yield return (1, 1, Largest(
            corner.ForwardPort + corner.AftStarboard,
            corner.ForwardStarboard + corner.AftPort,
            corner.ForwardPort + low.Starboard + low.Aft,
            corner.ForwardStarboard + low.Port + low.Aft,
            corner.AftPort + low.Starboard + low.Forward,
            corner.AftStarboard + low.Port + low.Forward));
        yield return (1, 2, Largest(
            corner.ForwardPort + corner.ForwardStarboard + (2 * low.Aft),
            corner.AftPort + corner.AftStarboard + (2 * low.Forward)));
        yield return (2, 1, Largest(
            corner.ForwardPort + corner.AftPort + (2 * low.Starboard),
            corner.ForwardStarboard + corner.AftStarboard + (2 * low.Port)));
    }

    /// <summary>Whether each border by itself can be: a pocket may ask for more than the widest.</summary>
    public bool IsPossible
    {
        get
        {
            var low = Tightened();
            return low.Port <= most.Port + RoundOffMm && low.Starboard <= most.Starboard + RoundOffMm
                && low.Forward <= most.Forward + RoundOffMm && low.Aft <= most.Aft + RoundOffMm;
        }
    }

    /// <summary>The narrowest border of each side when its neighbours are as wide as they may be.</summary>
    private SidesMm Tightened() => new(
        Largest(least.Forward, corners.ForwardPort - most.Port, corners.ForwardStarboard - most.Starboard),
        Largest(least.Aft, corners.AftPort - most.Port, corners.AftStarboard - most.Starboard),
        Largest(least.Port, corners.ForwardPort - most.Forward, corners.AftPort - most.Aft),
        Largest(least.Starboard, corners.ForwardStarboard - most.Forward, corners.AftStarboard - most.Aft));

    /// <summary>The rules in the plane of port border (X) and forward border (Y).</summary>
    private BorderLine[] Lines(double across, double along) =>
    [
        new(1, 0, least.Port),
        new(-1, 0, least.Starboard - across),
        new(-1, 0, -most.Port),
        new(1, 0, across - most.Starboard),
        new(0, 1, least.Forward),
        new(0, -1, least.Aft - along),
        new(0, -1, -most.Forward),
        new(0, 1, along - most.Aft),
        new(1, 1, corners.ForwardPort),
        new(-1, 1, corners.ForwardStarboard - across),
        new(1, -1, corners.AftPort - along),
        new(-1, -1, corners.AftStarboard - across - along),
    ];

    private static IEnumerable<Point> Candidates(Point ideal, BorderLine[] lines) =>
    [
        ideal,
        .. lines.Select(line => line.FootOf(ideal)),
        .. from one in lines
           from other in lines
           where one.Meeting(other) is not null
           select one.Meeting(other)!.Value,
    ];

    private static double Largest(params double[] values) => values.Max();

    /// <summary>One rule: x × X + y × Y is at least so much.</summary>
    private sealed record BorderLine(int X, int Y, double LeastMm)
    {
        public double Spare(Point point) => (X * point.X) + (Y * point.Y) - LeastMm;

        public Point FootOf(Point point)
        {
            var missing = -Spare(point) / ((X * X) + (Y * Y));
            return new(point.X + (missing * X), point.Y + (missing * Y));
        }

        public Point? Meeting(BorderLine other)
        {
            var cross = (X * other.Y) - (Y * other.X);
            return cross == 0
                ? null
                : new(((LeastMm * other.Y) - (other.LeastMm * Y)) / cross, ((X * other.LeastMm) - (other.X * LeastMm)) / cross);
        }
    }
}

/// <summary>A length for each side, in millimetres.</summary>
internal sealed record SidesMm(double Forward, double Aft, double Port, double Starboard);

/// <summary>A length for each corner, in millimetres.</summary>
internal sealed record CornersMm(double ForwardPort, double ForwardStarboard, double AftPort, double AftStarboard);
