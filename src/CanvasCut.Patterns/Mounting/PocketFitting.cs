using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A panel bowed up so that its ends come nearer.</summary>
/// <param name="IsForeAft">Whether its forward and aft edge come nearer; else its port and starboard edge.</param>
/// <param name="Shortening">By how much the carrier's corner must come back.</param>
/// <param name="Radius">Of the bow's middle.</param>
/// <param name="Rise">Of its middle over the line between its ends.</param>
public sealed record PanelBow(bool IsForeAft, Length Shortening, Length Radius, Length Rise);

/// <summary>How the last corner of a carrier gets into its pocket.</summary>
/// <remarks>
/// <para>
/// Both forward corners go in flat. Then the carrier is pushed forward, and to the side away from the corner in hand, as far as there
/// is room. Along the carrier's two edges a pocket covers the same length, and its mouth is the line between; so the corner is free when
/// what it comes back along one edge and along the other add up to what is covered. What the pushing does not give, the panel must give
/// by bowing up between two opposite edges: Euler's elastica, for the hands push and do not clamp.
/// </para>
/// <para>
/// A top that is curved under the panel brings its edges nearer than the panel is long; the bow begins from there. Taken for the
/// sharpest curve that may come to lie under it, so that it does not depend on where the carrier lies.
/// </para>
/// </remarks>
public sealed class PocketFitting
{
    private readonly CarrierJob _job;
    private readonly (Length Across, Length Along) _grown;
    private readonly ImmutableArray<Way> _ways;

    private PocketFitting(CarrierJob job, Box carrier, ImmutableArray<Way> ways)
    {
        var cloth = job.Workshop.Cloth;
        (_job, _ways) = (job, ways);
        _grown = (ClothSpec.GrownBy(Length.FromMillimeters(carrier.WidthMm), cloth.ShrinkAthwart), ClothSpec.GrownBy(Length.FromMillimeters(carrier.HeightMm), cloth.ShrinkForeAft));
    }

    /// <summary>The fitting of the carrier of one panel.</summary>
    public static PocketFitting Of(CarrierJob job, Box carrier, MountedPanel panel) => new(job, carrier, [.. Ways(job, panel)]);

    /// <summary>The fitting of a corner: of a row the panel that lies there is bowed, and what the gaps give is not counted on.</summary>
    /// <param name="job">The job.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="panels">The panels on it.</param>
    /// <param name="corner">Which corner.</param>
    public static PocketFitting Of(CarrierJob job, Box carrier, ImmutableArray<PlacedPanel> panels, Corner corner)
    {
        var index = IndexAt(job, corner);
        return Of(job.OfPanel(index), carrier, panels[index].Lies);
    }

    /// <summary>Which of a job's panels lies at a corner of the carrier.</summary>
    public static int IndexAt(CarrierJob job, Corner corner)
    {
        var isFirst = job.Row?.Axis == RowAxis.ForeAft ? corner.End == Side.Forward : corner.Hand == Side.Port;
        return isFirst ? 0 : job.Panels.Length - 1;
    }

    /// <summary>How much a pocket at a corner may cover and the corner still goes in without a bend.</summary>
    public Length Flat(Corner corner)
    {
        var forward = Room(Side.Forward, _grown.Along);
        var sideways = Room(corner.Hand == Side.Port ? Side.Starboard : Side.Port, _grown.Across);
        return forward + sideways - _grown.Along - _grown.Across;
    }

    /// <summary>How much it may cover and the panel still keeps to its bend limit while its corner goes in.</summary>
    public Length Most(Corner corner) => Flat(corner) + _ways.Select(way => way.Most(_job.LeastRadius)).Append(Length.Zero).Max();

    /// <summary>The gentlest bow that lets a corner in; null when it goes in flat.</summary>
    public PanelBow? BowFor(PocketPlace pocket) => BowsFor(pocket).FirstOrDefault();

    /// <summary>The bows that let a corner in, one for each way in which the panel may be curved, the gentlest first; none when it goes in flat.</summary>
    public ImmutableArray<PanelBow> BowsFor(PocketPlace pocket)
    {
        var back = pocket.Covers - Flat(pocket.Corner);
        return back <= Length.Zero ? [] : [.. _ways.Select(way => way.Bow(back)).OrderByDescending(bow => bow.Radius.Millimeters)];
    }

    /// <summary>From what is on the carrier's edge out to the innermost row, the carrier in its place.</summary>
    private Length Room(Side side, Length grown)
    {
        var (fastenings, row) = (_job.Fastenings, PocketRoom.InnermostRow(_job.Workshop.Sewing));
        var (held, onEdge) = fastenings.Pocket.OverZipper ? (fastenings.OuterEdge(side), OnEdge(fastenings, side)) : (Length.Zero, Length.Zero);
        return UnitMath.Max(held + fastenings.Pocket.Ease - row - onEdge - grown, Length.Zero);
    }

    /// <summary>What is stiff on the carrier's own half: of a zipper up to the teeth, of a sleeve with its rod all; cloth gives way.</summary>
    private static Length OnEdge(Fastenings fastenings, Side side) => fastenings.Mount.At(side) switch
    {
        MountKind.Zipper => fastenings.Zipper.Reveal + (fastenings.Zipper.Gauge.Chain / 2),
        MountKind.Sleeve => fastenings.OuterEdge(side),
        _ => Length.Zero,
    };

    private static IEnumerable<Way> Ways(CarrierJob job, MountedPanel panel)
    {
        var limits = job.Panel.Limits;
        if (limits.MayCurveAlong(panel.LongSide))
        {
            yield return new(IsForeAft: true, panel.ForeAft, panel.ForeAft * (1 - Math.Cos(MostTurn(job.Top, panel.ForeAft) / 2)));
        }

        if (limits.MayCurveAcross(panel.LongSide))
        {
            yield return new(IsForeAft: false, panel.Athwart, ArcLoss(job.Top, panel.Athwart));
        }
    }

    /// <summary>The most that the cloth turns over ridges that can lie under the panel together, in radians; nothing while heights are not known.</summary>
    private static double MostTurn(TopCloth top, Length along)
    {
        if (TopSurface.Of(top).Surface is not { } surface)
        {
            return 0;
        }

        var ridges = surface.Ridges.Select(ridge => (top.Bows[ridge.Bow].Station, Turn: Math.Max(ridge.Turn.Radians, 0))).ToList();
        return ridges.Select(first => ridges.Where(ridge => ridge.Station >= first.Station && ridge.Station <= first.Station + along).Sum(ridge => ridge.Turn)).DefaultIfEmpty(0).Max();
    }

    /// <summary>How much shorter the chord of the sharpest arc across is than the panel over it.</summary>
    private static Length ArcLoss(TopCloth top, Length across)
    {
        var sharpest = top.Bows.Where(bow => bow.Halves is not null).Select(bow => Math.Min(bow.Halves!.Port.RadiusMm, bow.Halves.Starboard.RadiusMm)).DefaultIfEmpty(double.PositiveInfinity).Min();
        var half = across.Millimeters / (2 * sharpest);
        return double.IsInfinity(sharpest) ? Length.Zero : Length.FromMillimeters(across.Millimeters - (2 * sharpest * Math.Sin(Math.Min(half, Math.PI / 2))));
    }

    /// <summary>A way in which the panel may be bowed.</summary>
    /// <param name="IsForeAft">Along the boat, else across.</param>
    /// <param name="Size">Of the panel that way.</param>
    /// <param name="Lost">How much nearer the top's curve brings its edges.</param>
    private sealed record Way(bool IsForeAft, Length Size, Length Lost)
    {
        /// <summary>No hand bows a panel until its edges meet.</summary>
        private const double MostBowed = 0.9;

        public Length Most(Length radius) =>
            UnitMath.Max(Length.FromMillimeters(Math.Min(BowedStrip.MostShorteningMm(Size.Millimeters, radius.Millimeters), MostBowed * Size.Millimeters)) - Lost, Length.Zero);

        public PanelBow Bow(Length back)
        {
            var shortening = Math.Min((back + Lost).Millimeters, MostBowed * Size.Millimeters);
            return new(
                IsForeAft,
                back,
                Length.FromMillimeters(BowedStrip.SharpestRadiusMm(Size.Millimeters, shortening)),
                Length.FromMillimeters(BowedStrip.RiseMm(Size.Millimeters, shortening)));
        }
    }
}
