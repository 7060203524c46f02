using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A flap sewn under the carrier's edge, and what it is fastened to on the top.</summary>
/// <param name="Side">Forward or aft.</param>
/// <param name="Parts">What kind it is, and what it is made of.</param>
/// <param name="Setback">From each finished corner of the carrier to the flap's end.</param>
/// <param name="Flap">The finished flap, the lap under the carrier's edge included.</param>
/// <param name="OnTop">What is sewn to the top: the strip under the fasteners, the tape, or the lacing's other flap.</param>
public sealed record FlapPlace(Side Side, FlapParts Parts, Length Setback, Box Flap, Box OnTop) : EdgePlace(Side)
{
    /// <summary>How much of the flap lies under the carrier's edge; common practice, no source.</summary>
    public static readonly Length Lap = Length.FromInches(0.5);

    private readonly Length _setback = Setback;

    /// <inheritdoc/>
    public override MountKind Kind => Parts.Kind;

    /// <inheritdoc/>
    public override Length Setback => _setback;

    /// <inheritdoc/>
    public override Box Band { get; init; } = Flap.Joined(OnTop);

    /// <inheritdoc/>
    public override double LineY => Kind == MountKind.Lacing
        ? ((Side == Side.Forward ? Flap.Top : Flap.Bottom) + (Side == Side.Forward ? OnTop.Bottom : OnTop.Top)) / 2
        : OnTop.Center.Y;

    /// <inheritdoc/>
    public override Length Run => Length.FromMillimeters(Flap.WidthMm);

    /// <summary>The fasteners along it; null where it holds all along.</summary>
    public FastenerRow? Fasteners => Parts.Spec is { } spec ? FastenerRow.Along(Run, spec.Spacing) : null;

    /// <summary>Where the fasteners' centres lie on the carrier's flap, port first; none where it holds all along.</summary>
    public ImmutableArray<Point> CentresOnCarrier => Centres(
        (Side == Side.Forward ? Flap.Top : Flap.Bottom) - (Outward * (Parts.Spec?.Width ?? Length.Zero).Millimeters / 2));

    /// <summary>Where their counterparts lie on the top, in the same order.</summary>
    public ImmutableArray<Point> CentresOnTop => Centres(OnTop.Center.Y);

    /// <inheritdoc/>
    public override EdgePlace MovedBy(Step step) =>
        this with { Flap = Flap.MovedBy(step), OnTop = OnTop.MovedBy(step), Band = Band.MovedBy(step) };

    /// <summary>The flap for an edge.</summary>
    /// <param name="side">Forward or aft.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="job">The job.</param>
    public static FlapPlace On(Side side, Box carrier, CarrierJob job)
    {
        var (mount, outward) = (job.Fastenings.Mount, side == Side.Forward ? 1 : -1);
        var (kind, setback) = (mount.At(side), mount.Setback.Millimeters);
        var spec = mount.Figures.FastenersOf(kind);
        var width = (spec?.Width ?? mount.Figures.HookAndLoop.Width).Millimeters;
        var edge = side == Side.Forward ? carrier.Top : carrier.Bottom;
        Box Across(double fromOut, double toOut) => Box.Holding(
            [new(carrier.Left + setback, edge + (outward * fromOut)), new(carrier.Right - setback, edge + (outward * toOut))]);
        var gap = mount.Figures.LacingGap.Millimeters;
        var tape = job.Workshop.Supplies.Tapes.Mount.HookAndLoop.Width.Millimeters;
        var onTop = kind switch
        {
            MountKind.HookAndLoop => Across((width - tape) / 2, (width + tape) / 2),
            MountKind.Lacing => Across(width + gap, (2 * width) + gap),
            _ => Across(0, width),
        };
        return new(side, new(kind, spec), mount.Setback, Across(-Lap.Millimeters, width), onTop);
    }

    private ImmutableArray<Point> Centres(double y) =>
        Fasteners is { } row ? [.. row.Offsets.Select(offset => new Point(Flap.Center.X + offset.Millimeters, y))] : [];
}

/// <summary>What a flap carries.</summary>
/// <param name="Kind">Any but the zipper.</param>
/// <param name="Spec">The fasteners; null where it holds all along.</param>
public sealed record FlapParts(MountKind Kind, FastenerSpec? Spec);
