using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Benchmarks;

/// <summary>The pieces of a canvas shop's day, made up by a seed; invented, for timing alone.</summary>
internal static class ShopDay
{
    private const double RollMm = 1498.6;
    private const double GapMm = 5;
    private const int Turns = 16;

    /// <summary>So many pieces on a roll of 60 in with selvages of 1/2 in: strips, rectangles, triangles, mitred panels, pieces with round ends.</summary>
    /// <param name="count">How many.</param>
    /// <param name="seed">Where the chance numbers start; the same seed gives the same pieces.</param>
    public static NestingTask Of(int count, ulong seed)
    {
        var chance = new Chance(seed);
        return new([.. Enumerable.Range(0, count).Select(i => new NestingItem($"piece {i + 1}", Shape(chance), 1, AllowedTurns.Half))], RollMm, GapMm);
    }

    private static Outline Shape(Chance chance) => chance.Between(0, 100) switch
    {
        < 30 => Outline.Of(new(0, 0, chance.Between(300, 1400), chance.Between(60, 160))),
        < 55 => Outline.Of(new(0, 0, chance.Between(100, 900), chance.Between(100, 700))),
        < 75 => Triangle(chance.Between(120, 450), chance.Between(120, 450)),
        < 88 => Mitred(chance.Between(300, 1200), chance.Between(250, 800), chance.Between(30, 90)),
        _ => RoundEnded(chance.Between(250, 900), chance.Between(80, 300)),
    };

    private static Outline Triangle(double along, double across) => new([new(0, 0), new(along, 0), new(0, across)]);

    private static Outline Mitred(double along, double across, double mitre) => new(
    [
        new(mitre, 0), new(along - mitre, 0), new(along, mitre), new(along, across - mitre),
        new(along - mitre, across), new(mitre, across), new(0, across - mitre), new(0, mitre),
    ]);

    /// <summary>A strip with a half circle at one end.</summary>
    private static Outline RoundEnded(double straight, double across)
    {
        var round = Enumerable.Range(0, Turns + 1).Select(i => Math.PI * ((double)i / Turns - 0.5))
            .Select(angle => new Point(straight + (across / 2 * Math.Cos(angle)), (across / 2) + (across / 2 * Math.Sin(angle))));
        return new([new(0, 0), .. round, new(0, across)]);
    }

    /// <summary>SplitMix64, so that the pieces are the same on every machine and version (G. Steele, D. Lea, C. Flood, OOPSLA 2014).</summary>
    private sealed class Chance(ulong seed)
    {
        private ulong _state = seed;

        /// <summary>A whole number from the first up to below the second.</summary>
        public int Between(int from, int to)
        {
            _state += 0x9E3779B97F4A7C15;
            var mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return from + (int)((mixed ^ (mixed >> 31)) % (ulong)(to - from));
        }
    }
}
