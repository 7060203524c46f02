using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A beam on supports of known height, with its own weight, its two ends free to turn.</summary>
/// <remarks>
/// Clapeyron's equation of three moments with supports of unequal height, written in curvatures k = M/EI: for the
/// spans a before and b after a support, a·k₋ + 2(a + b)·k + b·k₊ = 6(slope of b − slope of a) − w(a³ + b³)/4EI.
/// The equations hang together only from neighbour to neighbour and are solved by elimination from end to end.
/// </remarks>
internal static class ContinuousBeam
{
    /// <summary>The spans of the beam over its supports, which are in order; at least two.</summary>
    public static ImmutableArray<BeamSpan> Over(IReadOnlyList<StripRest> supports, double weightPerMm3)
    {
        var curvatures = Curvatures(supports, weightPerMm3);
        return
        [
            .. Enumerable.Range(0, supports.Count - 1).Select(i => new BeamSpan(
                supports[i].AtMm,
                supports[i + 1].AtMm - supports[i].AtMm,
                (supports[i].HeightMm, supports[i + 1].HeightMm),
                (curvatures[i], curvatures[i + 1]),
                weightPerMm3)),
        ];
    }

    /// <summary>The push of each support but the ends, divided by the stiffness; below zero when it would have to pull.</summary>
    public static ImmutableArray<double> Pushes(ImmutableArray<BeamSpan> spans) =>
        [.. Enumerable.Range(1, spans.Length - 1).Select(i => spans[i].Shear.Start - spans[i - 1].Shear.End)];

    private static double[] Curvatures(IReadOnlyList<StripRest> supports, double weight)
    {
        var count = supports.Count;
        var (curvature, factor, right) = (new double[count], new double[count], new double[count]);
        for (var i = 1; i < count - 1; i++)
        {
            var (a, b) = (supports[i].AtMm - supports[i - 1].AtMm, supports[i + 1].AtMm - supports[i].AtMm);
            var slopes = ((supports[i + 1].HeightMm - supports[i].HeightMm) / b) - ((supports[i].HeightMm - supports[i - 1].HeightMm) / a);
            var pivot = (2 * (a + b)) - (a * factor[i - 1]);
            factor[i] = b / pivot;
            right[i] = ((6 * slopes) - (weight * ((a * a * a) + (b * b * b)) / 4) - (a * right[i - 1])) / pivot;
        }

        for (var i = count - 2; i > 0; i--)
        {
            curvature[i] = right[i] - (factor[i] * curvature[i + 1]);
        }

        return curvature;
    }
}
