using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What holds the edges, pockets and strips, in the plan of the top.</summary>
/// <param name="Edges">What holds the forward edge, the aft edge, then the port and the starboard edge where anything does.</param>
/// <param name="Pockets">One a corner, in the order of <see cref="Corner.All"/>.</param>
/// <param name="Strips">One for each edge that has one, sewn to the top or to the carrier.</param>
public sealed record MountedFastenings(
    ImmutableArray<EdgePlace> Edges, ImmutableArray<PocketPlace> Pockets, ImmutableArray<StripPlace> Strips)
{
    /// <summary>Between the strip's innermost row and whatever it covers, so that a presser foot passes; common practice, no source.</summary>
    public static readonly Length SeamClearance = Length.FromMillimeters(6);

    /// <summary>The strips that are sewn to the top.</summary>
    public ImmutableArray<StripPlace> StripsOnTop => [.. Strips.Where(strip => !strip.IsOnCarrier)];

    /// <summary>The strips that are sewn to the carrier.</summary>
    public ImmutableArray<StripPlace> StripsOnCarrier => [.. Strips.Where(strip => strip.IsOnCarrier)];

    /// <summary>The edges that are held by zippers.</summary>
    public ImmutableArray<ZipperPlace> Zippers => [.. Edges.OfType<ZipperPlace>()];

    /// <summary>The edges that are held by a flap with something on it.</summary>
    public ImmutableArray<FlapPlace> Flaps => [.. Edges.OfType<FlapPlace>()];

    /// <summary>What holds the port and the starboard edge.</summary>
    public ImmutableArray<EdgePlace> Sides => [.. Edges.Where(edge => !edge.IsEnd)];

    /// <summary>Whether zippers hold the forward and the aft edge, and nothing the sides.</summary>
    public bool HasEndZippersOnly => Flaps.IsEmpty && Sides.IsEmpty;

    /// <summary>
    /// The longest stretch of edge that hangs on an end of a zipper: half of what lies between it and the corner; where it starts half
    /// of what lies between it and the pocket that holds the corner.
    /// </summary>
    public Length FreeEnd(ZipperPlace zipper)
    {
        var pocket = Pockets.First(each => (each.Corner.End == zipper.Side && each.Corner.Hand == zipper.StartSide) || (each.Corner.Hand == zipper.Side && each.Corner.End == zipper.StartSide));
        return UnitMath.Max(zipper.Choice.Setback, zipper.Choice.StartSetback - pocket.Covers) / 2;
    }

    /// <summary>Whether the flaps that a job asks for find room on its carrier, either way the panel may lie.</summary>
    public static bool Fits(CarrierJob job)
    {
        var (mount, border) = (job.Fastenings.Mount, job.Carrier.Border);
        var ways = (job.Panel.LongSide is { } given ? [given] : Enum.GetValues<LongSide>()).Select(way => RowLayout.Of(job, way)).ToList();
        var (athwart, foreAft) = (ways.Select(row => row.Athwart).Aggregate(UnitMath.Min), ways.Select(row => row.ForeAft).Aggregate(UnitMath.Min));
        return new[] { mount.Forward, mount.Aft }.All(kind => HasRoom(mount, kind, athwart + border.Port + border.Starboard))
            && new[] { mount.Port, mount.Starboard }.All(kind => HasRoom(mount, kind, foreAft + border.Forward + border.Aft));
    }

    private static bool HasRoom(MountSpec mount, MountKind? kind, Length edge)
    {
        var run = edge - (mount.Setback * 2);
        return kind is null or MountKind.Zipper
            || (run > Length.Zero
                && (kind != MountKind.Sleeve || LugRow.HasRoom(run, mount.Figures.Sleeve))
                && (mount.Figures.FastenersOf(kind.Value) is not { } spec || run - (spec.Spacing.EndDistance * 2) > spec.Diameter));
    }

    /// <summary>The fastenings of a carrier.</summary>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="panels">The panels on it.</param>
    /// <param name="job">The job.</param>
    public static MountedFastenings For(Box carrier, ImmutableArray<PlacedPanel> panels, CarrierJob job)
    {
        ImmutableArray<PocketPlace> pockets = [.. Corner.All.Select(corner => PocketPlace.For(corner, carrier, panels, job))];
        return Of(
            carrier,
            job.Fastenings with { WeatherStrip = ClearStrip(job) },
            [.. new[] { Side.Forward, Side.Aft, Side.Port, Side.Starboard }.Where(side => job.Fastenings.Mount.At(side) is not null).Select(side => EdgeOn(side, carrier, pockets, job))],
            [.. pockets.Select(pocket => pocket.Leg)]);
    }

    /// <summary>The fastenings of a carrier whose zippers and pockets are settled.</summary>
    internal static MountedFastenings Of(Box carrier, Fastenings fastenings, ZipperChoice choice, ImmutableArray<Length> legs) => Of(
        carrier,
        fastenings,
        [ZipperPlace.On(Side.Forward, carrier, fastenings.Zipper, choice), ZipperPlace.On(Side.Aft, carrier, fastenings.Zipper, choice)],
        legs);

    /// <summary>The same fastenings elsewhere.</summary>
    public MountedFastenings MovedBy(Step step) => new(
        [.. Edges.Select(edge => edge.MovedBy(step))],
        [.. Pockets.Select(pocket => pocket.MovedBy(step))],
        [.. Strips.Select(strip => strip.MovedBy(step))]);

    private static MountedFastenings Of(Box carrier, Fastenings fastenings, ImmutableArray<EdgePlace> edges, ImmutableArray<Length> legs)
    {
        ImmutableArray<PocketPlace> pockets = [.. Corner.All.Zip(legs, (corner, leg) => PocketPlace.Of(corner, carrier, fastenings, leg))];
        return new(edges, pockets, [.. fastenings.WeatherStrip.Edges.Select(side => StripPlace.On(side, carrier, fastenings, pockets))]);
    }

    /// <summary>The job's strip with its seam so far out that no row of it meets a pocket or a tape.</summary>
    internal static WeatherStripSpec ClearStrip(CarrierJob job) => job.Fastenings.WeatherStrip with
    {
        SeamClearance = SeamClearance + StitchRows.DistanceFromFold(job.Workshop.Sewing.Rows - 1),
    };

    private static EdgePlace EdgeOn(Side side, Box carrier, ImmutableArray<PocketPlace> pockets, CarrierJob job)
    {
        if (job.Fastenings.Mount.At(side) != MountKind.Zipper)
        {
            return FlapPlace.On(side, carrier, job);
        }

        var (spec, edge) = (job.Fastenings.Zipper, side is Side.Forward or Side.Aft ? carrier.WidthMm : carrier.HeightMm);
        return ZipperPlace.On(side, carrier, spec, ZipperChoice.For(Length.FromMillimeters(edge), spec, ZipperStart.SetbackFor(side, carrier, pockets, spec)));
    }
}
