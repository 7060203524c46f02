using System.Collections.Immutable;
using System.Numerics;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

/// <summary>A strip by the force method: Roark's Formulas for Stress and Strain, table 8.1, cases 1e (one load) and 2e (weight), simple ends.</summary>
internal static class InfluenceBeam
{
    /// <summary>The one set of rests that all push while no other is pressed into.</summary>
    public static (ImmutableArray<int> Set, double[] Pushes) Search(double length, ImmutableArray<StripRest> rests, double weight)
    {
        for (uint bits = 0; bits < 1u << rests.Length; bits++)
        {
            var mask = bits;
            ImmutableArray<int> set = [.. Enumerable.Range(0, rests.Length).Where(i => (mask >> i & 1) == 1)];
            var pushes = Pushes(length, rests, set, weight);
            if (pushes.All(push => push > 0) && Enumerable.Range(0, rests.Length).All(i => HeightAt(length, rests, (set, pushes), weight, rests[i].AtMm) > rests[i].HeightMm - 1e-6))
            {
                return (set, pushes);
            }
        }

        throw new InvalidOperationException($"No set of contacts of {BitOperations.Log2((uint)rests.Length)} suits.");
    }

    public static double CurvatureAt(double length, ImmutableArray<StripRest> rests, (ImmutableArray<int> Set, double[] Pushes) found, double weight, double x) =>
        (weight * x * (length - x) / 2) - found.Set.Zip(found.Pushes).Sum(each =>
        {
            var a = rests[each.First].AtMm;
            return each.Second * (x <= a ? x * (length - a) : a * (length - x)) / length;
        });

    private static double HeightAt(double length, ImmutableArray<StripRest> rests, (ImmutableArray<int> Set, double[] Pushes) found, double weight, double x) =>
        found.Set.Zip(found.Pushes).Sum(each => each.Second * Influence(length, rests[each.First].AtMm, x)) - Hang(length, weight, x);

    private static double Influence(double length, double at, double x)
    {
        var (low, far) = x <= at ? (x, length - at) : (length - x, at);
        return far * low * ((length * length) - (far * far) - (low * low)) / (6 * length);
    }

    private static double Hang(double length, double weight, double x) =>
        weight * x * ((length * length * length) - (2 * length * x * x) + (x * x * x)) / 24;

    /// <summary>The pushes that bring the strip to the height of each rest of the set, by Gauss's elimination.</summary>
    private static double[] Pushes(double length, ImmutableArray<StripRest> rests, ImmutableArray<int> set, double weight)
    {
        var n = set.Length;
        var rows = set.Select(i => set.Select(j => Influence(length, rests[j].AtMm, rests[i].AtMm)).Append(rests[i].HeightMm + Hang(length, weight, rests[i].AtMm)).ToArray()).ToArray();
        for (var pivot = 0; pivot < n; pivot++)
        {
            foreach (var row in Enumerable.Range(0, n).Where(row => row != pivot))
            {
                var times = rows[row][pivot] / rows[pivot][pivot];
                rows[row] = [.. rows[row].Zip(rows[pivot], (mine, its) => mine - (times * its))];
            }
        }

        return [.. rows.Select((row, i) => row[n] / row[i])];
    }
}
