using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A place to mark on the top.</summary>
/// <param name="Name">What lies there.</param>
/// <param name="Place">Where.</param>
public sealed record TopMark(string Name, TopPlace Place);

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
        .. Corner.All.Select(corner => At($"carrier, {corner} corner", corner.Of(mounted.CarrierBox))),
        .. Corner.All.Select(corner => At($"panel, {corner} corner", corner.Of(mounted.PanelBox))),
        .. mounted.Fastened.Zippers.SelectMany(ZipperMarks),
        .. mounted.Fastened.Pockets.SelectMany(PocketMarks),
        .. mounted.Fastened.Strips.SelectMany(StripMarks),
    ];

    /// <summary>The diagonals that show that the marks are square: each pair must be equal.</summary>
    public static ImmutableArray<TopDiagonal> Diagonals(MountedShape mounted)
    {
        var (forward, aft) = (mounted.Fastened.Zippers[0], mounted.Fastened.Zippers[1]);
        Point PocketAt(int index) => mounted.Fastened.Pockets[index].At;
        Point CarrierAt(int index) => Corner.All[index].Of(mounted.CarrierBox);
        return
        [
            Between("carrier, forward port to aft starboard", CarrierAt(0), CarrierAt(3)),
            Between("carrier, forward starboard to aft port", CarrierAt(1), CarrierAt(2)),
            Between("zipper ends, forward port to aft starboard", new(forward.Band.Left, forward.ChainY), new(aft.Band.Right, aft.ChainY)),
            Between("zipper ends, forward starboard to aft port", new(forward.Band.Right, forward.ChainY), new(aft.Band.Left, aft.ChainY)),
            Between("pocket corners, forward port to aft starboard", PocketAt(0), PocketAt(3)),
            Between("pocket corners, forward starboard to aft port", PocketAt(1), PocketAt(2)),
        ];
    }

    private static IEnumerable<TopMark> ZipperMarks(ZipperPlace zipper)
    {
        var name = $"{Words.Of(zipper.Side)} zipper";
        var outer = zipper.Side == Side.Forward ? zipper.Band.Top : zipper.Band.Bottom;
        yield return At($"{name}, chain, port end", new(zipper.Band.Left, zipper.ChainY));
        yield return At($"{name}, chain, starboard end", new(zipper.Band.Right, zipper.ChainY));
        yield return At($"{name}, outer tape edge, port end", new(zipper.Band.Left, outer));
        yield return At($"{name}, outer tape edge, starboard end", new(zipper.Band.Right, outer));
    }

    private static IEnumerable<TopMark> PocketMarks(PocketPlace pocket)
    {
        yield return At($"{pocket.Corner} pocket, square corner", pocket.At);
        yield return At($"{pocket.Corner} pocket, end of the {Words.Of(pocket.Corner.End)} leg", pocket.EndAthwart);
        yield return At($"{pocket.Corner} pocket, end of the {Words.Of(pocket.Corner.Hand)} leg", pocket.EndForeAft);
    }

    private static IEnumerable<TopMark> StripMarks(StripPlace strip)
    {
        yield return At($"{Words.Of(strip.Side)} weather strip, seam, port end", new(strip.Finished.Left, strip.SeamY));
        yield return At($"{Words.Of(strip.Side)} weather strip, seam, starboard end", new(strip.Finished.Right, strip.SeamY));
    }

    private static TopMark At(string name, Point point) => new(name, Plan.PlaceOf(point));

    private static TopDiagonal Between(string name, Point from, Point to) => new(name, Length.FromMillimeters(from.DistanceMm(to)));
}
