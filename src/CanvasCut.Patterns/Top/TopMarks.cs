using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A place to mark on the top.</summary>
/// <param name="Key">Which mark it is.</param>
/// <param name="Name">What lies there.</param>
/// <param name="Place">Where.</param>
public sealed record TopMark(MarkKey Key, string Name, TopPlace Place)
{
    /// <summary>Whether it is the panel's, and goes when another panel comes.</summary>
    public bool IsOfPanel => Key.Thing == MarkThing.Panel;
}

/// <summary>A distance to measure between two marks on opposite corners; equal pairs show that the marks are square.</summary>
/// <param name="From">One mark.</param>
/// <param name="To">The other.</param>
/// <param name="Name">Between which marks.</param>
/// <param name="Distance">How long it is along the cloth, laid flat.</param>
public sealed record TopDiagonal(MarkKey From, MarkKey To, string Name, Length Distance);

/// <summary>What to mark on the top before sewing to it.</summary>
public static class TopMarks
{
    /// <summary>Every seam end, zipper end, pocket corner, carrier corner and panel corner.</summary>
    public static ImmutableArray<TopMark> Of(MountedShape mounted) =>
    [
        .. Corner.All.Select(corner => At(new(MarkThing.Carrier, MarkSpot.Corner, Corner: corner), Say.Of($"carrier, {corner} corner"), corner.Of(mounted.CarrierBox))),
        .. PanelMarks(mounted.Panels[0]),
        .. mounted.Fastened.Zippers.SelectMany(ZipperMarks),
        .. mounted.Fastened.Flaps.SelectMany(FlapMarks),
        .. mounted.Fastened.Pockets.SelectMany(PocketMarks),
        .. mounted.Fastened.StripsOnTop.SelectMany(StripMarks),
        .. mounted.Fastened.StripsOnCarrier.SelectMany(HoldMarks),

        // After all others, whose order a refit relies on.
        .. mounted.Others.SelectMany(PanelMarks),
    ];

    /// <summary>The diagonals that show that the marks are square: each pair must be equal.</summary>
    public static ImmutableArray<TopDiagonal> Diagonals(MountedShape mounted)
    {
        var (forward, aft) = (mounted.Fastened.Edges[0].Line, mounted.Fastened.Edges[1].Line);
        var ends = mounted.Fastened.HasEndZippersOnly ? Say.Of("zipper ends") : Say.Of("fastening ends");
        (MarkKey, Point) PocketAt(int index) => (new(MarkThing.Pocket, MarkSpot.Corner, Corner: Corner.All[index]), mounted.Fastened.Pockets[index].At);
        (MarkKey, Point) CarrierAt(int index) => (new(MarkThing.Carrier, MarkSpot.Corner, Corner: Corner.All[index]), Corner.All[index].Of(mounted.CarrierBox));
        (MarkKey, Point) EndAt(Side edge, Side end, Point point) => (new(MarkThing.Fastening, MarkSpot.Line, edge, End: end), point);
        return
        [
            Between(Say.Of("carrier, forward port to aft starboard"), CarrierAt(0), CarrierAt(3)),
            Between(Say.Of("carrier, forward starboard to aft port"), CarrierAt(1), CarrierAt(2)),
            Between(Say.Of($"{ends}, forward port to aft starboard"), EndAt(Side.Forward, Side.Port, forward.From), EndAt(Side.Aft, Side.Starboard, aft.To)),
            Between(Say.Of($"{ends}, forward starboard to aft port"), EndAt(Side.Forward, Side.Starboard, forward.To), EndAt(Side.Aft, Side.Port, aft.From)),
            Between(Say.Of("pocket corners, forward port to aft starboard"), PocketAt(0), PocketAt(3)),
            Between(Say.Of("pocket corners, forward starboard to aft port"), PocketAt(1), PocketAt(2)),
        ];
    }

    private static IEnumerable<TopMark> PanelMarks(PlacedPanel panel) => Corner.All.Select(corner => At(
        new(MarkThing.Panel, MarkSpot.Corner, Corner: corner) { Panel = panel.Name },
        panel.Name.IsOnly ? Say.Of($"panel, {corner} corner") : Say.Of($"panel \"{panel.Name}\", {corner} corner"),
        corner.Of(panel.Box)));

    private static IEnumerable<TopMark> ZipperMarks(ZipperPlace zipper)
    {
        var name = Say.Of($"{Words.Of(zipper.Side)} zipper");
        var ((from, to), (first, last)) = (OuterLine(zipper, zipper.AsEnd.Band), zipper.EndNames);
        yield return At(KeyOf(zipper, MarkSpot.Line, isFirst: true), Chain(first, zipper.StartsFirst), zipper.Line.From);
        yield return At(KeyOf(zipper, MarkSpot.Line, isFirst: false), Chain(last, !zipper.StartsFirst), zipper.Line.To);
        yield return At(KeyOf(zipper, MarkSpot.OuterEdge, isFirst: true), Say.Of($"{name}, outer tape edge, {first} end"), from);
        yield return At(KeyOf(zipper, MarkSpot.OuterEdge, isFirst: false), Say.Of($"{name}, outer tape edge, {last} end"), to);
        string Chain(string end, bool isStart) => isStart ? Say.Of($"{name}, chain, {end} end, where it starts") : Say.Of($"{name}, chain, {end} end");
    }

    /// <summary>The outer corners of what is sewn to the top, and the first and the last fastener; the others at equal spaces between.</summary>
    private static IEnumerable<TopMark> FlapMarks(FlapPlace flap)
    {
        var ((from, to), (first, last)) = (OuterLine(flap, flap.AsEnd.OnTop), flap.EndNames);
        yield return At(KeyOf(flap, MarkSpot.OuterEdge, isFirst: true), Say.Of($"{flap.Name}, outer edge, {first} end"), from);
        yield return At(KeyOf(flap, MarkSpot.OuterEdge, isFirst: false), Say.Of($"{flap.Name}, outer edge, {last} end"), to);
        if (flap.CentresOnTop is [var one, .., var other] centres)
        {
            yield return At(KeyOf(flap, MarkSpot.Fastener, isFirst: true), Say.Of($"{flap.Name}, first of {centres.Length}, {first}"), one);
            yield return At(KeyOf(flap, MarkSpot.Fastener, isFirst: false), Say.Of($"{flap.Name}, last of {centres.Length}, {last}"), other);
        }
    }

    private static MarkKey KeyOf(EdgePlace edge, MarkSpot spot, bool isFirst) => new(MarkThing.Fastening, spot, edge.Side, End: (edge.IsEnd, isFirst) switch
    {
        (true, true) => Side.Port,
        (true, false) => Side.Starboard,
        (false, true) => Side.Forward,
        _ => Side.Aft,
    });

    /// <summary>The edge of a box away from the carrier, from end to end.</summary>
    private static (Point From, Point To) OuterLine(EdgePlace edge, Box asEnd)
    {
        var outer = edge.Outward > 0 ? asEnd.Top : asEnd.Bottom;
        return (edge.Frame.Back(new Point(asEnd.Left, outer)), edge.Frame.Back(new Point(asEnd.Right, outer)));
    }

    private static IEnumerable<TopMark> PocketMarks(PocketPlace pocket)
    {
        yield return At(new(MarkThing.Pocket, MarkSpot.Corner, Corner: pocket.Corner), Say.Of($"{pocket.Corner} pocket, square corner"), pocket.At);
        yield return At(new(MarkThing.Pocket, MarkSpot.Leg, Corner: pocket.Corner, End: pocket.Corner.End), Say.Of($"{pocket.Corner} pocket, end of the {Words.Of(pocket.Corner.End)} leg"), pocket.EndAthwart);
        yield return At(new(MarkThing.Pocket, MarkSpot.Leg, Corner: pocket.Corner, End: pocket.Corner.Hand), Say.Of($"{pocket.Corner} pocket, end of the {Words.Of(pocket.Corner.Hand)} leg"), pocket.EndForeAft);
    }

    private static IEnumerable<TopMark> StripMarks(StripPlace strip)
    {
        var (first, last) = strip.Ends;
        yield return At(new(MarkThing.Strip, MarkSpot.Seam, strip.Side, End: first), Say.Of($"{strip.Name}, seam, {Words.Of(first)} end"), strip.Seam.From);
        yield return At(new(MarkThing.Strip, MarkSpot.Seam, strip.Side, End: last), Say.Of($"{strip.Name}, seam, {Words.Of(last)} end"), strip.Seam.To);
    }

    /// <summary>The first and the last of what holds a strip's free edge on the top; the others at equal spaces between.</summary>
    private static IEnumerable<TopMark> HoldMarks(StripPlace strip)
    {
        if (strip.Holding is { Centres: [var first, .., var last] centres })
        {
            yield return At(new(MarkThing.Strip, MarkSpot.Fastener, strip.Side, End: strip.Ends.First), Say.Of($"{strip.Name}, first of {centres.Length} that hold it, {Words.Of(strip.Ends.First)}"), first);
            yield return At(new(MarkThing.Strip, MarkSpot.Fastener, strip.Side, End: strip.Ends.Last), Say.Of($"{strip.Name}, last of {centres.Length} that hold it, {Words.Of(strip.Ends.Last)}"), last);
        }
    }

    private static TopMark At(MarkKey key, string name, Point point) => new(key, name, Plan.PlaceOf(point));

    private static TopDiagonal Between(string name, (MarkKey Key, Point At) from, (MarkKey Key, Point At) to) =>
        new(from.Key, to.Key, name, Length.FromMillimeters(from.At.DistanceMm(to.At)));
}
