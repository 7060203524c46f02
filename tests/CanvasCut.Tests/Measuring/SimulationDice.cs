namespace CanvasCut.Tests.Measuring;

/// <summary>The same numbers in every run and on every machine: SplitMix64 (Steele, Lea, Flood, OOPSLA 2014) and Box-Muller (1958).</summary>
internal sealed class SimulationDice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>From 0 up to, not including, 1.</summary>
    public double Part() => (Next() >> 11) / (double)(1UL << 53);

    public int Below(int limit) => (int)(Part() * limit);

    /// <summary>Normally distributed with standard deviation 1.</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Part())) * Math.Cos(2 * Math.PI * Part());

    private ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
