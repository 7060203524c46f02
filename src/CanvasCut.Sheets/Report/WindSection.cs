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

    public static void Write(Flow flow, CarrierContent content)
    {
        var job = content.Patterns.Job;
        var hold = HoldDown.Of(job, content.Patterns.Mounted);
        var factors = job.Conditions.Wind.Factors;
        var areZippers = content.Patterns.Mounted.Fastened.HasEndZippersOnly;
        flow.Heading(Say.Of("Wind"));
        flow.Text(Off(hold), isBold: true);
        flow.Text(Say.Of($"Uplift is {factors.Coefficient.DecimalFractions:0.##} times the dynamic pressure on the whole carrier (EN 1991-1-4, table 7.6, canopies; a top on a boat is no building, so this is the size of it and no more). {Shared(content.Patterns.Mounted.Fastened, factors.Edge)} Speeds are those of gusts. Flutter is not reckoned: cloth that shakes breaks stitches and cells at loads far below these."));
        var column = (flow.WidthMm - 62) / 3;
        var table = new Table([new(Say.Of("Gust"), 40), new(Say.Of("Force"), 22), new(Say.Of("Lifts the carrier"), column), new(areZippers ? Say.Of("Worst stretch of a zipper") : Say.Of("Worst stretch of an edge"), column), new(areZippers ? Say.Of("A pocket, zipper open") : Say.Of("A pocket, edge open"), column)]);
        flow.Rows(table, Knots.Select(knots => Row(hold, Speed.FromKnots(knots))));
        flow.Text(string.Empty);
        if (hold.KnowsPull)
        {
            Bounds(flow, hold);
            flow.Text(string.Empty);
        }

        flow.Text(Say.Of("The parts hold to gusts of: ") + string.Join("; ", hold.Holds.Select(part => $"{part.Subject} {Most(part.HoldsTo)}")) + Say.Of(". New parts: sun and salt halve thread in a few years."));
    }

    internal static string Off(HoldDown hold) => hold.KnowsPull
        ? Say.Of($"Take it off before gusts of {LimitWords.Most(hold.OffAt)}: a mean wind of about {LimitWords.Knots(hold.MeanAtOff)} kn, Beaufort {hold.ForceAtOff}. Print removal-card.pdf and keep it below the top.")
        : Say.Of($"At which wind it must be off is not worked out: how far the cloth stretches is not known (stretch in the materials file). What is known would stand {LimitWords.Most(hold.OffAt)}.");

    /// <summary>What each part bears, whichever way panel and cloth behave.</summary>
    private static void Bounds(Flow flow, HoldDown hold)
    {
        flow.Text(Say.Of($"Cloth bears uplift only by pulling at what holds it. What each part bears at {QuantityWords.Of(hold.Wanted)}, pull and upright share together; the greatest counts. The edge factor stands for peaks of pressure near the top's rim; the adhesive is judged without them:"));
        var column = (flow.WidthMm - 50) / 4;
        var table = new Table([new(Say.Of("Part"), 50), new(Say.Of("Panel stiff"), column), new(Say.Of("Panel limp, cloth taut"), column), new(Say.Of("Panel limp, cloth slack"), column), new(Say.Of("May bear"), column)]);
        flow.Rows(table, hold.Holds.Where(part => part.Bounds is not null).Select(part => Row(part, part.Bounds!)));
    }

    private static ImmutableArray<string> Row(WindHold part, LoadBounds bounds) =>
    [
        part.Subject,
        QuantityWords.Of(bounds.Stiff),
        bounds.Limp is { } limp ? QuantityWords.Of(limp) : "-",
        bounds.Slack is { } slack ? QuantityWords.Of(slack) : "-",
        LimitWords.Most(part.Load.Reading!.Limit!),
    ];

    private static string Shared(MountedFastenings fastened, Ratio edge) => fastened.HasEndZippersOnly
        ? Say.Of($"The zippers share it, and the worst-placed stretch bears {edge.DecimalFractions:0.##} times its upright share; a pocket bears its part when the zipper beside it has come open.")
        : !fastened.Sides.IsEmpty
            ? Say.Of($"Each edge that is held bears the part of the carrier that lies nearest to it, and the worst-placed stretch bears {edge.DecimalFractions:0.##} times its upright share; a pocket bears its part when the edge beside it has come open.")
            : Say.Of($"What holds the two edges shares it, and the worst-placed stretch bears {edge.DecimalFractions:0.##} times its upright share; a pocket bears its part when the edge beside it has come open.");

    private static ImmutableArray<string> Row(HoldDown hold, Speed gust) =>
    [
        QuantityWords.Of(gust),
        $"{Wind.Beaufort(gust)}",
        QuantityWords.Of(hold.UpliftAt(gust)),
        hold.EdgeLoadAt(gust, hold.WorstEdge) is { } edge ? QuantityWords.Of(edge.Worst) : Say.Of("not known"),
        hold.PocketLoadAt(gust) is { } pocket ? QuantityWords.Of(pocket) : Say.Of("not known"),
    ];

    /// <summary>A wind that no boat carries a top in is told as such.</summary>
    private static string Most(Speed speed) => speed.Knots > 64 ? Say.Of("more than 64 kn") : FormattableString.Invariant($"{LimitWords.Knots(speed)} kn");
}
