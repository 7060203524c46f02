using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The cloth and the tubes of a top as bodies in space, for drawing.</summary>
public sealed class TopInSpace
{
    private const double StepMm = 20;
    private const double BaySliceMm = 25;

    /// <summary>How far before the cloth a contour is drawn, so that triangles beside it, which are not quite the cloth, do not hide it.</summary>
    private const double ContourClearMm = 0.5;
    private const double BendStepMm = 8;

    /// <summary>Where a rounded edge leaves less than this of a station, there is no way across.</summary>
    private const double NarrowMm = 1;

    private readonly TopCloth _top;
    private readonly ImmutableArray<double> _offsets;

    /// <summary>Shapes the bodies.</summary>
    /// <param name="top">The top.</param>
    /// <param name="surface">Its surface.</param>
    public TopInSpace(TopCloth top, TopSurface surface)
    {
        ArgumentNullException.ThrowIfNull(top);
        (_top, Surface) = (top, surface);
        _offsets = OffsetsOf(top, surface);
        Tubes = [.. top.Bows.Select(bow => new TubeInSpace(surface, bow, OffsetsAt(bow.Station.Millimeters)))];
    }

    /// <summary>The surface of the cloth.</summary>
    public TopSurface Surface { get; }

    /// <summary>The tubes, as far as the cloth reaches, forward to aft.</summary>
    public ImmutableArray<TubeInSpace> Tubes { get; }

    /// <summary>All that hides what lies behind it: the cloth and the tubes.</summary>
    public ImmutableArray<Facet> Facets()
    {
        var rows = Stations(BaySliceMm).Select(Across).ToList();
        return [.. rows.Zip(rows.Skip(1)).SelectMany(pair => Facet.Between(pair.First, pair.Second)), .. Tubes.SelectMany(tube => tube.Facets())];
    }

    /// <summary>A line of the plan as it runs on the cloth.</summary>
    public ImmutableArray<SpacePoint> Line(Point from, Point to)
    {
        var parts = Stepping.Of(0, 1, Breaks(from, to), StepMm / from.DistanceMm(to));
        return [.. parts.Select(part => At(from + ((to - from) * part)))];
    }

    /// <summary>A closed line of the plan as it runs on the cloth, its first place repeated at the end.</summary>
    public ImmutableArray<SpacePoint> Line(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return [.. Enumerable.Range(0, outline.Count).SelectMany(i => Line(outline[i], outline[i + 1]).SkipLast(1)), At(outline[0])];
    }

    /// <summary>The lines on which the cloth turns away from the viewer between its edges; none on a flat top.</summary>
    public ImmutableArray<ImmutableArray<SpacePoint>> Contours()
    {
        var lines = ImmutableArray.CreateBuilder<ImmutableArray<SpacePoint>>();
        var line = ImmutableArray.CreateBuilder<SpacePoint>();
        foreach (var turn in Stations(StepMm).Select(TurnAt).Append(null))
        {
            if (turn is { } place)
            {
                line.Add(Surface.PointAt(place) + (Surface.NormalAt(place) * ContourClearMm));
                continue;
            }

            if (line.Count > 1)
            {
                lines.Add(line.ToImmutable());
            }

            line.Clear();
        }

        return lines.ToImmutable();
    }

    private SpacePoint At(Point plan) => Surface.PointAt(Plan.PlaceOf(plan));

    private ImmutableArray<SpacePoint> Across(double station) => [.. OffsetsAt(station).Select(offset => Surface.PointAt(Place(station, offset)))];

    private ImmutableArray<double> Stations(double largest) => Stepping.Of(-Plan.Of(_top).Top, -Plan.Of(_top).Bottom, _top.Bows.Select(bow => bow.Station.Millimeters), largest);

    /// <summary>Where at a station the cloth turns away, to the nearest of the offsets and then halved down; null when it does not.</summary>
    private TopPlace? TurnAt(double station)
    {
        const int Halvings = 20;
        bool IsTowardViewer(double offset) => Surface.NormalAt(Place(station, offset)).Dot(Isometric.TowardViewer) > 0;
        var offsets = OffsetsAt(station);
        var change = offsets.Zip(offsets.Skip(1)).Where(pair => IsTowardViewer(pair.First) != IsTowardViewer(pair.Second)).Take(1).ToList();
        if (change is not [var (low, high)])
        {
            return null;
        }

        var isLow = IsTowardViewer(low);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = IsTowardViewer(middle) == isLow ? (middle, high) : (low, middle);
        }

        return Place(station, low);
    }

    /// <summary>The parts of a line of the plan at which it crosses a bow, the centreline or a bend.</summary>
    private IEnumerable<double> Breaks(Point from, Point to)
    {
        var step = to - from;
        var atBows = _top.Bows.Select(bow => (-bow.Station.Millimeters - from.Y) / step.Y);
        return atBows.Concat(Surface.Bends.Select(bend => bend.Millimeters).Append(0).Select(offset => (offset - from.X) / step.X)).Where(double.IsFinite);
    }

    /// <summary>As many offsets at every station, from edge to edge of what there is of the top.</summary>
    private ImmutableArray<double> OffsetsAt(double station)
    {
        var whole = Plan.Of(_top);
        if (_top.Outline.IsRectangle || _top.Outline.Across(-station) is not { } there || there.To.X - there.From.X < NarrowMm)
        {
            return _offsets;
        }

        return [.. _offsets.Select(offset => there.From.X + ((offset - whole.Left) * (there.To.X - there.From.X) / whole.WidthMm))];
    }

    /// <summary>Offsets from port to starboard where the top is widest, closer in the bends.</summary>
    private static ImmutableArray<double> OffsetsOf(TopCloth top, TopSurface surface)
    {
        var (whole, bends) = (Plan.Of(top), surface.Bends.Select(bend => bend.Millimeters).ToList());
        var (port, starboard) = (bends.Where(bend => bend < 0).DefaultIfEmpty(whole.Left).Max(), bends.Where(bend => bend > 0).DefaultIfEmpty(whole.Right).Min());
        return
        [
            .. Stepping.Of(whole.Left, port, [], BendStepMm).SkipLast(1),
            .. Stepping.Of(port, starboard, [0], StepMm),
            .. Stepping.Of(starboard, whole.Right, [], BendStepMm).Skip(1),
        ];
    }

    private static TopPlace Place(double station, double offset) => new(Length.FromMillimeters(station), Length.FromMillimeters(offset));
}
