using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Zippers: in stock lengths, or from the roll with sliders and stops.</summary>
internal static class ZipperOrder
{
    /// <summary>Trimming takes the stops of both halves away.</summary>
    private const int StopsOfTrimmed = 2;

    /// <summary>Less is round-off.</summary>
    private const double LeastTrimMm = 1e-6;

    public static IEnumerable<OrderNeed> Of(PatternSet patterns) => patterns.Mounted.Fastened.Zippers.IsEmpty ? []
        : patterns.Job.Fastenings.Zipper.Kind == ZipperKind.Continuous ? FromRoll(patterns)
        : FromStock(patterns);

    private static IEnumerable<OrderNeed> FromStock(PatternSet patterns)
    {
        var (units, grade) = (patterns.Job.Units, patterns.Job.Workshop.Supplies.Zipper.Grade);
        foreach (var alike in patterns.Mounted.Fastened.Zippers.GroupBy(zipper => Math.Round(zipper.Choice.Buy.Millimeters, 6)))
        {
            var choice = alike.First().Choice;
            var trimmed = IsTrimmed(alike.First()) ? Say.Of($"trimmed to {LengthText.OfMating(choice.Run, units)} at the stop end") : Say.Of("not trimmed");
            var (left, right) = (alike.Count(zipper => zipper.BoxIsLeft), alike.Count(zipper => !zipper.BoxIsLeft));
            yield return new(
                (choice.Buy.Millimeters, GaugeOf(patterns)),
                new(grade.Id, Say.Of($"separating {grade.Name}, {Size(patterns.Job)}, {LengthText.Of(choice.Buy, units)} long"), choice.Buy),
                new(alike.Count(), number => (new((decimal)Math.Round(number), "piece"), Say.Of("shortest stock length that is long enough"))),
                Say.Of($"{trimmed}; seen from its start with the pull up, box and slider are on the left of {left} and on the right of {right}, or all have a pull on both faces"),
                Use(patterns, alike));
        }

        if (patterns.Mounted.Fastened.Zippers.Where(IsTrimmed).ToList() is { Count: > 0 } cut)
        {
            var stop = patterns.Job.Workshop.Supplies.Notions.Stop;
            yield return new((GaugeOf(patterns), 0), new(stop.Grade.Id, stop.Grade.Name), NeedAmount.Of(StopsOfTrimmed * cut.Count, stop), Say.Of("two a trimmed zipper, one on each half where it is cut"), Use(patterns, cut));
        }
    }

    private static bool IsTrimmed(ZipperPlace zipper) => zipper.Choice.Trim.Millimeters > LeastTrimMm;

    private static IEnumerable<OrderNeed> FromRoll(PatternSet patterns)
    {
        var (supplies, units) = (patterns.Job.Workshop.Supplies, patterns.Job.Units);
        var zippers = patterns.Mounted.Fastened.Zippers;
        var length = Length.FromMillimeters(zippers.Sum(zipper => zipper.Choice.Buy.Millimeters));
        var cuts = string.Join(Say.Of(" and "), zippers.Select(zipper => LengthText.Of(zipper.Choice.Buy, units)));
        yield return new((0, GaugeOf(patterns)), new(supplies.Zipper.Grade.Id, Say.Of($"continuous {supplies.Zipper.Grade.Name}, {Size(patterns.Job)}")), NeedAmount.Of(length, supplies.Zipper.Sold, units), Say.Of($"cut {cuts}"), Use(patterns, zippers));
        foreach (var (grade, each) in new[] { (supplies.Notions.Slider, 1), (supplies.Notions.Stop, 2) })
        {
            yield return new((GaugeOf(patterns), 0), new(grade.Grade.Id, grade.Grade.Name), NeedAmount.Of(each * zippers.Length, grade), each == 1 ? Say.Of("one a zipper") : Say.Of("two a zipper, both on the top's half"), Use(patterns, zippers));
        }
    }

    /// <summary>Sliders and stops fit chains of one width.</summary>
    private static double GaugeOf(PatternSet patterns) => patterns.Job.Fastenings.Zipper.Gauge.Chain.Millimeters;

    private static string Size(CarrierJob job)
    {
        var gauge = job.Fastenings.Zipper.Gauge;
        return Say.Of($"chain {LengthText.Of(gauge.Chain, job.Units)}, {LengthText.Of(gauge.OverallWidth, job.Units)} over both tapes");
    }

    private static OrderUse Use(PatternSet patterns, IEnumerable<ZipperPlace> zippers) => new(
        Say.Of($"{string.Join(Say.Of(" and "), zippers.Select(zipper => Words.Of(zipper.Side)))} edge, one half on the carrier, one on the top"),
        [.. patterns.CarrierPieces.Select(piece => piece.Key)]);
}
