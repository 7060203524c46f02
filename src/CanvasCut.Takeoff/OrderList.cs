using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What to buy, worked out from the drawn pieces.</summary>
public static class OrderList
{
    /// <summary>The lines, cloth first.</summary>
    public static ImmutableArray<OrderLine> Of(PatternSet patterns, CutPlan plan) =>
    [
        Cloth(patterns.Job, plan),
        .. Zippers(patterns),
        .. Thread(patterns),
        .. Binding(patterns),
        .. Grommet(patterns),
    ];

    private static OrderLine Cloth(CarrierJob job, CutPlan plan)
    {
        var bought = BoughtLength.Exactly(plan.Ordered, job.Units);
        return new(
            $"{job.Workshop.Cloth.Name}, roll {LengthText.Of(plan.Roll.Width, job.Units)} wide",
            bought.Quantity,
            bought.Unit,
            $"{bought.Also}; sold by {LengthText.Of(plan.Roll.OrderStep, job.Units)}; {LengthText.Of(plan.Used, job.Units)} used",
            "all pieces of the cut plan, no spare included");
    }

    private static IEnumerable<OrderLine> Zippers(PatternSet patterns)
    {
        var (zippers, gauge) = (patterns.Mounted.Fastened.Zippers, patterns.Job.Fastenings.Zipper.Gauge);
        var units = patterns.Job.Units;
        var size = $"chain {LengthText.Of(gauge.Chain, units)}, {LengthText.Of(gauge.OverallWidth, units)} over both tapes";
        if (patterns.Job.Fastenings.Zipper.Kind == ZipperKind.Continuous)
        {
            var total = Length.FromMillimeters(zippers.Sum(zipper => zipper.Choice.Buy.Millimeters));
            var bought = BoughtLength.Exactly(total, units);
            yield return new($"continuous zipper, {size}", bought.Quantity, bought.Unit, $"{bought.Also}; {Pieces(zippers.Length)} of {LengthText.Of(zippers[0].Choice.Buy, units)}", Sides(zippers));
            yield return new("zipper sliders", Pieces(zippers.Length), "piece", "one a zipper", Sides(zippers));
            yield return new("zipper stops", Pieces(2 * zippers.Length), "piece", "two a zipper", Sides(zippers));
            yield break;
        }

        foreach (var alike in zippers.GroupBy(zipper => Math.Round(zipper.Choice.Buy.Millimeters, 6)))
        {
            var choice = alike.First().Choice;
            var trimmed = choice.Trim.Millimeters > 0 ? $", trimmed to {LengthText.OfMating(choice.Run, units)} at the stop end" : string.Empty;
            yield return new($"separating zipper, {size}", Pieces(alike.Count()), "piece", $"{LengthText.Of(choice.Buy, units)} long{trimmed}", Sides(alike));
        }
    }

    private static IEnumerable<OrderLine> Thread(PatternSet patterns)
    {
        var (sewing, units) = (patterns.Job.Workshop.Sewing, patterns.Job.Units);
        var seams = SewnLengths.Seams(patterns);
        var thread = BoughtLength.RoundedUp(SewnLengths.Thread(seams, sewing), units);
        var sewn = BoughtLength.RoundedUp(seams, units);
        yield return new($"thread, {sewing.Thread}", thread.Quantity, thread.Unit, $"{thread.Also}; needle and bobbin, 15 % waste", $"{sewn.Quantity} {sewn.Unit} of seam");
        var tape = BoughtLength.RoundedUp(SewnLengths.Basting(patterns), units);
        yield return new("basting tape, 1/4 in (6 mm)", tape.Quantity, tape.Unit, tape.Also, "zippers and the carrier's hems");
    }

    private static IEnumerable<OrderLine> Binding(PatternSet patterns)
    {
        var bounds = patterns.WholeCarrier.Shape.Finished.Bounds;
        var edges = patterns.Job.Carrier.Edges;
        var length = Enum.GetValues<Side>()
            .Where(side => edges[side] == EdgeFinish.Binding)
            .Sum(side => side is Side.Forward or Side.Aft ? bounds.WidthMm : bounds.HeightMm);
        if (length > 0)
        {
            var bought = BoughtLength.RoundedUp(Length.FromMillimeters(length * SewnLengths.Waste), patterns.Job.Units);
            yield return new("binding tape", bought.Quantity, bought.Unit, $"{bought.Also}; 15 % waste", "the carrier's bound edges");
        }
    }

    private static IEnumerable<OrderLine> Grommet(PatternSet patterns)
    {
        if (patterns.Job.Panel.Fittings.CableExit is { } exit)
        {
            yield return new("cable gland or grommet", "1", "piece", $"for a hole of {LengthText.Of(exit.Diameter, patterns.Job.Units)}", "cable exit");
        }
    }

    private static string Sides(IEnumerable<ZipperPlace> zippers) => $"{string.Join(" and ", zippers.Select(zipper => Words.Of(zipper.Side)))} edge";

    private static string Pieces(int count) => count.ToString(CultureInfo.InvariantCulture);
}
