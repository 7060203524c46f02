using System.Runtime.Intrinsics;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>The places that one shape may not take beside another that lies at the origin, as convex parts.</summary>
/// <remarks>
/// A place is forbidden when it lies inside some part, so the parts need not be made one. The distances from all edges
/// lie side by side, each part's filled up to fours, because four are worked out at once.
/// </remarks>
internal sealed class NoFitParts
{
    private const int Lanes = 4;

    private readonly double[] _across;
    private readonly double[] _along;
    private readonly double[] _distance;
    private readonly int[] _starts;

    private NoFitParts(IReadOnlyList<Outline> parts)
    {
        _starts = new int[parts.Count + 1];
        for (var part = 0; part < parts.Count; part++)
        {
            _starts[part + 1] = _starts[part] + ((parts[part].Count + Lanes - 1) / Lanes * Lanes);
        }

        (_across, _along, _distance) = (new double[_starts[^1]], new double[_starts[^1]], new double[_starts[^1]]);
        for (var part = 0; part < parts.Count; part++)
        {
            Fill(parts[part], _starts[part], _starts[part + 1]);
        }

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

    /// <summary>How deep inside the deepest part a place lies; 0 when the shapes touch at most.</summary>
    public double DepthMm(double x, double y)
    {
        var deepest = ForbiddenZone.TouchMm;
        var (xs, ys) = (Vector256.Create(x), Vector256.Create(y));
        for (var part = 0; part + 1 < _starts.Length; part++)
        {
            deepest = Math.Max(deepest, DepthMm(xs, ys, part, deepest));
        }

        return deepest > ForbiddenZone.TouchMm ? deepest : 0;
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

    private void Fill(Outline part, int start, int end)
    {
        for (var i = start; i < end; i++)
        {
            var edge = (i - start) % part.Count;
            var inward = (part[edge + 1] - part[edge]).Unit().Left;
            (_across[i], _along[i], _distance[i]) = (inward.X, inward.Y, inward.Dot(part[edge] - new Point(0, 0)));
        }
    }

    /// <summary>How deep a place lies inside a part; anything not above a limit when it is not deeper than that.</summary>
    private double DepthMm(Vector256<double> x, Vector256<double> y, int part, double limit)
    {
        var least = Vector256.Create(double.MaxValue);
        var floor = Vector256.Create(limit);
        for (var i = _starts[part]; i < _starts[part + 1]; i += Lanes)
        {
            var inside = (Vector256.Create(_across, i) * x) + (Vector256.Create(_along, i) * y) - Vector256.Create(_distance, i);
            if (Vector256.LessThanOrEqualAny(inside, floor))
            {
                return limit;
            }

            least = Vector256.Min(least, inside);
        }

        return Math.Min(Math.Min(least[0], least[1]), Math.Min(least[2], least[3]));
    }

    /// <summary>From where to where a line through a place runs deeper in a part than a touch.</summary>
    private (double From, double To) Inside(Point place, bool isDown, int part)
    {
        var (from, to) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var i = _starts[part]; i < _starts[part + 1]; i++)
        {
            var (slope, rest) = isDown ? (_along[i], _across[i] * place.X) : (_across[i], _along[i] * place.Y);
            rest -= _distance[i];
            if (Math.Abs(slope) < 1e-12)
            {
                to = rest <= ForbiddenZone.TouchMm ? double.NegativeInfinity : to;
            }
            else if (slope > 0)
            {
                from = Math.Max(from, -rest / slope);
            }
            else
            {
                to = Math.Min(to, -rest / slope);
            }
        }

        return (from, to);
    }
}
