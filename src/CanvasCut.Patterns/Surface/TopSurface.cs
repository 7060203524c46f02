using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The top in space: arcs across on its bows, straight (or hanging by the sag) from bow to bow.</summary>
/// <remarks>
/// Places are given in the cloth: station along the centreline, offset along the cloth across. A place between two bows
/// lies on the straight line between the places of the same offset on both, the same part of the way as on the
/// centreline. Forward of the first bow and aft of the last the cloth runs straight on. In space X is to starboard of the
/// centreline, Y forward, Z above the level that the heights of the bows are measured from; Y is minus the station at the
/// first bow, and only differences of it mean anything.
/// </remarks>
public sealed class TopSurface
{
    private readonly ImmutableArray<BowLine> _bows;
    private readonly ImmutableArray<BayCurve> _bays;

    private TopSurface(ImmutableArray<BowLine> bows, ImmutableArray<BayCurve> bays, ImmutableArray<Length> bends)
    {
        (_bows, _bays, Bends) = (bows, bays, bends);
        Ridges = [.. bows.Where(bow => !bow.IsContinued).Index().Select(bow => RidgeLine.Of(bow.Index, bow.Item, bays))];
    }

    /// <summary>The offsets at which the frame bends down at its bows, from port to starboard; the side edges when there is no bend.</summary>
    public ImmutableArray<Length> Bends { get; }

    /// <summary>The bows as ridges, forward to aft.</summary>
    public ImmutableArray<Ridge> Ridges { get; }

    /// <summary>The surface of a top, or the fields without which it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The cloth between two bows is shorter than their heights differ.</exception>
    public static SurfaceFinding Of(TopCloth top)
    {
        ArgumentNullException.ThrowIfNull(top);
        var missing = SurfaceFinding.MissingOf(top);
        return missing.Length > 0 ? new(null, missing) : new(Built(top), []);
    }

    /// <summary>The same with the cloth as slack as it may be: a bay whose sag was not measured hangs by a part of its span.</summary>
    /// <param name="top">The top.</param>
    /// <param name="sag">That part; a bay too steep to hang so stays as it is.</param>
    public static SurfaceFinding Hanging(TopCloth top, double sag)
    {
        ArgumentNullException.ThrowIfNull(top);
        var finding = SurfaceFinding.MissingOf(top);
        return finding.Length > 0 ? new(null, finding) : new(Built(top.Over([.. top.Bows.Index().Select(each => Slack(top, each.Index, sag))])), []);
    }

    /// <summary>Where a place of the top lies in space, in millimetres.</summary>
    public SpacePoint PointAt(TopPlace place) => LocalAt(place).At;

    /// <summary>The direction square to the cloth, upward, of length 1.</summary>
    public SpaceStep NormalAt(TopPlace place)
    {
        var local = LocalAt(place);
        return local.Aft.Cross(local.Starboard).Unit();
    }

    /// <summary>How the cloth slopes at a place; on a bow, aft of it.</summary>
    public SurfaceSlope SlopeAt(TopPlace place)
    {
        var (local, normal) = (LocalAt(place), NormalAt(place));
        return new(
            Angle.FromRadians(-Math.Atan2(local.Aft.Z, double.Hypot(local.Aft.X, local.Aft.Y))),
            Angle.FromRadians(-Math.Atan2(local.Starboard.Z, double.Hypot(local.Starboard.X, local.Starboard.Y))),
            Angle.FromRadians(Math.Atan2(double.Hypot(normal.X, normal.Y), normal.Z)));
    }

    /// <summary>The radius of the cloth across at a place; null where it is straight.</summary>
    public Length? ArcRadiusAt(TopPlace place)
    {
        var (bay, at) = BayAt(place.Station);
        var (one, other) = (_bows[bay].Curve.At(place.Offset.Millimeters), _bows[bay + 1].Curve.At(place.Offset.Millimeters));
        var first = one.Along + ((other.Along - one.Along) * at.Part);
        var second = one.Bend + ((other.Bend - one.Bend) * at.Part);
        var curvature = Math.Abs(first.Cross(second)) / Math.Pow(first.LengthMm, 3);
        return curvature > 0 ? Length.FromMillimeters(1 / curvature) : null;
    }

    /// <summary>Straight through the air.</summary>
    public Length DistanceBetween(TopPlace from, TopPlace to) => Length.FromMillimeters(PointAt(from).DistanceMm(PointAt(to)));

    /// <summary>Along the cloth, over the line that is straight when the cloth is laid flat.</summary>
    public Length GirthBetween(TopPlace from, TopPlace to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var (station, offset) = ((to.Station - from.Station).Millimeters, (to.Offset - from.Offset).Millimeters);
        double Speed(double part)
        {
            var local = LocalAt(Between(from, to, part));
            return ((local.Aft * station) + (local.Starboard * offset)).LengthMm;
        }

        return Length.FromMillimeters(Integral.Of(Speed, BreaksBetween(from, to)));
    }

    private static TopPlace Between(TopPlace from, TopPlace to, double part) =>
        new(from.Station + ((to.Station - from.Station) * part), from.Offset + ((to.Offset - from.Offset) * part));

    private static TopSurface Built(TopCloth top)
    {
        var corner = top.Edges.CornerRadius;
        var bows = BowLine.Of(top, bow => new(bow.Halves!, top.Outline.HalvesAt(bow.Station), corner.Millimeters));
        ImmutableArray<BayCurve> bays =
        [
            .. bows.Zip(bows.Skip(1)).Select(pair => new BayCurve(pair.Second.StationMm - pair.First.StationMm, pair.Second.HeightMm - pair.First.HeightMm, pair.First.SagMm)),
        ];
        return new(BowLine.Placed(bows, bays), bays, BendsOf(top, corner));
    }

    private static ImmutableArray<Length> BendsOf(TopCloth top, Length corner) =>
    [
        .. top.Bows.Select(bow => top.Outline.HalvesAt(bow.Station)).SelectMany(halves => new[] { corner - halves.Port, halves.Starboard - corner }).Distinct().Order(),
    ];

    private static Bow Slack(TopCloth top, int index, double sag)
    {
        var bow = top.Bows[index];
        if (bow.SagAft > Length.Zero || index + 1 == top.Bows.Length)
        {
            return bow;
        }

        var next = top.Bows[index + 1];
        var (cloth, hangs) = (next.Station - bow.Station, (next.Station - bow.Station) * sag);
        var rise = (next.Height - bow.Height ?? Length.Zero) + ((next.Diameter - bow.Diameter) / 2);
        return BayCurve.CanBe(cloth.Millimeters, rise.Millimeters, hangs.Millimeters) ? new(bow.Station, bow.Diameter, bow.Halves, bow.Height, hangs) : bow;
    }

    private (int Bay, BayPlace At) BayAt(Length station)
    {
        var bay = Math.Clamp(_bows.Count(bow => bow.StationMm <= station.Millimeters) - 1, 0, _bays.Length - 1);
        return (bay, _bays[bay].At(station.Millimeters - _bows[bay].StationMm));
    }

    private LocalSurface LocalAt(TopPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var (index, at) = BayAt(place.Station);
        var (fore, aft, bay) = (_bows[index], _bows[index + 1], _bays[index]);
        var (foreCurve, aftCurve) = (fore.Curve.At(place.Offset.Millimeters), aft.Curve.At(place.Offset.Millimeters));
        var (from, to) = (fore.Point(foreCurve.At), aft.Point(aftCurve.At));
        var up = new SpaceStep(0, bay.RiseMm / bay.ChordMm, bay.LevelMm / bay.ChordMm);
        var across = foreCurve.Along + ((aftCurve.Along - foreCurve.Along) * at.Part);
        return new(
            from.Toward(to, at.Part) + (up * at.LiftMm),
            ((to - from) * at.PartPerMm) + (up * at.LiftPerMm),
            new(across.X, 0, across.Y));
    }

    /// <summary>The parts of the way at which the surface changes its law.</summary>
    private IEnumerable<double> BreaksBetween(TopPlace from, TopPlace to)
    {
        var (station, offset) = ((to.Station - from.Station).Millimeters, (to.Offset - from.Offset).Millimeters);
        var atBows = _bows.Select(bow => (bow.StationMm - from.Station.Millimeters) / station);
        var atBends = Bends.Select(bend => bend.Millimeters).Append(0).Select(bend => (bend - from.Offset.Millimeters) / offset);
        return atBows.Concat(atBends).Where(part => part is > 0 and < 1).Append(0).Append(1).Order();
    }
}

/// <summary>A place of the surface and how it runs there.</summary>
/// <param name="At">The place, in millimetres.</param>
/// <param name="Aft">The step for each millimetre of station.</param>
/// <param name="Starboard">The step for each millimetre of offset.</param>
internal readonly record struct LocalSurface(SpacePoint At, SpaceStep Aft, SpaceStep Starboard);
