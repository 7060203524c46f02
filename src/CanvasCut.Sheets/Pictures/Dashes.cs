using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>Lines that are hidden: short dashes of the thinnest line (ISO 128, dashed narrow line, from memory).</summary>
internal static class Dashes
{
    private const double DashMm = 1.6;
    private const double GapMm = 1;

    /// <summary>A line on paper as dashes, beginning and, mostly, ending with one.</summary>
    public static IEnumerable<Figure> Of(ImmutableArray<Point> line)
    {
        var ends = line.Zip(line.Skip(1)).Aggregate(ImmutableArray.Create(0.0), (sums, part) => sums.Add(sums[^1] + part.First.DistanceMm(part.Second)));
        for (var start = 0.0; start < ends[^1]; start += DashMm + GapMm)
        {
            var end = Math.Min(start + DashMm, ends[^1]);
            yield return Stroke.Open(LineRole.Note, [At(line, ends, start), .. line.Where((_, i) => ends[i] > start && ends[i] < end), At(line, ends, end)]);
        }
    }

    private static Point At(ImmutableArray<Point> line, ImmutableArray<double> ends, double alongMm)
    {
        var next = Math.Clamp(ends.Count(end => end <= alongMm), 1, line.Length - 1);
        var length = ends[next] - ends[next - 1];
        return length > 0 ? line[next - 1] + ((line[next] - line[next - 1]) * ((alongMm - ends[next - 1]) / length)) : line[next];
    }
}
