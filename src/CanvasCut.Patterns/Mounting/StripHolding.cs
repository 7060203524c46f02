using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>
/// What holds a weather strip's free edge, where it lies when all is closed: as far from the strip's edge on the strip as on what is under it.
/// </summary>
/// <param name="Kind">What it is; not nothing.</param>
/// <param name="Size">Across: of a snap, of a square of hook-and-loop, of the rod.</param>
/// <param name="Centres">The middle of each snap or square, from port or from forward; none of a rod, or where the pockets leave no room for two.</param>
/// <param name="Pitch">From one middle to the next; zero without any.</param>
public sealed record StripHolding(StripHold Kind, Length Size, ImmutableArray<Point> Centres, Length Pitch)
{
    /// <summary>From a snap's or a square's rim to the strip's fold, and to the row that holds the hem; common practice, no source.</summary>
    public static readonly Length Rim = Length.FromMillimeters(3);

    /// <summary>How much longer the way round in the hem is than round the rod, so that the rod slides in; common practice, no source.</summary>
    public static readonly Length RodEase = Length.FromMillimeters(6);

    /// <summary>From a rod's end to the end of its strip, where the hem is sewn shut by hand; common practice, no source.</summary>
    public static readonly Length RodEnd = Length.FromMillimeters(10);

    /// <summary>The snaps or squares as squares around their middles.</summary>
    public ImmutableArray<Box> Squares => [.. Centres.Select(centre => Box.Around(centre, Size.Millimeters, Size.Millimeters))];

    /// <summary>The same elsewhere.</summary>
    public StripHolding MovedBy(Step step) => this with { Centres = [.. Centres.Select(centre => centre + step)] };

    /// <summary>
    /// The hem of a free edge: so wide that snaps and squares lie between its fold and its row, 3 mm from both, and that a rod lies between the fold
    /// and the row, flat half the way round it; the row 3 mm from the inner fold.
    /// </summary>
    public static Hem FreeHem(WeatherStripSpec strip, Length size)
    {
        var width = strip.Held switch
        {
            StripHold.Nothing => strip.Hem.Width,
            StripHold.Rod => ((strip.Rod * Math.PI) + RodEase) / 2 + StitchRows.FromFold,
            _ => UnitMath.Max(strip.Hem.Width, size + (Rim * 2) + StitchRows.FromFold),
        };
        return new(UnitMath.Min(strip.Hem.TurnUnder, width), width);
    }

    /// <summary>How large what holds a strip is.</summary>
    public static Length SizeOf(Fastenings fastenings) => fastenings.WeatherStrip.Held switch
    {
        StripHold.HookAndLoop => fastenings.WeatherStrip.Square,
        StripHold.Snaps => fastenings.Mount.Figures.Snaps.Diameter,
        StripHold.Rod => fastenings.WeatherStrip.Rod,
        _ => Length.Zero,
    };

    /// <summary>What holds the free edge of a strip; null when nothing does.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="fastenings">What is wanted.</param>
    /// <param name="pockets">The pockets: beside them nothing can be set.</param>
    internal static StripHolding? Of(StripPlace strip, Box carrier, Fastenings fastenings, ImmutableArray<PocketPlace> pockets)
    {
        var (spec, size) = (fastenings.WeatherStrip, SizeOf(fastenings));
        if (spec.Held is StripHold.Nothing or StripHold.Rod)
        {
            return spec.Held == StripHold.Rod ? new(StripHold.Rod, size, [], Length.Zero) : null;
        }

        var (from, to) = Line(strip, (size / 2) + Rim);
        Length Inset(Side end)
        {
            var beyond = PocketReach(strip, StripPlace.PocketAt(strip.Side, end, pockets), fastenings) + MountedFastenings.SeamClearance - StripPlace.Inside(end, carrier, strip.Finished);
            return UnitMath.Max(beyond, strip.IsOnCarrier ? spec.Hem.Width : FreeHem(spec, size).Width) + Rim + (size / 2);
        }

        var start = Inset(strip.Ends.First);
        var between = Length.FromMillimeters(from.DistanceMm(to)) - start - Inset(strip.Ends.Last);
        if (between <= size)
        {
            return new(spec.Held, size, [], Length.Zero);
        }

        var row = FastenerRow.Along(between, new(spec.Pitch, Length.Zero));
        var along = (to - from).Unit();
        return new(spec.Held, size, [.. Enumerable.Range(0, row.Count).Select(i => from + (along * (start + (row.Pitch * i)).Millimeters))], row.Pitch);
    }

    /// <summary>The line along the free edge on which the middles lie.</summary>
    private static (Point From, Point To) Line(StripPlace strip, Length inside)
    {
        var (from, to) = strip.FreeEdge;
        var inward = (strip.Seam.From - from).Unit() * inside.Millimeters;
        return (from + inward, to + inward);
    }

    /// <summary>
    /// From the carrier's corner to where the pocket ends at what is held. On the carrier its mouth crosses the edge there; on the top it slants
    /// outward, as far as the pocket reaches.
    /// </summary>
    private static Length PocketReach(StripPlace strip, PocketPlace pocket, Fastenings fastenings)
    {
        var leg = strip.Side is Side.Forward or Side.Aft ? pocket.OutY : pocket.OutX;
        return strip.IsOnCarrier ? pocket.Covers + UnitMath.Min(fastenings.OuterEdge(strip.Side) + fastenings.WeatherStrip.Overlap, leg) : pocket.Covers;
    }
}
