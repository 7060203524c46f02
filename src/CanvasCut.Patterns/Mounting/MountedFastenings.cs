using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What holds the edges, pockets and strips, in the plan of the top.</summary>
/// <param name="Edges">What holds the forward edge, then the aft edge.</param>
/// <param name="Pockets">One a corner, in the order of <see cref="Corner.All"/>.</param>
/// <param name="Strips">One for each edge that has one.</param>
public sealed record MountedFastenings(
    ImmutableArray<EdgePlace> Edges, ImmutableArray<PocketPlace> Pockets, ImmutableArray<StripPlace> Strips)
{
    /// <summary>Between the strip's seam and whatever it covers, so that a presser foot passes; common practice, no source.</summary>
    public static readonly Length SeamClearance = Length.FromMillimeters(6);

    /// <summary>The edges that are held by zippers.</summary>
    public ImmutableArray<ZipperPlace> Zippers => [.. Edges.OfType<ZipperPlace>()];

    /// <summary>The edges that are held by a flap with something on it.</summary>
    public ImmutableArray<FlapPlace> Flaps => [.. Edges.OfType<FlapPlace>()];

    /// <summary>Whether the flaps that a job asks for find room on its carrier, either way the panel may lie.</summary>
    public static bool Fits(CarrierJob job)
    {
        var (mount, border, body) = (job.Fastenings.Mount, job.Carrier.Border, job.Panel.Body);
        var panel = job.Panel.LongSide == LongSide.Athwart ? body.Length : body.Width;
        var run = panel + border.Port + border.Starboard - (mount.Setback * 2);
        return new[] { mount.Forward, mount.Aft }.Where(kind => kind != MountKind.Zipper).All(kind =>
            run > Length.Zero && (mount.Figures.FastenersOf(kind) is not { } spec || run - (spec.Spacing.EndDistance * 2) > spec.Diameter));
    }

    /// <summary>The fastenings of a carrier.</summary>
    public static MountedFastenings For(Box carrier, Box cells, CarrierJob job) => Of(
        carrier,
        job.Fastenings,
        [EdgeOn(Side.Forward, carrier, job), EdgeOn(Side.Aft, carrier, job)],
        [.. Corner.All.Select(corner => PocketPlace.For(corner, carrier, cells, job).Leg)]);

    /// <summary>The fastenings of a carrier whose zippers and pockets are settled.</summary>
    internal static MountedFastenings Of(Box carrier, Fastenings fastenings, ZipperChoice choice, ImmutableArray<Length> legs) => Of(
        carrier,
        fastenings,
        [ZipperOn(Side.Forward, carrier, fastenings.Zipper, choice), ZipperOn(Side.Aft, carrier, fastenings.Zipper, choice)],
        legs);

    /// <summary>The same fastenings elsewhere.</summary>
    public MountedFastenings MovedBy(Step step) => new(
        [.. Edges.Select(edge => edge.MovedBy(step))],
        [.. Pockets.Select(pocket => pocket.MovedBy(step))],
        [.. Strips.Select(strip => strip with { Finished = strip.Finished.MovedBy(step), SeamY = strip.SeamY + step.Y })]);

    private static MountedFastenings Of(Box carrier, Fastenings fastenings, ImmutableArray<EdgePlace> edges, ImmutableArray<Length> legs) => new(
        edges,
        [.. Corner.All.Zip(legs, (corner, leg) => PocketPlace.Of(corner, carrier, fastenings, leg))],
        [.. fastenings.WeatherStrip.Edges.Select(side => StripOn(side, carrier, fastenings))]);

    private static EdgePlace EdgeOn(Side side, Box carrier, CarrierJob job) => job.Fastenings.Mount.At(side) == MountKind.Zipper
        ? ZipperOn(side, carrier, job.Fastenings.Zipper, ZipperChoice.For(Length.FromMillimeters(carrier.WidthMm), job.Fastenings.Zipper))
        : FlapPlace.On(side, carrier, job);

    private static ZipperPlace ZipperOn(Side side, Box carrier, ZipperSpec spec, ZipperChoice choice)
    {
        var outward = side == Side.Forward ? 1 : -1;
        var chainY = (side == Side.Forward ? carrier.Top : carrier.Bottom) + (outward * spec.Reveal.Millimeters);
        var band = Box.Around(new(carrier.Center.X, chainY), choice.Run.Millimeters, spec.Gauge.OverallWidth.Millimeters);
        return new(side, choice, band, chainY);
    }

    private static StripPlace StripOn(Side side, Box carrier, Fastenings fastenings)
    {
        var (strip, pocket) = (fastenings.WeatherStrip, fastenings.Pocket);
        var covered = pocket.OverZipper ? fastenings.OuterEdge(side) + pocket.Ease : fastenings.OuterEdge(side);
        var seamOut = (covered + SeamClearance).Millimeters;
        var (left, right) = (carrier.Left - strip.Overhang.Millimeters, carrier.Right + strip.Overhang.Millimeters);
        return side == Side.Forward
            ? new(side, new(left, carrier.Top - strip.Overlap.Millimeters, right, carrier.Top + seamOut), carrier.Top + seamOut)
            : new(side, new(left, carrier.Bottom - seamOut, right, carrier.Bottom + strip.Overlap.Millimeters), carrier.Bottom - seamOut);
    }
}
