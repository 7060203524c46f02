using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Room to work between two carriers: for the machine's foot, a strip laid back, a zipper's pull, a hand, a cable.</summary>
/// <remarks>Of each sort the tightest place of a pair is told, whichever of the two it belongs to; nothing where the two do not face each other so.</remarks>
internal static class BetweenChecks
{
    private const string CablesLimit = "limits.between_cables";

    public static IEnumerable<CheckResult> Of(PlacedTop placed) =>
        from one in placed.Mountings.Index()
        from other in placed.Mountings.Skip(one.Index + 1)
        from result in Of(new Neighbour(one.Item), new Neighbour(other), placed.Top.First.Limits.Between)
        select result;

    private static IEnumerable<CheckResult> Of(Neighbour one, Neighbour other, BetweenLimits limits)
    {
        var names = $"{one.Job.Mounting}, {other.Job.Mounting}";
        ImmutableArray<(Neighbour Own, Neighbour Other)> both = [(one, other), (other, one)];
        if (Tightest(one.Pockets.SelectMany(pocket => other.Pockets.Select(next => new Room(pocket.Box.DistanceMm(next.Box), limits.Pockets.Millimeters, [pocket.Key, next.Key])))) is { } pockets)
        {
            yield return Judged(CheckCodes.BetweenPockets, Say.Of($"{names}: pockets"), pockets, "limits.between_pockets", Say.Of("The machine's foot needs room between two pockets to sew both: move one carrier, or make the pockets' legs shorter."));
        }

        if (Tightest(both.SelectMany(pair => pair.Own.Strips(pair.Other))) is { } strips)
        {
            yield return Judged(CheckCodes.BetweenStrips, Say.Of($"{names}: a strip laid back"), strips, null, Say.Of("The weather strip, laid back to open what is under it, would come to lie against the other panel: move one carrier, or make the strip narrower."));
        }

        if (Tightest(both.SelectMany(pair => pair.Own.Pulls(pair.Other, limits.Pulls))) is { } pulls)
        {
            yield return Judged(CheckCodes.BetweenPulls, Say.Of($"{names}: a zipper's pull"), pulls, "limits.between_pulls", Say.Of("Where a zipper starts, two fingers join pin and box and take the pull: move one carrier, or let the zipper start at its other end (zipper.start)."));
        }

        if (Tightest(both.SelectMany(pair => pair.Own.Hands(pair.Other, limits.Hands))) is { } hands)
        {
            yield return Judged(CheckCodes.BetweenHands, Say.Of($"{names}: a hand along an edge"), hands, "limits.between_hands", Say.Of("A hand runs along the edge to close it, and knuckles need room: move one carrier, or hold this edge by its pockets alone."));
        }

        yield return Cables(both, names, limits);
    }

    private static CheckResult Cables(ImmutableArray<(Neighbour Own, Neighbour Other)> both, string names, BetweenLimits limits)
    {
        var (subject, source) = (Say.Of($"{names}: cables"), Say.Of($"{CablesLimit} (common practice, no source)"));
        return both.All(pair => pair.Own.KnowsCables)
            ? Judged(CheckCodes.BetweenCables, subject, Tightest(both.SelectMany(pair => pair.Own.CablesTo(pair.Other, limits.Cables)))!, CablesLimit, Say.Of("A cable leaves in a bow and is tied beside its carrier, clear of the other: move one carrier, or turn the panel so that its cable leaves on the far side."))
            : new(CheckCodes.BetweenCables, subject, Verdict.NotChecked, Measured.Nothing, source, Say.Of("Not checked, because not every panel's junction box or cable exit is given (panel.junction_box, panel.cable_exit)."));
    }

    private static Room? Tightest(IEnumerable<Room> rooms) => rooms.MinBy(room => room.FoundMm - room.NeededMm);

    private static CheckResult Judged(string code, string subject, Room room, string? limit, string advice) => CheckResult.Judged(
        (code, subject),
        Measured.AtLeast(Length.FromMillimeters(room.FoundMm), Length.FromMillimeters(room.NeededMm)),
        Verdict.Caution,
        limit is null ? Say.Of("the strip's own depth") : Say.Of($"{limit} (common practice, no source)"),
        advice).On(room.About);
}

/// <summary>How much room was found and is needed, and between what.</summary>
internal sealed record Room(double FoundMm, double NeededMm, ImmutableArray<PartKey> About);

/// <summary>One of two carriers beside each other.</summary>
internal sealed class Neighbour(PlacedMounting placed)
{
    private readonly PartKeys _keys = new(placed.Job);

    public CarrierJob Job => placed.Job;

    /// <summary>The pockets; the box round each, which holds a little more than it, on the safe side.</summary>
    public IEnumerable<(Box Box, PartKey Key)> Pockets => Mounted.Fastened.Pockets.Select(pocket => (pocket.Outline.Bounds, _keys.Pocket(pocket.Corner)));

    /// <summary>Whether it is known of every panel where its cable leaves.</summary>
    public bool KnowsCables => Panels.All(panel => CableOf(panel) is not null);

    private ImmutableArray<EachPanel> Panels => EachPanel.Of(placed.Job, Mounted);

    private MountedShape Mounted => placed.Fit.Mounted;

    /// <summary>Each strip that faces the other's panel, laid back over its seam: it reaches as far out as it is deep.</summary>
    public IEnumerable<Room> Strips(Neighbour other) =>
        from strip in Mounted.Fastened.Strips
        from panel in other.Panels
        let gap = GapMm(strip.Finished, strip.Side, panel.Mounted.PanelBox)
        where gap is not null
        select new Room(gap.Value, strip.Side is Side.Forward or Side.Aft ? strip.Finished.HeightMm : strip.Finished.WidthMm, [_keys.Strip(strip.Side), new PartKeys(panel.Job).Panel]);

    /// <summary>Where each zipper starts, to the nearest that the other has on the top.</summary>
    public IEnumerable<Room> Pulls(Neighbour other, Length needed) =>
        from zipper in Mounted.Fastened.Zippers
        let start = new Box(zipper.Start.X, zipper.Start.Y, zipper.Start.X, zipper.Start.Y)
        select new Room(other.Mounted.Bounds.Min(start.DistanceMm), needed.Millimeters, [_keys.Fastening(zipper.Side), other._keys.Carrier]);

    /// <summary>Each edge that is closed by hand and faces the other.</summary>
    public IEnumerable<Room> Hands(Neighbour other, Length needed) =>
        from edge in Mounted.Fastened.Edges
        let gap = GapMm(edge.Band, edge.Side, other.Mounted.Extent)
        where gap is not null
        select new Room(gap.Value, needed.Millimeters, [_keys.Fastening(edge.Side), other._keys.Carrier]);

    /// <summary>Where each cable leaves, to the nearest that the other has on the top.</summary>
    public IEnumerable<Room> CablesTo(Neighbour other, Length needed) =>
        from panel in Panels
        let cable = CableOf(panel)
        where cable is not null
        let keys = new PartKeys(panel.Job)
        select new Room(other.Mounted.Bounds.Min(cable.Value.DistanceMm), needed.Millimeters, [panel.Mounted.CableExit is null ? keys.JunctionBox : keys.CableExit, other._keys.Carrier]);

    /// <summary>Where a cable leaves: its exit, or the box it comes out of; null when neither is known.</summary>
    private static Box? CableOf(EachPanel panel) => panel.Mounted.CableExit is { } exit ? new Box(exit.X, exit.Y, exit.X, exit.Y) : panel.Mounted.JunctionBox;

    /// <summary>From an edge straight outward to the other; null where it lies beside or behind the edge.</summary>
    private static double? GapMm(Box band, Side side, Box other)
    {
        var (gap, isAbreast) = side switch
        {
            Side.Forward => (other.Bottom - band.Top, Meet(band.Left, band.Right, other.Left, other.Right)),
            Side.Aft => (band.Bottom - other.Top, Meet(band.Left, band.Right, other.Left, other.Right)),
            Side.Port => (band.Left - other.Right, Meet(band.Bottom, band.Top, other.Bottom, other.Top)),
            _ => (other.Left - band.Right, Meet(band.Bottom, band.Top, other.Bottom, other.Top)),
        };
        return isAbreast && gap >= 0 ? gap : null;
    }

    private static bool Meet(double from, double to, double otherFrom, double otherTo) => from < otherTo && otherFrom < to;
}
