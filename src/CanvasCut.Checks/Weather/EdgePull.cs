using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What lifts and what pulls at one edge of the carrier, on each unit of the carrier's edge.</summary>
/// <remarks>
/// Pressure pulls at an edge by far more than it lifts it, for cloth bears it only by hanging in it. The edge factor is on the upright
/// part alone: it stands for peaks of pressure over a small part of the top. The pull is made by the whole way from edge to edge.
/// </remarks>
internal sealed class EdgePull
{
    private readonly Membrane? _taut;
    private readonly Membrane? _slack;
    private readonly BorderTie _border;
    private readonly double _edgeFactor;
    private readonly double _share;
    private readonly Length _edge;

    private EdgePull(CarrierJob job, MountedShape mounted, EdgePlace edge, ForcePerLength stiffness)
    {
        (_edgeFactor, _share) = (job.Conditions.Wind.Factors.Edge.DecimalFractions, EdgeShare.Of(edge, mounted));
        var (carrier, panel) = (edge.Frame.Turned(mounted.CarrierBox), edge.Frame.Turned(mounted.RowBox));
        _edge = Length.FromMillimeters(carrier.WidthMm);
        var cloth = new ClothSlack(job, Length.FromMillimeters(carrier.HeightMm), IsAlongBoat: edge.IsEnd);
        var border = Math.Max(Least, Math.Abs(edge.AsEnd.LineY - (edge.Outward > 0 ? panel.Top : panel.Bottom)));
        _border = new(Length.FromMillimeters(border), cloth.Least / 2, Length.FromMillimeters(border) + TopGive.Beyond(edge, job.Top), stiffness);
        if (mounted.Fastened.Edges.FirstOrDefault(other => other.IsEnd == edge.IsEnd && other != edge) is { } across)
        {
            var span = Math.Abs(edge.AsEnd.LineY - across.AsEnd.LineY);
            var stretching = Length.FromMillimeters(Math.Max(2 * Least, span - panel.HeightMm)) + TopGive.Beyond(edge, job.Top) + TopGive.Beyond(across, job.Top);
            _taut = new(Length.FromMillimeters(span), stretching, cloth.Least, stiffness);
            _slack = _taut with { Slack = cloth.Most };
        }
    }

    /// <summary>No border is narrower than the tape of a zipper; so that cloth with no border still has something that stretches.</summary>
    private static double Least => 5;

    /// <summary>The pulls of an edge; null where it is not known how much the cloth stretches.</summary>
    public static EdgePull? Of(CarrierJob job, MountedShape mounted, EdgePlace edge) =>
        job.Workshop.Supplies.Cloth.Stiffness is { } stiffness ? new(job, mounted, edge, stiffness) : null;

    /// <summary>What lifts a unit of the edge, fairly shared.</summary>
    public ForcePerLength Upright(Force uplift) => ForcePerLength.FromNewtonsPerMeter(uplift.Newtons * _share / _edge.Meters);

    /// <summary>What a unit of the edge bears.</summary>
    public PullBounds At(Force uplift)
    {
        var upright = Upright(uplift);
        return new(With(_border.Pull(upright)), Limp(_taut), Limp(_slack));

        ForcePerLength With(ForcePerLength pull) =>
            ForcePerLength.FromNewtonsPerMeter(double.Hypot(pull.NewtonsPerMeter, upright.NewtonsPerMeter * _edgeFactor));

        ForcePerLength? Limp(Membrane? membrane) =>
            membrane is null ? null : With(membrane.Pull(Pressure.FromPascals(2 * upright.NewtonsPerMeter / membrane.Span.Meters)));
    }

    /// <summary>What the whole edge bears, for what holds only a part of it.</summary>
    public double GatheredOn(Length run) => _edge / run;
}

/// <summary>How much of the top's own cloth gives when an edge is pulled inward.</summary>
internal static class TopGive
{
    /// <summary>The shortest ways to tubes that are no bows, if some of them lies outward; shorter than the way straight out, on the safe side.</summary>
    private static IEnumerable<Length> OtherTubes(EdgePlace edge, TopCloth top)
    {
        var line = edge.AsEnd.LineY;
        double OutwardMm(TopPlace end) => edge.Outward * (edge.Frame.Turned(Box.Around(Plan.Of(end), 0, 0)).Top - line);
        return top.Tubes
            .Where(tube => Math.Max(OutwardMm(tube.From), OutwardMm(tube.To)) > 0)
            .Select(tube => Length.FromMillimeters(ConvexZone.Around([Plan.Of(tube.From), Plan.Of(tube.To)], Box.Holding([edge.Line.From, edge.Line.To])).DistanceMm(0, 0)));
    }

    /// <summary>
    /// From what holds an edge outward to the next tube, or to the top's edge where there is none; the top is taken to stretch as the carrier
    /// does.
    /// </summary>
    public static Length Beyond(EdgePlace edge, TopCloth top)
    {
        var (line, halves) = (Length.FromMillimeters(edge.Line.From.Y), new[] { edge.Line.From, edge.Line.To }.Select(end => top.Outline.HalvesAt(Length.FromMillimeters(-end.Y))).ToList());
        var ways = edge.Side switch
        {
            Side.Forward => top.Bows.Select(bow => -line - bow.Station).Append(-line),
            Side.Aft => top.Bows.Select(bow => bow.Station + line).Append(top.Length + line),
            Side.Port => halves.Select(half => half.Port + Length.FromMillimeters(edge.Line.From.X)),
            _ => halves.Select(half => half.Starboard - Length.FromMillimeters(edge.Line.From.X)),
        };
        return ways.Concat(OtherTubes(edge, top)).Where(way => way > Length.Zero).DefaultIfEmpty(Length.Zero).Min();
    }
}

/// <summary>How much longer the carrier's cloth may lie than the way from edge to edge, by the figures of the closing checks.</summary>
/// <param name="Job">The job.</param>
/// <param name="Nominal">The carrier's size on the top.</param>
/// <param name="IsAlongBoat">Along the boat, or across it.</param>
internal sealed record ClothSlack(CarrierJob Job, Length Nominal, bool IsAlongBoat)
{
    private double Allowed => (Job.Workshop.Cloth.Lay.Warp == WarpDirection.ForeAft) == IsAlongBoat ? Job.Workshop.Cloth.Shrink.Warp : Job.Workshop.Cloth.Shrink.Fill;

    /// <summary>After it has shrunk: what is left of the allowance, most often nothing.</summary>
    public Length Least => UnitMath.Max(Length.Zero, Changed(-Job.Limits.Shape.Shrink));

    /// <summary>After it has stretched for good.</summary>
    public Length Most => UnitMath.Max(Length.Zero, Changed(Job.Limits.Shape.Creep));

    private Length Changed(double by) => (Nominal / (1 - Allowed) * (1 + by)) - Nominal;
}
