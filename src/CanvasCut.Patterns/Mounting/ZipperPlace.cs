using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A zipper where it lies on the top.</summary>
/// <param name="Side">Forward or aft.</param>
/// <param name="Choice">Its lengths.</param>
/// <param name="Band">Both tapes, closed, from end to end.</param>
/// <param name="ChainY">The middle of the chain, in millimetres of the plan.</param>
public sealed record ZipperPlace(Side Side, ZipperChoice Choice, Box Band, double ChainY) : EdgePlace(Side)
{
    /// <inheritdoc/>
    public override MountKind Kind => MountKind.Zipper;

    /// <inheritdoc/>
    public override Box Band { get; init; } = Band;

    /// <inheritdoc/>
    public override double LineY => ChainY;

    /// <inheritdoc/>
    public override Length Run => Choice.Run;

    /// <inheritdoc/>
    public override Length Setback => Choice.Setback;

    /// <inheritdoc/>
    public override EdgePlace MovedBy(Step step) => this with { Band = Band.MovedBy(step), ChainY = ChainY + step.Y };
}
