using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A line of straight pieces from a start to an end; curves are held as points.</summary>
/// <remarks>Immutable. Points that follow each other lie apart.</remarks>
public sealed class OpenLine
{
    /// <summary>How far the pieces of an arc may lie from the arc; less than a tape tells.</summary>
    private const double SagittaMm = 0.1;

    private const double SamePlaceMm = 1e-9;

    private readonly double[] _alongMm;

    /// <summary>Makes a line; a point at the place of the one before is left out.</summary>
    /// <exception cref="ArgumentException">It has no length.</exception>
    public OpenLine(IEnumerable<Point> points)
    {
        var kept = ImmutableArray.CreateBuilder<Point>();
        foreach (var point in points)
        {
            if (kept.Count == 0 || kept[^1].DistanceMm(point) > SamePlaceMm)
            {
                kept.Add(point);
            }
        }

        Points = kept.Count > 1 ? kept.ToImmutable() : throw new ArgumentException("A line needs two points that lie apart.", nameof(points));
        _alongMm = new double[Points.Length];
        for (var i = 1; i < Points.Length; i++)
        {
            _alongMm[i] = _alongMm[i - 1] + Points[i - 1].DistanceMm(Points[i]);
        }
    }

    /// <summary>Its points.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>From end to end along the line.</summary>
    public double LengthMm => _alongMm[^1];

    /// <summary>An arc from one point to another, without the last of its points.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="riseMm">How far its middle lies to the left of the straight way; negative to the right; less than half that way.</param>
    public static IEnumerable<Point> Arc(Point from, Point to, double riseMm)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(Math.Abs(riseMm) / SagittaMm)));
        var (middle, half) = (from.Toward(to, 0.5), from.DistanceMm(to) / 2);
        var left = (to - from).Unit().Left;
        for (var i = 0; i < pieces; i++)
        {
            if (pieces == 1)
            {
                yield return from;
                continue;
            }

            // Seen from its centre the arc takes four times the angle whose tangent is rise over half the chord.
            var quarter = Math.Atan(riseMm / half);
            var radius = half / Math.Sin(2 * quarter);
            var angle = 2 * quarter * ((2.0 * i / pieces) - 1);
            yield return middle + ((to - from).Unit() * (radius * Math.Sin(angle))) + (left * (radius * (Math.Cos(angle) - Math.Cos(2 * quarter))));
        }
    }

    /// <summary>The place so far along, and which way the line runs there.</summary>
    public (Point At, Step Along) At(double alongMm)
    {
        var piece = Math.Clamp(Array.FindIndex(_alongMm, at => at >= alongMm) - 1, 0, Points.Length - 2);
        var unit = (Points[piece + 1] - Points[piece]).Unit();
        return (Points[piece] + (unit * (alongMm - _alongMm[piece])), unit);
    }

    /// <summary>The line without what lies before a place.</summary>
    public OpenLine From(double alongMm) => new([At(alongMm).At, .. Points.Where((_, i) => _alongMm[i] > alongMm)]);

    /// <summary>The line without what lies after a place.</summary>
    public OpenLine Until(double alongMm) => new([.. Points.Where((_, i) => _alongMm[i] < alongMm), At(alongMm).At]);

    /// <summary>The place nearest to a point: how far along it lies, and how far away.</summary>
    public (double AlongMm, double AwayMm) Nearest(Point point)
    {
        var best = (AlongMm: 0.0, AwayMm: double.PositiveInfinity);
        for (var i = 0; i + 1 < Points.Length; i++)
        {
            var length = _alongMm[i + 1] - _alongMm[i];
            var along = Math.Clamp((Points[i + 1] - Points[i]).Unit().Dot(point - Points[i]), 0, length);
            var away = point.DistanceMm(Points[i].Toward(Points[i + 1], along / length));
            best = away < best.AwayMm ? (_alongMm[i] + along, away) : best;
        }

        return best;
    }
}
