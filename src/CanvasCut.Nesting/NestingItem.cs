using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>A shape to be placed a number of times.</summary>
public sealed class NestingItem
{
    /// <summary>Describes an item.</summary>
    /// <param name="name">What messages call it; not blank.</param>
    /// <param name="shape">Its outline, anywhere in the plane.</param>
    /// <param name="demand">How many copies; one or more.</param>
    /// <param name="turns">By which turns it may be placed.</param>
    /// <exception cref="ArgumentException">An argument is outside its range.</exception>
    public NestingItem(string name, Outline shape, int demand, AllowedTurns turns)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentOutOfRangeException.ThrowIfLessThan(demand, 1);
        if (!Enum.IsDefined(turns))
        {
            throw new ArgumentOutOfRangeException(nameof(turns));
        }

        (Name, Shape, Demand, Turns) = (name, shape, demand, turns);
    }

    /// <summary>What messages call it.</summary>
    public string Name { get; }

    /// <summary>Its outline.</summary>
    public Outline Shape { get; }

    /// <summary>How many copies.</summary>
    public int Demand { get; }

    /// <summary>By which turns it may be placed.</summary>
    public AllowedTurns Turns { get; }

    /// <summary>The allowed turns as numbers of quarters to the left.</summary>
    public ImmutableArray<int> Quarters => Turns switch
    {
        AllowedTurns.Quarter => [0, 1, 2, 3],
        AllowedTurns.Half => [0, 2],
        _ => [0],
    };
}
