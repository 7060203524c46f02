using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A flap sewn under the carrier's edge, and what it is fastened to on the top.</summary>
/// <param name="Side">The edge.</param>
/// <param name="Parts">What kind it is, and what it is made of.</param>
/// <param name="Setback">From each finished corner of the carrier to the flap's end.</param>
/// <param name="Flap">The finished flap, the lap under the carrier's edge included.</param>
/// <param name="OnTop">What is sewn to the top: the strip under the fasteners, the tape, or the other flap of a lacing or a sleeve.</param>
public sealed record FlapPlace(Side Side, FlapParts Parts, Length Setback, Box Flap, Box OnTop) : EdgePlace(Side)
{
    private readonly Length _setback = Setback;

    /// <inheritdoc/>
    public override MountKind Kind => Parts.Kind;

    /// <inheritdoc/>
    public override Length Setback => _setback;

    /// <inheritdoc/>
    public override Box Band { get; init; } = Flap.Joined(OnTop);

    /// <inheritdoc/>
    public override double LineY => (IsEnd, Kind) switch
    {
        (false, _) => AsEnd.LineY,
        (_, MountKind.Lacing) => ((Side == Side.Forward ? Flap.Top : Flap.Bottom) + (Side == Side.Forward ? OnTop.Bottom : OnTop.Top)) / 2,

        // Its two flaps mirror each other over the rod.
        (_, MountKind.Sleeve) => Flap.Joined(OnTop).Center.Y,
        _ => OnTop.Center.Y,
    };

    /// <inheritdoc/>
    public override Length Run => Length.FromMillimeters(AsEnd.Flap.WidthMm);

    /// <summary>The fasteners along it; null where it holds all along.</summary>
    public FastenerRow? Fasteners => Parts.Spec is { } spec ? FastenerRow.Along(Run, spec.Spacing) : null;

    /// <summary>The lugs of a sleeve; null for other kinds.</summary>
    public LugRow? Lugs => Parts.Sleeve is { } sleeve ? LugRow.Along(Run, sleeve) : null;

    /// <summary>Where the rod lies, its ends included; null for other kinds.</summary>
    public Box? Rod => Parts.Sleeve is { } sleeve
        ? Frame.Back(Box.Around(new(AsEnd.Flap.Center.X, LineY), AsEnd.Flap.WidthMm + (2 * SleeveSpec.StickOut.Millimeters), sleeve.Rod.Millimeters))
        : null;

    /// <summary>Where the fasteners' centres lie on the carrier's flap, port or forward first; none where it holds all along.</summary>
    public ImmutableArray<Point> CentresOnCarrier => Centres(
        (Outward > 0 ? AsEnd.Flap.Top : AsEnd.Flap.Bottom) - (Outward * (Parts.Spec?.Width ?? Length.Zero).Millimeters / 2));

    /// <summary>Where their counterparts lie on the top, in the same order.</summary>
    public ImmutableArray<Point> CentresOnTop => Centres(AsEnd.OnTop.Center.Y);

    /// <inheritdoc/>
    public override FlapPlace AsEnd => IsEnd ? this : this with
    {
        Side = EdgeFrame.EndOf(Side),
        Flap = Frame.Turned(Flap),
        OnTop = Frame.Turned(OnTop),
        Band = Frame.Turned(Band),
    };

    /// <inheritdoc/>
    public override EdgePlace MovedBy(Step step) =>
        this with { Flap = Flap.MovedBy(step), OnTop = OnTop.MovedBy(step), Band = Band.MovedBy(step) };

    /// <summary>The flap for an edge.</summary>
    /// <param name="side">The edge; the job holds it by something else than a zipper.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="job">The job.</param>
    public static FlapPlace On(Side side, Box carrier, CarrierJob job)
    {
        var (mount, frame) = (job.Fastenings.Mount, EdgeFrame.Of(side));
        var (kind, setback) = (mount.At(side) ?? throw new ArgumentException("Nothing holds this edge.", nameof(side)), mount.Setback.Millimeters);
        var (turned, outward) = (frame.Turned(carrier), EdgeFrame.EndOf(side) == Side.Forward ? 1 : -1);
        var edge = outward > 0 ? turned.Top : turned.Bottom;
        var run = new Box(turned.Left + setback, edge, turned.Right - setback, edge);
        Box Across(FlapReach reach) => frame.Back(Box.Holding(
        [
            new(run.Left + reach.EndMm, edge + (outward * reach.FromMm)),
            new(run.Right - reach.EndMm, edge + (outward * reach.ToMm)),
        ]));
        var parts = new FlapParts(kind, mount.Figures.FastenersOf(kind), kind == MountKind.Sleeve ? mount.Figures.Sleeve : null);
        var (flap, onTop) = FlapReach.Of(parts, job, Length.FromMillimeters(run.WidthMm));
        return new(side, parts, mount.Setback, Across(flap), Across(onTop));
    }

    private ImmutableArray<Point> Centres(double y) =>
        Fasteners is { } row ? [.. row.Offsets.Select(offset => Frame.Back(new Point(AsEnd.Flap.Center.X + offset.Millimeters, y)))] : [];
}

/// <summary>What a flap carries.</summary>
/// <param name="Kind">Any but the zipper.</param>
/// <param name="Spec">The fasteners; null where it holds all along.</param>
/// <param name="Sleeve">The sleeve; null for other kinds.</param>
public sealed record FlapParts(MountKind Kind, FastenerSpec? Spec, SleeveSpec? Sleeve = null);
