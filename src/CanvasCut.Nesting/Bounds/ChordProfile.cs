using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>A stretch along which the chord changes evenly.</summary>
/// <param name="AlongMm">How long the stretch is.</param>
/// <param name="FromMm">The chord at its start.</param>
/// <param name="ToMm">The chord at its end.</param>
public readonly record struct ChordRun(double AlongMm, double FromMm, double ToMm);

/// <summary>How much of a piece lies on an upright line, from the piece's left to its right.</summary>
/// <param name="Runs">From left to right.</param>
public sealed record ChordProfile(ImmutableArray<ChordRun> Runs)
{
    /// <summary>Thinner is round-off.</summary>
    private const double ThinMm = 1e-9;

    /// <summary>The area, by adding up the chords.</summary>
    public double AreaMm2 => Runs.Sum(run => run.AlongMm * (run.FromMm + run.ToMm) / 2);

    /// <summary>The profile of convex parts; where they lie on each other they count once.</summary>
    public static ChordProfile Of(ImmutableArray<Outline> convexParts)
    {
        double[] levels = [.. convexParts.SelectMany(part => part.Corners).Select(corner => corner.X).Distinct().Order()];
        var runs = ImmutableArray.CreateBuilder<ChordRun>();
        foreach (var (leftMm, rightMm) in levels.Zip(levels.Skip(1)).Where(slab => slab.Second - slab.First > ThinMm))
        {
            List<Band> bands = [.. convexParts.Select(part => Band.Of(part, leftMm, rightMm)).OfType<Band>()];
            double[] cuts = [0, .. Band.Crossings(bands).Order(), 1];
            foreach (var (from, to) in cuts.Zip(cuts.Skip(1)).Where(cut => cut.Second > cut.First))
            {
                runs.Add(new((to - from) * (rightMm - leftMm), Band.Covered(bands, from, (from + to) / 2), Band.Covered(bands, to, (from + to) / 2)));
            }
        }

        return new(runs.ToImmutable());
    }

    /// <summary>The integral along the piece of a function of chord over width.</summary>
    /// <param name="function">The function.</param>
    /// <param name="widthMm">What a chord is divided by; above zero.</param>
    public double Integral(DualFeasible function, double widthMm)
    {
        var sum = 0.0;
        foreach (var run in Runs)
        {
            sum += run.AlongMm * function.Mean(run.FromMm / widthMm, run.ToMm / widthMm);
        }

        return sum;
    }

    /// <summary>What one convex part covers of a slab: its lower and upper side, at the slab's left and right.</summary>
    private sealed record Band(double LowLeft, double LowRight, double HighLeft, double HighRight)
    {
        /// <summary>The band of a part; null when the part does not reach across the slab.</summary>
        public static Band? Of(Outline part, double leftMm, double rightMm)
        {
            if (part.Bounds.Left > leftMm || part.Bounds.Right < rightMm)
            {
                return null;
            }

            var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            var (lowEnd, highEnd) = (low, high);
            for (var i = 0; i < part.Count; i++)
            {
                var edge = new Stretch(part[i], part[i + 1]).FromTheLeft;
                if (edge.From.X <= leftMm && edge.To.X >= rightMm)
                {
                    var (start, end) = (YAt(edge, leftMm), YAt(edge, rightMm));
                    (low, lowEnd) = (Math.Min(low, start), Math.Min(lowEnd, end));
                    (high, highEnd) = (Math.Max(high, start), Math.Max(highEnd, end));
                }
            }

            return high >= low ? new(low, lowEnd, high, highEnd) : null;
        }

        /// <summary>Where, between 0 and 1 of the slab, a side of one band crosses a side of another.</summary>
        public static IEnumerable<double> Crossings(List<Band> bands)
        {
            (double Left, double Right)[] sides = [.. bands.SelectMany(band => new[] { (band.LowLeft, band.LowRight), (band.HighLeft, band.HighRight) })];
            for (var i = 2; i < sides.Length; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    var (left, right) = (sides[i].Left - sides[j].Left, sides[i].Right - sides[j].Right);
                    if (left * right < 0)
                    {
                        yield return left / (left - right);
                    }
                }
            }
        }

        /// <summary>How much all bands cover together at a part of the slab, in the order they have in the middle of a stretch.</summary>
        public static double Covered(List<Band> bands, double at, double middle)
        {
            var (sum, reached, reachedMiddle) = (0.0, double.NegativeInfinity, double.NegativeInfinity);
            foreach (var band in bands.OrderBy(band => band.Low(middle)))
            {
                if (band.High(middle) > reachedMiddle)
                {
                    sum += band.High(at) - (band.Low(middle) < reachedMiddle ? reached : band.Low(at));
                    (reached, reachedMiddle) = (band.High(at), band.High(middle));
                }
            }

            return Math.Max(sum, 0);
        }

        private double Low(double at) => LowLeft + ((LowRight - LowLeft) * at);

        private double High(double at) => HighLeft + ((HighRight - HighLeft) * at);

        private static double YAt(Stretch edge, double xMm) => edge.At((xMm - edge.From.X) / (edge.To.X - edge.From.X)).Y;
    }
}
