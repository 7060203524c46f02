using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The zippers, pockets and strips, in the plan of the top.</summary>
/// <param name="Zippers">The forward one, then the aft one.</param>
/// <param name="Pockets">One a corner, in the order of <see cref="Corner.All"/>.</param>
/// <param name="Strips">One for each edge that has one.</param>
public sealed record MountedFastenings(
    ImmutableArray<ZipperPlace> Zippers, ImmutableArray<PocketPlace> Pockets, ImmutableArray<StripPlace> Strips)
{
    /// <summary>Between the strip's seam and whatever it covers, so that a presser foot passes; common practice, no source.</summary>
    public static readonly Length SeamClearance = Length.FromMillimeters(6);

    /// <summary>The fastenings of a carrier.</summary>
    public static MountedFastenings For(Box carrier, Box cells, CarrierJob job) => Of(
        carrier,
        job.Fastenings,
        ZipperChoice.For(Length.FromMillimeters(carrier.WidthMm), job.Fastenings.Zipper),
        [.. Corner.All.Select(corner => PocketPlace.For(corner, carrier, cells, job).Leg)]);

    /// <summary>The fastenings of a carrier whose zippers and pockets are settled.</summary>
    internal static MountedFastenings Of(Box carrier, Fastenings fastenings, ZipperChoice choice, ImmutableArray<Length> legs) => new(
        [ZipperOn(Side.Forward, carrier, fastenings.Zipper, choice), ZipperOn(Side.Aft, carrier, fastenings.Zipper, choice)],
        [.. Corner.All.Zip(legs, (corner, leg) => PocketPlace.Of(corner, carrier, fastenings, leg))],
        [.. fastenings.WeatherStrip.Edges.Select(side => StripOn(side, carrier, fastenings))]);

    /// <summary>The same fastenings elsewhere.</summary>
    public MountedFastenings MovedBy(Step step) => new(
        [.. Zippers.Select(zipper => zipper with { Band = zipper.Band.MovedBy(step), ChainY = zipper.ChainY + step.Y })],
        [.. Pockets.Select(pocket => pocket.MovedBy(step))],
        [.. Strips.Select(strip => strip with { Finished = strip.Finished.MovedBy(step), SeamY = strip.SeamY + step.Y })]);

    private static ZipperPlace ZipperOn(Side side, Box carrier, ZipperSpec spec, ZipperChoice choice)
    {
        var outward = side == Side.Forward ? 1 : -1;
        var chainY = (side == Side.Forward ? carrier.Top : carrier.Bottom) + (outward * spec.Reveal.Millimeters);
        var band = Box.Around(new(carrier.Center.X, chainY), choice.Run.Millimeters, spec.Gauge.OverallWidth.Millimeters);
        return new(side, choice, band, chainY);
    }

    private static StripPlace StripOn(Side side, Box carrier, Fastenings fastenings)
    {
        var (strip, pocket, zipper) = (fastenings.WeatherStrip, fastenings.Pocket, fastenings.Zipper);
        var covered = pocket.OverZipper ? zipper.OuterTapeEdge + pocket.Ease : zipper.OuterTapeEdge;
        var seamOut = (covered + SeamClearance).Millimeters;
        var (left, right) = (carrier.Left - strip.Overhang.Millimeters, carrier.Right + strip.Overhang.Millimeters);
        return side == Side.Forward
            ? new(side, new(left, carrier.Top - strip.Overlap.Millimeters, right, carrier.Top + seamOut), carrier.Top + seamOut)
            : new(side, new(left, carrier.Bottom - seamOut, right, carrier.Bottom + strip.Overlap.Millimeters), carrier.Bottom - seamOut);
    }
}
