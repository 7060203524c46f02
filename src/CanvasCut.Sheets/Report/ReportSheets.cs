using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The report, page by page.</summary>
public static class ReportSheets
{
    /// <summary>Writes the report.</summary>
    /// <param name="content">What it tells.</param>
    /// <param name="context">What every sheet says.</param>
    /// <param name="shape">The picture of <see cref="ShapeSheet"/>, which is slow to draw and needed elsewhere too.</param>
    public static ImmutableArray<Sheet> Of(ReportContent content, SheetContext context, Sheet? shape)
    {
        var flow = new Flow(context);
        AboutCarrier(flow, content.Carrier, context, shape);
        ClothPages.CutPlan(flow, content.Plan, context);
        OrderPages.Order(flow, content.Purchase);
        OrderPages.Cost(flow, content.Purchase);
        OrderPages.Seams(flow, content.Purchase, context);
        WorkPages.Add(flow, content.Purchase.Made, content.Work);
        flow.Heading(Say.Of("Cautions"));
        flow.List(Cautions.For(content.Patterns));
        OrderPages.Materials(flow, content.Purchase.Made);
        Defaults(flow, content.Carrier);
        return flow.Pages("report", Say.Of($"Report, {context.JobName}"), context.Footer);
    }

    /// <summary>Writes the report of one of several carriers, without what is common to all.</summary>
    /// <param name="content">What it tells.</param>
    /// <param name="context">What every sheet says.</param>
    /// <param name="shape">The picture of <see cref="ShapeSheet"/>.</param>
    public static ImmutableArray<Sheet> OfCarrier(CarrierContent content, SheetContext context, Sheet? shape)
    {
        var flow = new Flow(context);
        AboutCarrier(flow, content, context, shape);
        flow.Heading(Say.Of("Cut plan, order and work"));
        flow.Text(Say.Of("These are common to everything that is made: see the report.pdf beside this folder."));
        flow.Heading(Say.Of("Cautions"));
        flow.List(Cautions.For(content.Patterns));
        Defaults(flow, content);
        return flow.Pages("report", Say.Of($"Report, {context.JobName}"), context.Footer);
    }

    private static void AboutCarrier(Flow flow, CarrierContent content, SheetContext context, Sheet? shape)
    {
        flow.Title(context.JobName);
        Verdicts(flow, content, context);
        Placement(flow, content, context);
        flow.Picture(PlacementSheet.Picture(content.Patterns, context));
        Side(flow, content, context);
        Shape(flow, content, shape);
        Marks(flow, content, context);
        WindSection.Write(flow, content);
        flow.Heading(Say.Of("Cut list"));
        Pieces(flow, content.Patterns.Pieces, context);
        MountSection.Write(flow, content, context);
    }

    private static void Verdicts(Flow flow, CarrierContent content, SheetContext context)
    {
        flow.Heading(Say.Of("Does it fit?"));
        foreach (var notice in JobNotices.Of(content.Patterns))
        {
            flow.Text(notice, isBold: true);
        }

        flow.Text(CheckText.Count(content.Checks) + ".", isBold: true);
        if (context.Warning.Length > 0)
        {
            flow.Text(Say.Of($"{context.Warning}: do not cut before this is settled."), isBold: true);
        }

        CheckTable(flow, CheckRows.Of(content.Checks), context);
        flow.Text(string.Empty);
        flow.Text(Say.Of("This version does not check:"), isBold: true);
        flow.List(JobChecks.NotInThisVersionFor(content.Wiring));
    }

    /// <summary>Verdicts, a row each.</summary>
    internal static void CheckTable(Flow flow, ImmutableArray<CheckRow> rows, SheetContext context)
    {
        var measure = context.Units == PrintUnits.Both ? 27.0 : 20;
        var table = new Table([new(Say.Of("Verdict"), 16), new(Say.Of("What"), 38), new(Say.Of("Found"), measure), new(Say.Of("Limit"), measure + 4), new(Say.Of("What to do; source of the limit"), flow.WidthMm - 58 - (2 * measure))], 1.8);
        flow.Rows(table, rows.Select((row, i) => ImmutableArray.Create(
            CheckText.Of(row.Check.Verdict),
            row.Subject,
            CheckText.ValueOf(row.Check, context.Units),
            CheckText.LimitOf(row.Check, context.Units),
            i > 0 && WhatToDo(rows[i - 1]) == WhatToDo(row) ? Say.Of("as above") : WhatToDo(row))));
    }

    private static string WhatToDo(CheckRow row) => row.Check.Advice.Length > 0 ? $"{row.Check.Advice} ({row.Check.Source})" : row.Check.Source;

    private static void Placement(Flow flow, CarrierContent content, SheetContext context)
    {
        flow.Heading(Say.Of("Where it goes"));
        foreach (var panel in content.Patterns.Job.Panels)
        {
            flow.Text(PanelText(panel, context.Units));
        }

        if (content.Patterns.Job.Row is { } row)
        {
            flow.Text(RowText(row, context.Units));
        }

        foreach (var (i, option) in content.Fit.Options.Index())
        {
            var place = Say.Of($"carrier's middle at station {LengthText.Of(option.Place.Station, context.Units)}, offset {OffsetText.Of(option.Place.Offset, context.Units)}");
            var spare = option.Spare.Millimeters < 0
                ? Say.Of($"something is {LengthText.Of(-option.Spare, context.Units)} too close")
                : Say.Of($"{LengthText.Of(option.Spare, context.Units)} to spare beyond every limit");
            var bend = option.MayBend ? string.Empty : Say.Of("; the panel may not be bent that way");
            flow.Text(Say.Of($"{(i == 0 ? Say.Of("Chosen") : Say.Of("Also possible"))}: long side {Words.Of(option.LongSide)}, {place}; {spare}{bend}."));
        }

        flow.Text(content.Fit.IsPlaceChosen
            ? Say.Of("The place was chosen by the program: the one with the largest smallest spare distance on a 5 mm grid.")
            : content.Patterns.IsRefit ? Say.Of("The place is that of what is sewn to the top.")
            : Say.Of("The place is the job file's (carrier.position)."));
    }

    private static void Side(Flow flow, CarrierContent content, SheetContext context)
    {
        ImmutableArray<Sheet> sides = [.. content.Patterns.EachPanel.Select(each => SidePicture.Of(each, context.Units)).OfType<Sheet>()];
        if (sides.IsEmpty)
        {
            return;
        }

        flow.Heading(content.Patterns.Job.Row is null ? Say.Of("The panel over the bows") : Say.Of("The panels over the bows"), sides[0]);
        foreach (var (panel, side) in content.Patterns.Job.Panels.Zip(sides))
        {
            if (content.Patterns.Job.Row is not null)
            {
                flow.Text(Say.Of($"Panel \"{panel.Name}\":"));
            }

            flow.Picture(side);
        }

        flow.Text(Say.Of("From the side, along the panel's middle: the panel thick, the cloth thin, dashed as low as it may hang, R the panel's radius where it lies on a tube."));
    }

    private static string RowText(PanelRow row, PrintUnits units)
    {
        var gaps = string.Join(", ", row.After.Select(panel => LengthText.Of(panel.Gap, units)).Distinct());
        return row.Axis == RowAxis.Athwart
            ? Say.Of($"They lie in a row from port to starboard, middle by middle, {gaps} between them; the cloth there bends like a hinge.")
            : Say.Of($"They lie in a row from forward to aft, middle by middle, {gaps} between them; the cloth there bends like a hinge.");
    }

    internal static string PanelText(RowPanel named, PrintUnits units)
    {
        var (panel, body) = (named.Panel, named.Panel.Body);
        var mass = body.Mass is { } known ? FormattableString.Invariant($", {known.Kilograms:0.##} kg ({known.Pounds:0.#} lb)") : string.Empty;
        var box = panel.Fittings.JunctionBox is { } fitting ? Say.Of($"; junction box {LengthText.Of(fitting.Height, units)} high") : string.Empty;
        var size = Say.Of($"{LengthText.Of(body.Length, units)} × {LengthText.Of(body.Width, units)}, {LengthText.Of(body.Thickness, units)} thick{mass}{box}.");
        return named.Name.IsOnly ? Say.Of($"Panel: {size}") : Say.Of($"Panel \"{named.Name}\": {size}");
    }

    private static void Shape(Flow flow, CarrierContent content, Sheet? shape)
    {
        flow.Heading(Say.Of("The top in space"), shape);
        if (shape is null)
        {
            flow.Text(Say.Of($"{ShapeSheet.WhyNot(content.Patterns)} With these measures a picture of it stands here."));
        }
        else
        {
            flow.Picture(shape);
        }
    }

    private static void Marks(Flow flow, CarrierContent content, SheetContext context)
    {
        flow.Heading(Say.Of("Marks on the top"));
        var what = content.Patterns.Mounted.Fastened.HasEndZippersOnly ? Say.Of("zippers") : Say.Of("fastenings");
        flow.Text(Say.Of($"Stations run aft from the top's forward edge, offsets from the centreline, both along the cloth. Mark the {what} from the carrier itself where you can; these figures are to check by."));
        flow.Rows(PlacementSheet.MarksTable(context, flow.WidthMm), PlacementSheet.Marks(content.Patterns, context));
        flow.Text(string.Empty);
        flow.Rows(PlacementSheet.DiagonalsTable(context, flow.WidthMm), PlacementSheet.Diagonals(content.Patterns, context));
    }

    /// <summary>The pieces with their sizes.</summary>
    internal static void Pieces(Flow flow, ImmutableArray<PatternPiece> pieces, SheetContext context)
    {
        var size = (flow.WidthMm - 10 - 52 - 12) / 2;
        var table = new Table([new(Say.Of("No"), 10), new(Say.Of("Piece"), 52), new(Say.Of("Cut"), 12), new(Say.Of("Finished, athwart × fore and aft"), size), new(Say.Of("Cut size, athwart × fore and aft"), size)]);
        flow.Rows(table, pieces.Select((piece, i) => ImmutableArray.Create(
            $"{i + 1}",
            piece.Key.Mounting.IsOnly ? piece.Title.Name : $"{piece.Key.Mounting}: {piece.Title.Name}",
            $"{piece.Title.Quantity}",
            $"{LengthText.Of(piece.FinishedSize.Athwart, context.Units)} × {LengthText.Of(piece.FinishedSize.ForeAft, context.Units)}",
            $"{LengthText.Of(piece.CutSize.Athwart, context.Units)} × {LengthText.Of(piece.CutSize.ForeAft, context.Units)}")));
    }

    private static void Defaults(Flow flow, CarrierContent content)
    {
        flow.Heading(Say.Of("Defaults used"));
        flow.Text(Say.Of("The job file leaves these out. Look at each: it is yours to change."));
        var table = new Table([new(Say.Of("Field"), 46), new(Say.Of("Taken"), 46), new(Say.Of("Where it comes from"), flow.WidthMm - 92)], 1.8);
        flow.Rows(table, content.Patterns.Job.Defaults.Select(used => ImmutableArray.Create(used.Field, used.Value, used.Source)));
    }
}
