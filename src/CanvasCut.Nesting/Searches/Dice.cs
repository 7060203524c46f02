namespace CanvasCut.Nesting;

/// <summary>Numbers without a pattern that are the same in every run and on every machine.</summary>
/// <remarks>
/// SplitMix64: G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014. Written out
/// because the system's own generator does not promise the same numbers from version to version.
/// </remarks>
internal sealed class Dice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A whole number from 0 up to, not including, a limit far below 2^32.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);

    /// <summary>A number from 0 up to, not including, 1.</summary>
    public double Part() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A number from a smallest up to a largest.</summary>
    public double Between(double least, double most) => least + (Part() * (most - least));

    private ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
