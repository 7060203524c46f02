using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>What wind does to the mounted panel, in the report.</summary>
internal static class WindSection
{
    private static readonly double[] Knots = [10, 20, 25, 30, 35, 40, 50];

    public static void Write(Flow flow, ReportContent content)
    {
        var job = content.Patterns.Job;
        var hold = HoldDown.Of(job, content.Patterns.Mounted);
        var factors = job.Conditions.Wind.Factors;
        var areZippers = content.Patterns.Mounted.Fastened.HasEndZippersOnly;
        flow.Heading(Say.Of("Wind"));
        flow.Text(Say.Of($"Take it off before gusts of {LimitWords.Most(hold.OffAt)}: a mean wind of about {LimitWords.Knots(hold.MeanAtOff)} kn, Beaufort {hold.ForceAtOff}. Print removal-card.pdf and keep it below the top."), isBold: true);
        flow.Text(Say.Of($"Uplift is {factors.Coefficient.DecimalFractions:0.##} times the dynamic pressure on the whole carrier (EN 1991-1-4, table 7.6, canopies; a top on a boat is no building, so this is the size of it and no more). {Shared(content.Patterns.Mounted.Fastened, factors.Edge)} Speeds are those of gusts. Flutter is not reckoned: cloth that shakes breaks stitches and cells at loads far below these."));
        var column = (flow.WidthMm - 62) / 3;
        var table = new Table([new(Say.Of("Gust"), 40), new(Say.Of("Force"), 22), new(Say.Of("Lifts the carrier"), column), new(areZippers ? Say.Of("Worst stretch of a zipper") : Say.Of("Worst stretch of an edge"), column), new(areZippers ? Say.Of("A pocket, zipper open") : Say.Of("A pocket, edge open"), column)]);
        flow.Rows(table, Knots.Select(knots => Row(hold, Speed.FromKnots(knots))));
        flow.Text(string.Empty);
        flow.Text(Say.Of("The parts hold to gusts of: ") + string.Join("; ", hold.Holds.Select(part => $"{part.Subject} {Most(part.HoldsTo)}")) + Say.Of(". New parts: sun and salt halve thread in a few years."));
    }

    private static string Shared(MountedFastenings fastened, Ratio edge) => fastened.HasEndZippersOnly
        ? Say.Of($"The zippers share it, and the worst-placed stretch bears {edge.DecimalFractions:0.##} times its share; a pocket bears its part when the zipper beside it has come open.")
        : !fastened.Sides.IsEmpty
            ? Say.Of($"Each edge that is held bears the part of the carrier that lies nearest to it, and the worst-placed stretch bears {edge.DecimalFractions:0.##} times its share; a pocket bears its part when the edge beside it has come open.")
            : Say.Of($"What holds the two edges shares it, and the worst-placed stretch bears {edge.DecimalFractions:0.##} times its share; a pocket bears its part when the edge beside it has come open.");

    private static ImmutableArray<string> Row(HoldDown hold, Speed gust) =>
    [
        QuantityWords.Of(gust),
        $"{Wind.Beaufort(gust)}",
        QuantityWords.Of(hold.UpliftAt(gust)),
        QuantityWords.Of(hold.EdgeLoadAt(gust, hold.WorstEdge)),
        QuantityWords.Of(hold.PocketLoadAt(gust)),
    ];

    /// <summary>A wind that no boat carries a top in is told as such.</summary>
    private static string Most(Speed speed) => speed.Knots > 64 ? Say.Of("more than 64 kn") : FormattableString.Invariant($"{LimitWords.Knots(speed)} kn");
}
