using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What holds the edges in the place of zippers: fasteners by number, hook-and-loop and lacing line by length.</summary>
internal static class MountOrder
{
    /// <summary>For two knots and a hand's grip at each end of a lacing; common practice, no source.</summary>
    private static readonly Length LineEnds = Length.FromMillimeters(600);

    public static IEnumerable<OrderNeed> Of(PatternSet patterns)
    {
        foreach (var alike in patterns.Mounted.Fastened.Flaps.GroupBy(flap => flap.Kind))
        {
            FlapPlace[] flaps = [.. alike];
            foreach (var line in alike.Key == MountKind.Sleeve ? RodOrder.Of(patterns, flaps, Use(patterns, flaps)) : [])
            {
                yield return line;
            }

            if (flaps[0].Fasteners is not null)
            {
                yield return Counted(patterns, flaps);
            }

            if (alike.Key is MountKind.HookAndLoop or MountKind.Lacing)
            {
                yield return ByLength(patterns, flaps);
            }
        }
    }

    /// <summary>The line of a lacing as it is threaded: straight across, aslant to the next eyelet, straight across again; and its ends.</summary>
    public static Length LineOf(FlapPlace flap)
    {
        var row = flap.Fasteners!;
        var across = flap.CentresOnTop[0].DistanceMm(flap.CentresOnCarrier[0]);
        var aslant = double.Hypot(across, row.Pitch.Millimeters);
        return Length.FromMillimeters((row.Count * across) + ((row.Count - 1) * aslant)) + LineEnds;
    }

    private static OrderNeed Counted(PatternSet patterns, FlapPlace[] flaps)
    {
        var grade = patterns.Job.Workshop.Supplies.Notions.Mount.Of(flaps[0].Kind)!;
        var rows = flaps[0].Kind == MountKind.Lacing ? 2 : 1;
        var pitches = string.Join(Say.Of(" and "), flaps.Select(flap => Say.Of($"{flap.Fasteners!.Count} at {LengthText.OfMating(flap.Fasteners.Pitch, patterns.Job.Units)}")));
        return new(
            default,
            new(grade.Grade.Id, grade.Grade.Name),
            NeedAmount.Of(rows * flaps.Sum(flap => flap.Fasteners!.Count), grade),
            rows == 2 ? Say.Of($"{pitches}, on the carrier and on the top") : pitches,
            Use(patterns, flaps));
    }

    private static OrderNeed ByLength(PatternSet patterns, FlapPlace[] flaps)
    {
        var (units, tapes) = (patterns.Job.Units, patterns.Job.Workshop.Supplies.Tapes.Mount);
        var (grade, length, also) = flaps[0].Kind == MountKind.Lacing
            ? (tapes.Lacing, Sum(flaps, LineOf), Say.Of("straight across, then aslant to the next eyelet, and 0.6 m for the ends of each"))
            : (tapes.HookAndLoop, OrderList.WithWaste(Sum(flaps, flap => flap.Run)), Say.Of("as much hook as loop, 15 % waste"));
        return new(default, new(grade.Grade.Id, grade.Grade.Name), NeedAmount.Of(length, grade.Sold, units), $"{LengthText.Of(Sum(flaps, flaps[0].Kind == MountKind.Lacing ? LineOf : flap => flap.Run), units)}: {also}", Use(patterns, flaps));
    }

    private static Length Sum(FlapPlace[] flaps, Func<FlapPlace, Length> of) => Length.FromMillimeters(flaps.Sum(flap => of(flap).Millimeters));

    private static OrderUse Use(PatternSet patterns, FlapPlace[] flaps)
    {
        return new(
            Say.Of($"{string.Join(Say.Of(" and "), flaps.Select(flap => Words.Of(flap.Side)))} edge, on its flap and on the top"),
            [.. patterns.Pieces.Select(piece => piece.Key).Where(key => key.Kind is PieceKind.MountFlap or PieceKind.MountStrip && flaps.Any(flap => flap.Side == key.Side))]);
    }
}
