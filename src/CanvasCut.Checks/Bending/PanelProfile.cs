using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>A tube under the panel, and how the panel bends there.</summary>
/// <param name="Bow">Which bow, counted from 0.</param>
/// <param name="At">Along the straight line between the panel's held edges, from the forward one.</param>
/// <param name="Cloth">The height of the cloth over that line.</param>
/// <param name="IsTouched">Whether the panel presses on it.</param>
/// <param name="StandsOff">How far the panel stands off it; zero when it touches.</param>
/// <param name="Radius">The panel's radius there; null when straight.</param>
/// <param name="IsWrapped">Whether the panel lies round the tube, so that the tube gives the radius.</param>
public sealed record TubeUnder(int Bow, Length At, Length Cloth, bool IsTouched, Length StandsOff, Length? Radius, bool IsWrapped);

/// <summary>The panel seen from the side as a thin elastic strip over the tubes, at one offset.</summary>
/// <remarks>
/// The zippers hold the panel's forward and aft edge down on the cloth; the border between zipper and panel bends freely.
/// Tubes do not give. Between bows the cloth hangs by its sag and the panel may rest on it. So the surface asked for is the cloth as
/// slack as it may be: edges, middle and tubes belong to one and the same cloth.
/// </remarks>
public sealed class PanelProfile
{
    /// <summary>The cloth is asked for its height at so many places.</summary>
    private const int ClothPlaces = 48;

    /// <summary>Between a tube and the next place of the cloth.</summary>
    private const double BesideTubeMm = 5;

    private readonly TopSurface _surface;
    private readonly CarrierJob _job;
    private readonly double _offsetMm;
    private readonly (double FromMm, double ToMm) _stations;
    private readonly (SpacePoint Origin, SpaceStep Along, SpaceStep Up) _frame;

    private PanelProfile(CarrierJob job, MountedShape mounted, TopSurface surface, double offsetMm)
    {
        (_surface, _job, _offsetMm) = (surface, job, offsetMm);
        _stations = (-mounted.PanelBox.Top, -mounted.PanelBox.Bottom);
        _frame = FrameOf(surface, _stations, offsetMm);
        var lengthMm = LengthMm;

        // Where the cloth stands so steep that a place of it is no longer beside the line between the held edges, it carries nothing.
        bool IsBeside(StripRest rest) => rest.AtMm > 0 && rest.AtMm < lengthMm;
        var tubes = job.Top.Bows.Index().Where(each => IsUnder(each.Item)).Select(each => (each.Index, Top: ClothAt(each.Item.Station.Millimeters))).Where(tube => IsBeside(tube.Top)).ToList();
        ImmutableArray<StripRest> rests = [.. tubes.Select(tube => tube.Top).Concat(ClothRests().Where(IsBeside)).DistinctBy(rest => rest.AtMm).OrderBy(rest => rest.AtMm)];
        var weight = PanelBends.MayAlong(job, mounted.Panel.LongSide) ? PanelStiffness.WeightPerMm3(job) : 0;
        Strip = ElasticStrip.Over(lengthMm, rests, weight);
        Tubes = [.. tubes.Select(tube => UnderOf(tube.Index, tube.Top, rests.IndexOf(tube.Top)))];
    }

    /// <summary>From the centreline.</summary>
    public Length Offset => Length.FromMillimeters(_offsetMm);

    /// <summary>The strip, in millimetres from the straight line between its held edges.</summary>
    public ElasticStrip Strip { get; }

    /// <summary>The tubes under the panel, forward to aft.</summary>
    public ImmutableArray<TubeUnder> Tubes { get; }

    private double LengthMm => _surface.PointAt(PanelNet.At(_stations.FromMm, _offsetMm)).DistanceMm(_surface.PointAt(PanelNet.At(_stations.ToMm, _offsetMm)));

    /// <summary>The panel's port edge, its middle and its starboard edge.</summary>
    public static ImmutableArray<PanelProfile> Of(CarrierJob job, MountedShape mounted, TopSurface surface) =>
    [
        .. new[] { mounted.PanelBox.Left, mounted.PanelBox.Center.X, mounted.PanelBox.Right }.Select(offset => At(job, mounted, surface, offset)),
    ];

    /// <summary>The panel at one offset.</summary>
    public static PanelProfile At(CarrierJob job, MountedShape mounted, TopSurface surface, double offsetMm) => new(job, mounted, surface, offsetMm);

    /// <summary>Where a place of the cloth lies: along the line between the held edges, and over it.</summary>
    public StripRest ClothAt(double stationMm)
    {
        var step = _surface.PointAt(PanelNet.At(stationMm, _offsetMm)) - _frame.Origin;
        return new(step.Dot(_frame.Along), step.Dot(_frame.Up));
    }

    private static (SpacePoint Origin, SpaceStep Along, SpaceStep Up) FrameOf(TopSurface surface, (double FromMm, double ToMm) stations, double offsetMm)
    {
        var (from, to) = (surface.PointAt(PanelNet.At(stations.FromMm, offsetMm)), surface.PointAt(PanelNet.At(stations.ToMm, offsetMm)));
        var along = (to - from).Unit();
        var normal = surface.NormalAt(PanelNet.At((stations.FromMm + stations.ToMm) / 2, offsetMm));
        return (from, along, (normal + (along * -normal.Dot(along))).Unit());
    }

    private bool IsUnder(Bow bow) => bow.Station.Millimeters > _stations.FromMm && bow.Station.Millimeters < _stations.ToMm;

    /// <summary>The cloth between the tubes.</summary>
    private IEnumerable<StripRest> ClothRests()
    {
        for (var i = 1; i < ClothPlaces; i++)
        {
            var station = _stations.FromMm + ((_stations.ToMm - _stations.FromMm) * i / ClothPlaces);
            if (_job.Top.Bows.All(bow => Math.Abs(bow.Station.Millimeters - station) > BesideTubeMm))
            {
                yield return ClothAt(station);
            }
        }
    }

    private TubeUnder UnderOf(int bow, StripRest rest, int index)
    {
        var contact = Strip.Contacts.FirstOrDefault(each => each.Rest == index);
        var tubeMm = (_job.Top.Bows[bow].Diameter.Millimeters / 2) + (_job.Panel.Body.Thickness.Millimeters / 2);
        var free = 1 / Math.Abs(Strip.CurvatureAt(rest.AtMm));
        return new(
            bow,
            Length.FromMillimeters(rest.AtMm),
            Length.FromMillimeters(rest.HeightMm),
            contact is not null,
            Length.FromMillimeters(contact is null ? Strip.HeightAt(rest.AtMm) - rest.HeightMm : 0),
            BendLimit.RadiusOf(contact is null ? free : Math.Max(free, tubeMm)),
            contact is not null && free < tubeMm);
    }
}
