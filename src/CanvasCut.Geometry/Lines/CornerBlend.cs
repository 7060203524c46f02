using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>What two lines and their corner have become.</summary>
/// <param name="Before">What is left of the line that ran to the corner.</param>
/// <param name="Across">From the end of that to the start of the other, both included.</param>
/// <param name="After">What is left of the line that ran on.</param>
public sealed record BlendedCorner(OpenLine Before, ImmutableArray<Point> Across, OpenLine After);

/// <summary>Rounds or cuts the corner at which one line ends and another begins, turning to the left.</summary>
public static class CornerBlend
{
    private const int Halvings = 60;
    private const double ArcStepMm = 0.1;

    /// <summary>Cuts the corner off straight, so far from it along both lines; null when a line is shorter.</summary>
    public static BlendedCorner? Cut(OpenLine before, OpenLine after, double sizeMm)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (sizeMm >= before.LengthMm || sizeMm >= after.LengthMm)
        {
            return null;
        }

        var (from, to) = (before.Until(before.LengthMm - sizeMm), after.From(sizeMm));
        return new(from, [from.Points[^1], to.Points[0]], to);
    }

    /// <summary>Rounds the corner by an arc that touches both lines; null when one is too short for it.</summary>
    /// <remarks>The arc's centre lies as far from both lines as the arc is wide; it is looked for along the first line by halving.</remarks>
    public static BlendedCorner? Round(OpenLine before, OpenLine after, double radiusMm)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        Point CentreAt(double fromCorner)
        {
            var (at, along) = before.At(before.LengthMm - fromCorner);
            return at + (along.Left * radiusMm);
        }

        var (near, far) = (0.0, before.LengthMm);
        if (after.Nearest(CentreAt(far)).AwayMm < radiusMm || after.Nearest(CentreAt(0)).AwayMm >= radiusMm)
        {
            return null;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (near + far) / 2;
            (near, far) = after.Nearest(CentreAt(middle)).AwayMm < radiusMm ? (middle, far) : (near, middle);
        }

        var centre = CentreAt(far);
        var touch = after.Nearest(centre).AlongMm;
        if (far >= before.LengthMm || touch >= after.LengthMm)
        {
            return null;
        }

        var (from, to) = (before.Until(before.LengthMm - far), after.From(touch));
        return new(from, Arc(centre, from.Points[^1], to.Points[0]), to);
    }

    private static ImmutableArray<Point> Arc(Point centre, Point from, Point to)
    {
        var (first, last) = (from - centre, to - centre);
        var turn = Math.Atan2(first.Cross(last), first.Dot(last));
        var pieces = Math.Max(2, (int)Math.Ceiling(turn / (2 * Math.Acos(1 - Math.Min(0.5, ArcStepMm / first.LengthMm)))));
        var start = Math.Atan2(first.Y, first.X);
        return
        [
            from,
            .. Enumerable.Range(1, pieces - 1).Select(i => centre + (new Step(Math.Cos(start + (turn * i / pieces)), Math.Sin(start + (turn * i / pieces))) * first.LengthMm)),
            to,
        ];
    }
}
