using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>What the report of several carriers, or of several sets, tells.</summary>
/// <param name="Carriers">Each carrier; it has a report of its own as well.</param>
/// <param name="Between">The checks between them, and of wiring that they have in common.</param>
/// <param name="Purchase">Cut plan, order and cost of all of it.</param>
/// <param name="Work">The order of work on one set.</param>
public sealed record TopContent(ImmutableArray<CarrierContent> Carriers, ImmutableArray<CheckResult> Between, Purchase Purchase, WorkSchedule Work);

/// <summary>The report of all that is made together: whether it fits, one cut plan, one order, one order of work.</summary>
public static class TopReport
{
    /// <summary>Writes the report.</summary>
    public static ImmutableArray<Sheet> Of(TopContent content, SheetContext context)
    {
        ArgumentNullException.ThrowIfNull(content);
        var flow = new Flow(context);
        ImmutableArray<PatternSet> patterns = [.. content.Carriers.Select(carrier => carrier.Patterns)];
        flow.Title(context.JobName);
        Verdicts(flow, content, context);
        Placement(flow, content, context);
        Marks(flow, patterns, context);
        Wind(flow, content.Carriers);
        flow.Heading(Say.Of("Cut list"));
        ReportSheets.Pieces(flow, content.Purchase.Made.PiecesOfAllSets, context);
        ClothPages.CutPlan(flow, content.Purchase.Plan, context);
        OrderPages.Order(flow, content.Purchase);
        OrderPages.Cost(flow, content.Purchase);
        OrderPages.Seams(flow, content.Purchase, context);
        WorkPages.Add(flow, content.Purchase.Made, content.Work);
        flow.Heading(Say.Of("Cautions"));
        flow.List([.. patterns.SelectMany(each => Cautions.For(each)).Distinct()]);
        OrderPages.Materials(flow, content.Purchase.Made);
        return flow.Pages("report", Say.Of($"Report, {context.JobName}"), context.Footer);
    }

    /// <summary>What a carrier is called, as in "Carrier "port""; empty for the only one.</summary>
    internal static string NameOf(PatternSet patterns) => patterns.Job.Mounting.IsOnly ? string.Empty : Say.Of($"Carrier \"{patterns.Job.Mounting}\"");

    /// <summary>Every carrier's count, and each verdict that is not good; the others stand in the carriers' own reports.</summary>
    private static void Verdicts(Flow flow, TopContent content, SheetContext context)
    {
        flow.Heading(Say.Of("Does it fit?"));
        if (context.Warning.Length > 0)
        {
            flow.Text(Say.Of($"{context.Warning}: do not cut before this is settled."), isBold: true);
        }

        if (!content.Between.IsEmpty)
        {
            flow.Text(Say.Of("Between the carriers"), isBold: true);
            ReportSheets.CheckTable(flow, CheckRows.Of(content.Between), context);
            flow.Text(string.Empty);
        }

        foreach (var carrier in content.Carriers)
        {
            flow.Text($"{NameOf(carrier.Patterns)} {CheckText.Count(carrier.Checks)}.".TrimStart(), isBold: true);
            foreach (var notice in JobNotices.Of(carrier.Patterns))
            {
                flow.Text(notice, isBold: true);
            }

            if (CheckRows.Of([.. carrier.Checks.Where(check => check.Verdict != Verdict.Pass)]) is { IsEmpty: false } rows)
            {
                ReportSheets.CheckTable(flow, rows, context);
            }

            flow.Text(string.Empty);
        }

        flow.Text(Say.Of("What passed stands in the report.pdf of each carrier."));
    }

    private static void Placement(Flow flow, TopContent content, SheetContext context)
    {
        flow.Heading(Say.Of("Where it goes"));
        foreach (var carrier in content.Carriers)
        {
            var place = Plan.PlaceOf(carrier.Patterns.Mounted.CarrierBox.Center);
            flow.Text($"{NameOf(carrier.Patterns)} {Say.Of($"carrier's middle at station {LengthText.Of(place.Station, context.Units)}, offset {OffsetText.Of(place.Offset, context.Units)}")}. {string.Join(" ", carrier.Patterns.Job.Panels.Select(panel => ReportSheets.PanelText(panel, context.Units)))}".TrimStart());
        }

        flow.Picture(PlacementSheet.Picture([.. content.Carriers.Select(carrier => carrier.Patterns)], context));
    }

    private static void Marks(Flow flow, ImmutableArray<PatternSet> patterns, SheetContext context)
    {
        flow.Heading(Say.Of("Marks on the top"));
        flow.Rows(PlacementSheet.MarksTable(context, flow.WidthMm), patterns.SelectMany(each => PlacementSheet.Named(each, PlacementSheet.Marks(each, context))));
        flow.Text(string.Empty);
        flow.Rows(PlacementSheet.DiagonalsTable(context, flow.WidthMm), patterns.SelectMany(each => PlacementSheet.Named(each, PlacementSheet.Diagonals(each, context))));
    }

    private static void Wind(Flow flow, ImmutableArray<CarrierContent> carriers)
    {
        flow.Heading(Say.Of("Wind"));
        foreach (var carrier in carriers)
        {
            flow.Text($"{NameOf(carrier.Patterns)} {WindSection.Off(HoldDown.Of(carrier.Patterns.Job, carrier.Patterns.Mounted))}".TrimStart(), isBold: true);
        }
    }
}
