using System.Collections.Immutable;

namespace CanvasCut.Nesting;

/// <summary>What is to be placed on a strip of fixed width and free length.</summary>
/// <remarks>The strip lies with its length along X, from 0, and its width along Y, from 0 to <see cref="StripWidthMm"/>.</remarks>
public sealed class NestingTask
{
    /// <summary>Describes a task.</summary>
    /// <param name="items">The items; at least one.</param>
    /// <param name="stripWidthMm">The strip's width; finite, above zero.</param>
    /// <param name="gapMm">The smallest distance between pieces, not to the strip's edges; finite, zero or more.</param>
    /// <exception cref="ArgumentException">An argument is outside its range.</exception>
    public NestingTask(ImmutableArray<NestingItem> items, double stripWidthMm, double gapMm)
    {
        if (items.IsDefaultOrEmpty)
        {
            throw new ArgumentException("There must be something to place.", nameof(items));
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stripWidthMm);
        ArgumentOutOfRangeException.ThrowIfNegative(gapMm);
        if (!double.IsFinite(stripWidthMm) || !double.IsFinite(gapMm))
        {
            throw new ArgumentException("The strip's width and the gap must be finite.");
        }

        (Items, StripWidthMm, GapMm) = (items, stripWidthMm, gapMm);
    }

    /// <summary>The items.</summary>
    public ImmutableArray<NestingItem> Items { get; }

    /// <summary>The strip's width.</summary>
    public double StripWidthMm { get; }

    /// <summary>The smallest distance between pieces.</summary>
    public double GapMm { get; }

    /// <summary>The area of all copies together.</summary>
    public double AreaMm2 => Items.Sum(item => item.Demand * item.Shape.AreaMm2);
}
