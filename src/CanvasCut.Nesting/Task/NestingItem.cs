using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>A shape to be placed a number of times.</summary>
public sealed class NestingItem
{
    /// <summary>
    /// The step of free turns. A finer one gains little on a strip whose edges ask for quarters, while the pairs of
    /// poses to prepare grow with its square.
    /// </summary>
    public const int FreeStepDegrees = 15;

    /// <summary>Describes an item.</summary>
    /// <param name="name">What messages call it; not blank.</param>
    /// <param name="shape">Its outline, anywhere in the plane.</param>
    /// <param name="demand">How many copies; one or more.</param>
    /// <param name="turns">By which turns it may be placed.</param>
    /// <param name="mayMirror">Whether it may be placed with its other side up as well.</param>
    /// <exception cref="ArgumentException">An argument is outside its range.</exception>
    public NestingItem(string name, Outline shape, int demand, AllowedTurns turns, bool mayMirror = false)
        : this(name, shape, demand, PosesOf(turns, mayMirror))
    {
    }

    /// <summary>Describes an item with the poses it may be placed in, one by one.</summary>
    /// <param name="name">What messages call it; not blank.</param>
    /// <param name="shape">Its outline, anywhere in the plane.</param>
    /// <param name="demand">How many copies; one or more.</param>
    /// <param name="poses">The poses; with none the item cannot be placed, which <see cref="NestingProblems"/> tells.</param>
    /// <exception cref="ArgumentException">An argument is outside its range.</exception>
    public NestingItem(string name, Outline shape, int demand, ImmutableArray<Pose> poses)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentOutOfRangeException.ThrowIfLessThan(demand, 1);
        (Name, Shape, Demand, Poses) = (name, shape, demand, poses.IsDefault ? [] : [.. poses.Distinct()]);
    }

    /// <summary>What messages call it.</summary>
    public string Name { get; }

    /// <summary>Its outline.</summary>
    public Outline Shape { get; }

    /// <summary>How many copies.</summary>
    public int Demand { get; }

    /// <summary>The poses it may be placed in, each once.</summary>
    public ImmutableArray<Pose> Poses { get; }

    private static ImmutableArray<Pose> PosesOf(AllowedTurns turns, bool mayMirror)
    {
        int[] degrees = turns switch
        {
            AllowedTurns.None => [0],
            AllowedTurns.Half => [0, 180],
            AllowedTurns.Quarter => [0, 90, 180, 270],
            AllowedTurns.Free => [.. Enumerable.Range(0, 360 / FreeStepDegrees).Select(i => i * FreeStepDegrees)],
            _ => throw new ArgumentOutOfRangeException(nameof(turns)),
        };
        bool[] sides = mayMirror ? [false, true] : [false];
        return [.. sides.SelectMany(side => degrees.Select(degree => new Pose(degree, side)))];
    }
}
