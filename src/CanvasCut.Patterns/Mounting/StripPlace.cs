using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A weather strip where it lies on the top.</summary>
/// <param name="Side">Which edge of the carrier it covers.</param>
/// <param name="SewnTo">What it is sewn to; its free edge lies on the other.</param>
/// <param name="Finished">The finished strip.</param>
public sealed record StripPlace(Side Side, StripGround SewnTo, Box Finished)
{
    /// <summary>What holds its free edge; null when nothing does.</summary>
    public StripHolding? Holding { get; init; }

    /// <summary>Between a strip that is sewn to the carrier and the panel, so that the panel lies flat; common practice, no source.</summary>
    public static readonly Length PanelRoom = Length.FromMillimeters(3);

    /// <summary>Whether it is the carrier's, and comes off with it.</summary>
    public bool IsOnCarrier => SewnTo == StripGround.Carrier;

    /// <summary>The side of the strip that is sewn.</summary>
    public Side SeamSide => IsOnCarrier ? Across(Side) : Side;

    /// <summary>The side of the strip that lies loose, or is only held.</summary>
    public Side FreeSide => Across(SeamSide);

    /// <summary>Its sewn edge, from end to end: from port, or from forward at a side.</summary>
    public (Point From, Point To) Seam => EdgeOf(Finished, SeamSide);

    /// <summary>How far its seam lies inside the carrier's edge that it covers; below zero outside it.</summary>
    public Length SeamInside(Box carrier) => Inside(Side, carrier, Box.Holding([Seam.From, Seam.To]));

    /// <summary>Its free edge, from end to end as the seam.</summary>
    public (Point From, Point To) FreeEdge => EdgeOf(Finished, FreeSide);

    /// <summary>Its two ends, in the order of everything along it.</summary>
    public (Side First, Side Last) Ends => IsEnd(Side) ? (Side.Port, Side.Starboard) : (Side.Forward, Side.Aft);

    /// <summary>As in "forward weather strip".</summary>
    public string Name => Say.Of($"{Words.Of(Side)} weather strip");

    /// <summary>The same elsewhere.</summary>
    public StripPlace MovedBy(Step step) => this with { Finished = Finished.MovedBy(step), Holding = Holding?.MovedBy(step) };

    /// <summary>How far something lies inside an edge of the carrier.</summary>
    public static Length Inside(Side edge, Box carrier, Box inner) => Length.FromMillimeters(edge switch
    {
        Side.Forward => carrier.Top - inner.Top,
        Side.Aft => inner.Bottom - carrier.Bottom,
        Side.Port => inner.Left - carrier.Left,
        _ => carrier.Right - inner.Right,
    });

    /// <summary>The strip of an edge.</summary>
    /// <param name="side">The edge.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="fastenings">What is wanted.</param>
    /// <param name="pockets">The pockets, which a strip on the carrier ends short of.</param>
    internal static StripPlace On(Side side, Box carrier, Fastenings fastenings, ImmutableArray<PocketPlace> pockets)
    {
        var strip = fastenings.WeatherStrip.SewnTo[side] == StripGround.Carrier ? OnCarrier(side, carrier, fastenings, pockets) : OnTop(side, carrier, fastenings);
        return strip with { Holding = StripHolding.Of(strip, carrier, fastenings, pockets) };
    }

    /// <summary>The pocket at an end of an edge.</summary>
    internal static PocketPlace PocketAt(Side side, Side end, ImmutableArray<PocketPlace> pockets) =>
        pockets.Single(pocket => Touches(pocket.Corner, side) && Touches(pocket.Corner, end));

    /// <summary>Sewn to the top beyond all it covers, and free over the carrier; it reaches past both corners.</summary>
    private static StripPlace OnTop(Side side, Box carrier, Fastenings fastenings)
    {
        var (strip, pocket) = (fastenings.WeatherStrip, fastenings.Pocket);
        var covered = pocket.OverZipper ? fastenings.OuterEdge(side) + pocket.Ease : fastenings.OuterEdge(side);
        var seamOut = covered + (strip.SeamClearance ?? MountedFastenings.SeamClearance);
        return Along(side, StripGround.Top, carrier, (-strip.Overhang, -strip.Overhang), (strip.Overlap, seamOut));
    }

    /// <summary>Sewn to the carrier inside its edge, and free over the top beyond what holds the edge; between the pockets.</summary>
    private static StripPlace OnCarrier(Side side, Box carrier, Fastenings fastenings, ImmutableArray<PocketPlace> pockets)
    {
        var strip = fastenings.WeatherStrip;
        var (first, last) = IsEnd(side) ? (Side.Port, Side.Starboard) : (Side.Forward, Side.Aft);
        Length Clear(Side end) => PocketAt(side, end, pockets).Covers + MountedFastenings.SeamClearance;
        return Along(side, StripGround.Carrier, carrier, (Clear(first), Clear(last)), (SeamIn(side, fastenings), fastenings.OuterEdge(side) + strip.Overlap));
    }

    /// <summary>
    /// From the carrier's edge in to the seam of a strip that is sewn to it: so far that its outermost row lies beside what is sewn under that edge,
    /// as the rows of a strip on the top lie outside what it covers.
    /// </summary>
    public static Length SeamIn(Side side, Fastenings fastenings)
    {
        var clearance = fastenings.WeatherStrip.SeamClearance ?? MountedFastenings.SeamClearance;
        return fastenings.UnderEdge(side) + StitchRows.FromFold + clearance - MountedFastenings.SeamClearance;
    }

    /// <summary>A strip along an edge.</summary>
    /// <param name="side">The edge.</param>
    /// <param name="ground">What it is sewn to.</param>
    /// <param name="carrier">The finished carrier.</param>
    /// <param name="ends">From each corner of the carrier in to the strip's end.</param>
    /// <param name="across">How far it reaches inside the carrier's edge, and outside it.</param>
    private static StripPlace Along(Side side, StripGround ground, Box carrier, (Length First, Length Last) ends, (Length In, Length Out) across)
    {
        var (frame, isUpper) = (EdgeFrame.Of(side), EdgeFrame.EndOf(side) == Side.Forward);
        var turned = frame.Turned(carrier);

        // Turned a quarter to the left, forward lies to port.
        var (left, right) = (turned.Left + ends.First.Millimeters, turned.Right - ends.Last.Millimeters);
        if (right - left < LeastMm)
        {
            (left, right) = (((left + right) / 2) - (LeastMm / 2), ((left + right) / 2) + (LeastMm / 2));
        }

        var box = isUpper
            ? new Box(left, turned.Top - across.In.Millimeters, right, turned.Top + across.Out.Millimeters)
            : new Box(left, turned.Bottom - across.Out.Millimeters, right, turned.Bottom + across.In.Millimeters);
        return new(side, ground, frame.Back(box));
    }

    /// <summary>No shorter strip can be hemmed at both ends; one that finds no more room meets the pockets, and the checks say so.</summary>
    private const double LeastMm = 60;

    private static bool IsEnd(Side side) => side is Side.Forward or Side.Aft;

    private static bool Touches(Corner corner, Side side) => corner.End == side || corner.Hand == side;

    private static Side Across(Side side) => side switch
    {
        Side.Forward => Side.Aft,
        Side.Aft => Side.Forward,
        Side.Port => Side.Starboard,
        _ => Side.Port,
    };

    private static (Point From, Point To) EdgeOf(Box box, Side side) => side switch
    {
        Side.Forward => (new(box.Left, box.Top), new(box.Right, box.Top)),
        Side.Aft => (new(box.Left, box.Bottom), new(box.Right, box.Bottom)),
        Side.Port => (new(box.Left, box.Top), new(box.Left, box.Bottom)),
        _ => (new(box.Right, box.Top), new(box.Right, box.Bottom)),
    };
}
