using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.Placing;

/// <summary>One of a top's mountings at its place.</summary>
/// <param name="Job">Its job; that of a twin is the mirror image of the one it mirrors.</param>
/// <param name="Fit">Where and how it lies.</param>
public sealed record PlacedMounting(CarrierJob Job, FitChoice Fit);

/// <summary>All mountings of a top at their places.</summary>
/// <param name="Top">The top and what is mounted on it.</param>
/// <param name="Mountings">In the order of the file, each followed by its twins; at least one.</param>
/// <param name="Between">The distances between the carriers, each pair once; none where there is one.</param>
public sealed record PlacedTop(TopJob Top, ImmutableArray<PlacedMounting> Mountings, ImmutableArray<Clearance> Between)
{
    /// <summary>Places everything: one carrier on a grid, several together.</summary>
    /// <param name="top">What is to be placed.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static PlacedTop Of(TopJob top, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(top);
        var placed = top.HasSeveral ? TogetherPlaces.Of(top, cancel) : [new PlacedMounting(top.First, FitChoice.For(top.First))];
        return new(top, placed, BetweenCarriers.Of(top.First, placed));
    }
}
