namespace CanvasCut.Nesting.Rectangles;

/// <summary>How far along the strip it is filled at every place across it: steps from one side of the strip to the other.</summary>
internal sealed class Skyline
{
    private readonly long _width;
    private readonly long[] _from;
    private readonly long[] _reach;
    private int _count;

    /// <summary>An empty strip.</summary>
    /// <param name="width">How wide it is.</param>
    /// <param name="pieces">How many pieces will be laid at most.</param>
    public Skyline(long width, int pieces)
    {
        (_width, _from, _reach) = (width, new long[(2 * pieces) + 4], new long[(2 * pieces) + 4]);
        Clear();
    }

    /// <summary>The least filled step, the first of several: where it starts across the strip.</summary>
    public long From => _from[Lowest];

    /// <summary>How wide the least filled step is.</summary>
    public long Room => EndOf(Lowest) - _from[Lowest];

    /// <summary>How far along the strip it is filled there.</summary>
    public long Reach => _reach[Lowest];

    /// <summary>How much farther the step before it is filled; without end where there is none.</summary>
    public long WallBefore => Lowest == 0 ? long.MaxValue : _reach[Lowest - 1] - _reach[Lowest];

    /// <summary>How much farther the step after it is filled; without end where there is none.</summary>
    public long WallAfter => Lowest == _count - 1 ? long.MaxValue : _reach[Lowest + 1] - _reach[Lowest];

    private int Lowest { get; set; }

    /// <summary>Takes everything off the strip.</summary>
    public void Clear()
    {
        (_count, Lowest) = (1, 0);
        (_from[0], _reach[0]) = (0, 0);
    }

    /// <summary>Takes over another skyline of the same strip.</summary>
    public void CopyFrom(Skyline other)
    {
        (_count, Lowest) = (other._count, other.Lowest);
        Array.Copy(other._from, _from, _count);
        Array.Copy(other._reach, _reach, _count);
    }

    /// <summary>Lays a piece on the least filled step, at its start or its end.</summary>
    public void Lay(long along, long across, bool isAtEnd)
    {
        var (at, room, reach) = (Lowest, Room, Reach);
        if (across < room)
        {
            Array.Copy(_from, at, _from, at + 1, _count - at);
            Array.Copy(_reach, at, _reach, at + 1, _count - at);
            _count++;
            _from[at + 1] = _from[at] + (isAtEnd ? room - across : across);
            at += isAtEnd ? 1 : 0;
        }

        _reach[at] = reach + along;
        Join(at);
    }

    /// <summary>Gives up the least filled step up to the lower of its neighbours.</summary>
    /// <returns>By how much it was raised.</returns>
    public long Raise()
    {
        var raised = Math.Min(WallBefore, WallAfter);
        _reach[Lowest] += raised;
        Join(Lowest);
        return raised;
    }

    /// <summary>A number that tells this skyline, and what is left to lay, from any other.</summary>
    /// <remarks>Two numbers of 64 bits from different roots; that two things meet in both is less likely than one in 10^20.</remarks>
    public UInt128 Key(ReadOnlySpan<int> left)
    {
        var (one, other) = (0x9E3779B97F4A7C15UL, 0xC2B2AE3D27D4EB4FUL);
        foreach (var count in left)
        {
            Mix(ref one, ref other, (ulong)count);
        }

        for (var step = 0; step < _count; step++)
        {
            Mix(ref one, ref other, (ulong)_from[step]);
            Mix(ref one, ref other, (ulong)_reach[step]);
        }

        return new(one, other);
    }

    private static void Mix(ref ulong one, ref ulong other, ulong value)
    {
        one = (one ^ value) * 0xFF51AFD7ED558CCDUL;
        one ^= one >> 32;
        other = (other ^ value) * 0xC4CEB9FE1A85EC53UL;
        other ^= other >> 29;
    }

    private long EndOf(int step) => step == _count - 1 ? _width : _from[step + 1];

    private void Join(int at)
    {
        if (at + 1 < _count && _reach[at] == _reach[at + 1])
        {
            Remove(at + 1);
        }

        if (at > 0 && _reach[at] == _reach[at - 1])
        {
            Remove(at);
        }

        Lowest = 0;
        for (var i = 1; i < _count; i++)
        {
            Lowest = _reach[i] < _reach[Lowest] ? i : Lowest;
        }
    }

    private void Remove(int step)
    {
        _count--;
        Array.Copy(_from, step + 1, _from, step, _count - step);
        Array.Copy(_reach, step + 1, _reach, step, _count - step);
    }
}
