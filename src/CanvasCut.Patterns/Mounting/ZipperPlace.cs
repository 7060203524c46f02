using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A zipper where it lies on the top.</summary>
/// <param name="Side">The edge.</param>
/// <param name="Choice">Its lengths.</param>
/// <param name="Band">Both tapes, closed, from end to end.</param>
/// <param name="ChainY">The middle of the chain, in millimetres: of an end in the plan, of a side as <see cref="AsEnd"/> has it.</param>
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
    public override ZipperPlace AsEnd => IsEnd ? this : this with { Side = EdgeFrame.EndOf(Side), Band = Frame.Turned(Band) };

    /// <inheritdoc/>
    public override EdgePlace MovedBy(Step step) => this with { Band = Band.MovedBy(step), ChainY = ChainY + Frame.Turned(step).Y };

    /// <summary>The zipper for an edge.</summary>
    /// <param name="side">The edge.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="spec">The zippers wanted.</param>
    /// <param name="settled">Its lengths, where they are settled already.</param>
    internal static ZipperPlace On(Side side, Box carrier, ZipperSpec spec, ZipperChoice? settled = null)
    {
        var frame = EdgeFrame.Of(side);
        var (turned, isUpper) = (frame.Turned(carrier), EdgeFrame.EndOf(side) == Side.Forward);
        var choice = settled ?? ZipperChoice.For(Length.FromMillimeters(turned.WidthMm), spec);
        var chainY = (isUpper ? turned.Top : turned.Bottom) + ((isUpper ? 1 : -1) * spec.Reveal.Millimeters);
        var band = Box.Around(new(turned.Center.X, chainY), choice.Run.Millimeters, spec.Gauge.OverallWidth.Millimeters);
        return new(side, choice, frame.Back(band), chainY);
    }
}
