using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What holds the free edges of weather strips: snaps by number, hook-and-loop by length, rods cut to theirs.</summary>
internal static class StripHoldOrder
{
    public static IEnumerable<OrderNeed> Of(PatternSet patterns)
    {
        StripPlace[] held = [.. patterns.Mounted.Fastened.Strips.Where(strip => strip.Holding is not null)];
        return held.Length == 0 ? [] : held[0].Holding!.Kind switch
        {
            StripHold.Snaps => [Snaps(patterns, held)],
            StripHold.HookAndLoop => [Squares(patterns, held)],
            _ => Rods(patterns, held),
        };
    }

    /// <summary>A rod is as long as its strip less a little at each end.</summary>
    public static Length RodOf(StripPlace strip) => Length.FromMillimeters(strip.FreeEdge.From.DistanceMm(strip.FreeEdge.To)) - (StripHolding.RodEnd * 2);

    private static OrderNeed Snaps(PatternSet patterns, StripPlace[] held)
    {
        var grade = patterns.Job.Workshop.Supplies.Notions.Mount.Of(MountKind.Snaps)!;
        return new(default, new(grade.Grade.Id, grade.Grade.Name), NeedAmount.Of(held.Sum(strip => strip.Holding!.Centres.Length), grade), Pitches(patterns, held), Use(patterns, held));
    }

    private static OrderNeed Squares(PatternSet patterns, StripPlace[] held)
    {
        var (grade, size) = (patterns.Job.Workshop.Supplies.Tapes.Mount.HookAndLoop, held[0].Holding!.Size);
        var length = size * held.Sum(strip => strip.Holding!.Centres.Length);
        return new(
            default,
            new(grade.Grade.Id, grade.Grade.Name),
            NeedAmount.Of(OrderList.WithWaste(length), grade.Sold, patterns.Job.Units),
            Say.Of($"squares of {LengthText.Of(size, patterns.Job.Units)}, {Pitches(patterns, held)}; as much hook as loop, 15 % waste"),
            Use(patterns, held));
    }

    private static IEnumerable<OrderNeed> Rods(PatternSet patterns, StripPlace[] held)
    {
        var (units, grades, rod) = (patterns.Job.Units, patterns.Job.Workshop.Supplies.Notions.Mount.Rod, held[0].Holding!.Size);
        foreach (var alike in held.GroupBy(strip => Math.Round(RodOf(strip).Millimeters, 6)))
        {
            var length = RodOf(alike.First());
            yield return new(
                (length.Millimeters, rod.Millimeters),
                new(grades.Rod.Grade.Id, Say.Of($"{grades.Rod.Grade.Name}, {LengthText.Of(rod, units)} thick, {LengthText.Of(length, units)} long"), length),
                NeedAmount.Of(alike.Count(), grades.Rod),
                Say.Of($"bent to a radius of {LimitWords.Most(SleeveSpec.LeastRadiusOf(rod), units)} for good: ask the seller"),
                Use(patterns, held));
        }

        yield return new((rod.Millimeters, 0), new(grades.Cap.Grade.Id, grades.Cap.Grade.Name), NeedAmount.Of(2 * held.Length, grades.Cap), Say.Of($"for rods of {LengthText.Of(rod, units)}, one an end"), Use(patterns, held));
    }

    private static string Pitches(PatternSet patterns, StripPlace[] held) => string.Join(
        Say.Of(" and "),
        held.Select(strip => Say.Of($"{strip.Holding!.Centres.Length} at {LengthText.OfMating(strip.Holding.Pitch, patterns.Job.Units)}")));

    private static OrderUse Use(PatternSet patterns, StripPlace[] held) => new(
        Say.Of($"free edge of the {string.Join(Say.Of(" and "), held.Select(strip => strip.Name))}"),
        [.. patterns.Pieces.Select(piece => piece.Key).Where(key => key.Kind == PieceKind.WeatherStrip && held.Any(strip => strip.Side == key.Side))]);
}
