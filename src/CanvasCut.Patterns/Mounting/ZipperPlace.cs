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

    /// <summary>Whether it starts at the first of its <see cref="EdgePlace.EndNames"/>: port, or forward at a side.</summary>
    public bool StartsFirst { get; init; } = true;

    /// <summary>Where it starts: the pin on the carrier's half, the box with the slider on the top's.</summary>
    public Point Start => StartsFirst ? Line.From : Line.To;

    /// <summary>Its stop end, where it is trimmed.</summary>
    public Point Stop => StartsFirst ? Line.To : Line.From;

    /// <summary>The end at which it starts: port or starboard, at a side forward or aft.</summary>
    public Side StartSide => (IsEnd, StartsFirst) switch
    {
        (true, true) => Side.Port,
        (true, false) => Side.Starboard,
        (false, true) => Side.Forward,
        _ => Side.Aft,
    };

    /// <summary>The end at which it starts, as in "port".</summary>
    public string StartName => Words.Of(StartSide);

    /// <summary>
    /// Whether the box, which stays on the top, is on the left tape seen from the start with the pull up. An end that starts to port
    /// has the top's half to its left when it is the forward one.
    /// </summary>
    public bool BoxIsLeft => StartsFirst == (Outward > 0);

    /// <inheritdoc/>
    public override Length SetbackAt(bool first) => first == StartsFirst ? Choice.StartSetback : Choice.Setback;

    /// <inheritdoc/>
    public override ZipperPlace AsEnd => IsEnd ? this : this with { Side = EdgeFrame.EndOf(Side), Band = Frame.Turned(Band) };

    /// <inheritdoc/>
    public override EdgePlace MovedBy(Step step) => this with { Band = Band.MovedBy(step), ChainY = ChainY + Frame.Turned(step).Y };

    /// <summary>The zipper for an edge whose lengths are settled.</summary>
    /// <param name="side">The edge.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="spec">The zippers wanted.</param>
    /// <param name="choice">Its lengths.</param>
    internal static ZipperPlace On(Side side, Box carrier, ZipperSpec spec, ZipperChoice choice)
    {
        var frame = EdgeFrame.Of(side);
        var (turned, isUpper) = (frame.Turned(carrier), EdgeFrame.EndOf(side) == Side.Forward);
        var startsFirst = spec.StartOf(side) is Side.Port or Side.Forward;
        var chainY = (isUpper ? turned.Top : turned.Bottom) + ((isUpper ? 1 : -1) * spec.Reveal.Millimeters);
        var left = turned.Left + (startsFirst ? choice.StartSetback : choice.Setback).Millimeters;
        var half = spec.Gauge.OverallWidth.Millimeters / 2;
        var band = new Box(left, chainY - half, left + choice.Run.Millimeters, chainY + half);
        return new(side, choice, frame.Back(band), chainY) { StartsFirst = startsFirst };
    }
}
