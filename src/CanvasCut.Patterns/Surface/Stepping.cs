using System.Collections.Immutable;

namespace CanvasCut.Patterns;

/// <summary>Divides a way into steps.</summary>
internal static class Stepping
{
    /// <summary>Numbers from one to another, the breaks between them included, no two further apart than asked.</summary>
    /// <param name="from">The first; it may be above the last.</param>
    /// <param name="to">The last.</param>
    /// <param name="breaks">Those not between the two are left out.</param>
    /// <param name="largest">The largest step; above zero.</param>
    public static ImmutableArray<double> Of(double from, double to, IEnumerable<double> breaks, double largest)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var ascending = breaks.Where(at => at > low && at < high).Append(low).Append(high).Distinct().Order().ToList();
        var all = ascending.Zip(ascending.Skip(1)).SelectMany(part => Parts(part.First, part.Second, largest)).Append(high);
        return from <= to ? [.. all] : [.. all.Reverse()];
    }

    private static IEnumerable<double> Parts(double from, double to, double largest)
    {
        var count = (int)Math.Ceiling((to - from) / largest);
        return Enumerable.Range(0, count).Select(i => from + ((to - from) * i / count));
    }
}
