using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Zippers: in stock lengths, or from the roll with sliders and stops.</summary>
internal static class ZipperOrder
{
    public static IEnumerable<OrderLine> Of(PatternSet patterns) => patterns.Mounted.Fastened.Zippers.IsEmpty ? []
        : patterns.Job.Fastenings.Zipper.Kind == ZipperKind.Continuous ? FromRoll(patterns)
        : FromStock(patterns);

    private static IEnumerable<OrderLine> FromStock(PatternSet patterns)
    {
        var (units, grade) = (patterns.Job.Units, patterns.Job.Workshop.Supplies.Zipper.Grade);
        foreach (var alike in patterns.Mounted.Fastened.Zippers.GroupBy(zipper => Math.Round(zipper.Choice.Buy.Millimeters, 6)))
        {
            var choice = alike.First().Choice;
            var trimmed = choice.Trim.Millimeters > 0 ? Say.Of($"trimmed to {LengthText.OfMating(choice.Run, units)} at the stop end") : Say.Of("not trimmed");
            yield return new(
                new(grade.Id, Say.Of($"separating {grade.Name}, {Size(patterns.Job)}, {LengthText.Of(choice.Buy, units)} long"), choice.Buy),
                new(alike.Count(), "piece"),
                trimmed,
                Say.Of("shortest stock length that is long enough"),
                Use(patterns, alike));
        }
    }

    private static IEnumerable<OrderLine> FromRoll(PatternSet patterns)
    {
        var (supplies, units) = (patterns.Job.Workshop.Supplies, patterns.Job.Units);
        var zippers = patterns.Mounted.Fastened.Zippers;
        var (bought, rounding) = SoldBy.Of(Length.FromMillimeters(zippers.Sum(zipper => zipper.Choice.Buy.Millimeters)), supplies.Zipper.Sold, units);
        var cuts = string.Join(Say.Of(" and "), zippers.Select(zipper => LengthText.Of(zipper.Choice.Buy, units)));
        yield return new(new(supplies.Zipper.Grade.Id, Say.Of($"continuous {supplies.Zipper.Grade.Name}, {Size(patterns.Job)}")), bought, Say.Of($"cut {cuts}"), rounding, Use(patterns, zippers));
        foreach (var (grade, each) in new[] { (supplies.Notions.Slider, 1), (supplies.Notions.Stop, 2) })
        {
            var (count, rule) = SoldBy.Of(each * zippers.Length, grade);
            yield return new(new(grade.Grade.Id, grade.Grade.Name), count, each == 1 ? Say.Of("one a zipper") : Say.Of("two a zipper, both on the top's half"), rule, Use(patterns, zippers));
        }
    }

    private static string Size(CarrierJob job)
    {
        var gauge = job.Fastenings.Zipper.Gauge;
        return Say.Of($"chain {LengthText.Of(gauge.Chain, job.Units)}, {LengthText.Of(gauge.OverallWidth, job.Units)} over both tapes");
    }

    private static OrderUse Use(PatternSet patterns, IEnumerable<ZipperPlace> zippers) => new(
        Say.Of($"{string.Join(Say.Of(" and "), zippers.Select(zipper => Words.Of(zipper.Side)))} edge, one half on the carrier, one on the top"),
        [.. patterns.CarrierPieces.Select(piece => piece.Key)]);
}
