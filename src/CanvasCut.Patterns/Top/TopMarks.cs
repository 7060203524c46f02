using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A place to mark on the top.</summary>
/// <param name="Name">What lies there.</param>
/// <param name="Place">Where.</param>
/// <param name="IsOfPanel">Whether it is the panel's, and goes when another panel comes.</param>
public sealed record TopMark(string Name, TopPlace Place, bool IsOfPanel = false);

/// <summary>A distance to measure between two marks on opposite corners; equal pairs show that the marks are square.</summary>
/// <param name="Name">Between which marks.</param>
/// <param name="Distance">How long it is along the cloth, laid flat.</param>
public sealed record TopDiagonal(string Name, Length Distance);

/// <summary>What to mark on the top before sewing to it.</summary>
public static class TopMarks
{
    /// <summary>Every seam end, zipper end, pocket corner, carrier corner and panel corner.</summary>
    public static ImmutableArray<TopMark> Of(MountedShape mounted) =>
    [
        .. Corner.All.Select(corner => At(Say.Of($"carrier, {corner} corner"), corner.Of(mounted.CarrierBox))),
        .. mounted.Panels.SelectMany(PanelMarks),
        .. mounted.Fastened.Zippers.SelectMany(ZipperMarks),
        .. mounted.Fastened.Flaps.SelectMany(FlapMarks),
        .. mounted.Fastened.Pockets.SelectMany(PocketMarks),
        .. mounted.Fastened.StripsOnTop.SelectMany(StripMarks),
    ];

    /// <summary>The diagonals that show that the marks are square: each pair must be equal.</summary>
    public static ImmutableArray<TopDiagonal> Diagonals(MountedShape mounted)
    {
        var (forward, aft) = (mounted.Fastened.Edges[0].Line, mounted.Fastened.Edges[1].Line);
        var ends = mounted.Fastened.HasEndZippersOnly ? Say.Of("zipper ends") : Say.Of("fastening ends");
        Point PocketAt(int index) => mounted.Fastened.Pockets[index].At;
        Point CarrierAt(int index) => Corner.All[index].Of(mounted.CarrierBox);
        return
        [
            Between(Say.Of("carrier, forward port to aft starboard"), CarrierAt(0), CarrierAt(3)),
            Between(Say.Of("carrier, forward starboard to aft port"), CarrierAt(1), CarrierAt(2)),
            Between(Say.Of($"{ends}, forward port to aft starboard"), forward.From, aft.To),
            Between(Say.Of($"{ends}, forward starboard to aft port"), forward.To, aft.From),
            Between(Say.Of("pocket corners, forward port to aft starboard"), PocketAt(0), PocketAt(3)),
            Between(Say.Of("pocket corners, forward starboard to aft port"), PocketAt(1), PocketAt(2)),
        ];
    }

    private static IEnumerable<TopMark> PanelMarks(PlacedPanel panel) => Corner.All.Select(corner => At(
        panel.Name.IsOnly ? Say.Of($"panel, {corner} corner") : Say.Of($"panel \"{panel.Name}\", {corner} corner"),
        corner.Of(panel.Box)) with { IsOfPanel = true });

    private static IEnumerable<TopMark> ZipperMarks(ZipperPlace zipper)
    {
        var name = Say.Of($"{Words.Of(zipper.Side)} zipper");
        var ((from, to), (first, last)) = (OuterLine(zipper, zipper.AsEnd.Band), zipper.EndNames);
        yield return At(Chain(first, zipper.StartsFirst), zipper.Line.From);
        yield return At(Chain(last, !zipper.StartsFirst), zipper.Line.To);
        yield return At(Say.Of($"{name}, outer tape edge, {first} end"), from);
        yield return At(Say.Of($"{name}, outer tape edge, {last} end"), to);
        string Chain(string end, bool isStart) => isStart ? Say.Of($"{name}, chain, {end} end, where it starts") : Say.Of($"{name}, chain, {end} end");
    }

    /// <summary>The outer corners of what is sewn to the top, and the first and the last fastener; the others at equal spaces between.</summary>
    private static IEnumerable<TopMark> FlapMarks(FlapPlace flap)
    {
        var ((from, to), (first, last)) = (OuterLine(flap, flap.AsEnd.OnTop), flap.EndNames);
        yield return At(Say.Of($"{flap.Name}, outer edge, {first} end"), from);
        yield return At(Say.Of($"{flap.Name}, outer edge, {last} end"), to);
        if (flap.CentresOnTop is [var one, .., var other] centres)
        {
            yield return At(Say.Of($"{flap.Name}, first of {centres.Length}, {first}"), one);
            yield return At(Say.Of($"{flap.Name}, last of {centres.Length}, {last}"), other);
        }
    }

    /// <summary>The edge of a box away from the carrier, from end to end.</summary>
    private static (Point From, Point To) OuterLine(EdgePlace edge, Box asEnd)
    {
        var outer = edge.Outward > 0 ? asEnd.Top : asEnd.Bottom;
        return (edge.Frame.Back(new Point(asEnd.Left, outer)), edge.Frame.Back(new Point(asEnd.Right, outer)));
    }

    private static IEnumerable<TopMark> PocketMarks(PocketPlace pocket)
    {
        yield return At(Say.Of($"{pocket.Corner} pocket, square corner"), pocket.At);
        yield return At(Say.Of($"{pocket.Corner} pocket, end of the {Words.Of(pocket.Corner.End)} leg"), pocket.EndAthwart);
        yield return At(Say.Of($"{pocket.Corner} pocket, end of the {Words.Of(pocket.Corner.Hand)} leg"), pocket.EndForeAft);
    }

    private static IEnumerable<TopMark> StripMarks(StripPlace strip)
    {
        yield return At(Say.Of($"{strip.Name}, seam, {Words.Of(strip.Ends.First)} end"), strip.Seam.From);
        yield return At(Say.Of($"{strip.Name}, seam, {Words.Of(strip.Ends.Last)} end"), strip.Seam.To);
    }

    private static TopMark At(string name, Point point) => new(name, Plan.PlaceOf(point));

    private static TopDiagonal Between(string name, Point from, Point to) => new(name, Length.FromMillimeters(from.DistanceMm(to)));
}
