using System.Collections.Immutable;

namespace CanvasCut.Nesting.Rectangles;

/// <summary>Where pieces that lie one behind another can start and end.</summary>
internal static class Sums
{
    private const int Most = 3000;

    /// <summary>All sums of sizes of some of the pieces, up to a limit, rising, 0 first; null when there are too many.</summary>
    /// <param name="task">The pieces.</param>
    /// <param name="size">The size of a piece that lies in some way.</param>
    /// <param name="limit">No larger sums are wanted.</param>
    public static ImmutableArray<long>? Of(RectangleTask task, Func<Lying, long> size, long limit)
    {
        var sums = new SortedSet<long> { 0 };
        foreach (var ways in task.Pieces.Select(item => task.Ways[item]))
        {
            sums.UnionWith([.. ways.SelectMany(way => sums.Select(sum => sum + size(way))).Where(sum => sum <= limit)]);
            if (sums.Count > Most)
            {
                return null;
            }
        }

        return [.. sums];
    }
}
