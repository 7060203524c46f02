using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A line across the top that was measured: a bow, or an edge without one.</summary>
/// <param name="Name">What the user calls it.</param>
/// <param name="Height">Its ends' height over any level common to all bows.</param>
/// <param name="Middle">What was found where it crosses the centreline.</param>
public sealed record MeasuredBow(string Name, Length Height, BowMiddle Middle)
{
    /// <summary>A bow of which the height of its ends alone is known.</summary>
    public MeasuredBow(string name, Length height)
        : this(name, height, BowMiddle.Unknown)
    {
    }
}
