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

    private static OrderLine Cloth(CarrierJob job, CutPlan plan) => new(
        $"{job.Workshop.Cloth.Name}, roll {LengthText.Of(plan.Roll.Width, job.Units)} wide",
        Number(plan.Ordered.Meters, 3),
        "m",
        $"{Number(plan.Ordered.Yards, 3)} yd; sold by {LengthText.Of(plan.Roll.OrderStep, job.Units)}; {LengthText.Of(plan.Used, job.Units)} used",
        "all pieces of the cut plan, no spare included");

    private static IEnumerable<OrderLine> Zippers(PatternSet patterns)
    {
        var (zippers, gauge) = (patterns.Mounted.Fastened.Zippers, patterns.Job.Fastenings.Zipper.Gauge);
        var units = patterns.Job.Units;
        var size = $"chain {LengthText.Of(gauge.Chain, units)}, {LengthText.Of(gauge.OverallWidth, units)} over both tapes";
        if (patterns.Job.Fastenings.Zipper.Kind == ZipperKind.Continuous)
        {
            var total = Length.FromMillimeters(zippers.Sum(zipper => zipper.Choice.Buy.Millimeters));
            yield return new($"continuous zipper, {size}", Number(total.Meters, 3), "m", LengthText.Of(total, units), Sides(zippers));
            yield return new("zipper sliders", Number(zippers.Length, 0), "piece", "one a zipper", Sides(zippers));
            yield return new("zipper stops", Number(2 * zippers.Length, 0), "piece", "two a zipper", Sides(zippers));
            yield break;
        }

        foreach (var alike in zippers.GroupBy(zipper => Math.Round(zipper.Choice.Buy.Millimeters, 6)))
        {
            var choice = alike.First().Choice;
            var trimmed = choice.Trim.Millimeters > 0 ? $", trimmed to {LengthText.OfMating(choice.Run, units)} at the stop end" : string.Empty;
            yield return new($"separating zipper, {size}", Number(alike.Count(), 0), "piece", $"{LengthText.Of(choice.Buy, units)} long{trimmed}", Sides(alike));
        }
    }

    private static IEnumerable<OrderLine> Thread(PatternSet patterns)
    {
        var sewing = patterns.Job.Workshop.Sewing;
        var seams = SewnLengths.Seams(patterns);
        var thread = SewnLengths.Thread(seams, sewing);
        yield return new($"thread, {sewing.Thread}", Whole(thread.Meters), "m", $"{Whole(thread.Yards)} yd; needle and bobbin, 15 % waste", $"{Number(seams.Meters, 1)} m of seam");
        var tape = SewnLengths.Basting(patterns);
        yield return new("basting tape, 1/4 in (6 mm)", Whole(tape.Meters), "m", $"{Whole(tape.Yards)} yd", "zippers and the carrier's hems");
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
            var bought = Length.FromMillimeters(length * SewnLengths.Waste);
            yield return new("binding tape", Number(bought.Meters, 1), "m", $"{Number(bought.Yards, 1)} yd; 15 % waste", "the carrier's bound edges");
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

    private static string Whole(double value) => Number(Math.Ceiling(value), 0);

    private static string Number(double value, int decimals) => Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture);
}
