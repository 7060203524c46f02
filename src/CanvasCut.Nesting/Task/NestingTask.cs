using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>What is to be placed on a strip of fixed width and free length.</summary>
/// <remarks>The strip lies with its length along X, from 0, and its width along Y, from 0 to <see cref="StripWidthMm"/>.</remarks>
public sealed class NestingTask
{
    /// <summary>Describes a task.</summary>
    /// <param name="items">The items; at least one.</param>
    /// <param name="stripWidthMm">The strip's width; finite, above zero.</param>
    /// <param name="gapMm">The smallest distance between pieces, not to the strip's edges or a zone; finite, zero or more.</param>
    /// <param name="barred">
    /// Zones of the strip that no piece may lie in, though it may touch them; a zone may reach endlessly along the strip.
    /// </param>
    /// <param name="repeatMm">A piece may start (its left end lie) only at multiples of this; 0 for anywhere; finite, zero or more.</param>
    /// <exception cref="ArgumentException">An argument is outside its range.</exception>
    public NestingTask(
        ImmutableArray<NestingItem> items, double stripWidthMm, double gapMm, ImmutableArray<Box> barred = default, double repeatMm = 0)
    {
        if (items.IsDefaultOrEmpty)
        {
            throw new ArgumentException("There must be something to place.", nameof(items));
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stripWidthMm);
        ArgumentOutOfRangeException.ThrowIfNegative(gapMm);
        ArgumentOutOfRangeException.ThrowIfNegative(repeatMm);
        if (!double.IsFinite(stripWidthMm) || !double.IsFinite(gapMm) || !double.IsFinite(repeatMm))
        {
            throw new ArgumentException("The strip's width, the gap and the repeat must be finite.");
        }

        Barred = barred.IsDefault ? [] : barred;
        if (Barred.Any(zone => !(zone.Left < zone.Right && zone.Bottom < zone.Top)))
        {
            throw new ArgumentException("A barred zone must have a size.", nameof(barred));
        }

        (Items, StripWidthMm, GapMm, RepeatMm) = (items, stripWidthMm, gapMm, repeatMm);
    }

    /// <summary>The items.</summary>
    public ImmutableArray<NestingItem> Items { get; }

    /// <summary>The strip's width.</summary>
    public double StripWidthMm { get; }

    /// <summary>The smallest distance between pieces.</summary>
    public double GapMm { get; }

    /// <summary>The zones that no piece may lie in.</summary>
    public ImmutableArray<Box> Barred { get; }

    /// <summary>A piece's left end lies only at multiples of this; 0 for anywhere.</summary>
    public double RepeatMm { get; }

    /// <summary>The area of all copies together.</summary>
    public double AreaMm2 => Items.Sum(item => item.Demand * item.Shape.AreaMm2);
}
