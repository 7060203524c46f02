using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Language;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Makes every file of the results.</summary>
public static class ResultFiles
{
    private const string ShapeName = "top-shape";

    /// <summary>The files, those to look at first before the others.</summary>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static ImmutableArray<ResultFile> Of(JobRun outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return outcome.Spoken(() => Spoken(outcome));
    }

    private static ImmutableArray<ResultFile> Spoken(JobRun outcome)
    {
        // The two that others wait for are drawn at the same time.
        var shape = Task.Run(() => outcome.Shape);
        var (content, drawings) = (outcome.Content, outcome.Drawings);
        ImmutableArray<FilePlan> plans =
        [
            .. Papers(outcome, drawings, shape.GetAwaiter().GetResult()),
            .. Pictures(outcome, shape.GetAwaiter().GetResult()),
            FilePlan.Text("order.csv", Say.Of("what to buy, for a spreadsheet"), () => OrderCsv.Of(content.Purchase)),
            .. CutterFiles.Of(outcome, drawings),
            .. PiecePlans(drawings),
        ];
        var names = plans.Select(file => file.Name).Append("results.json").ToList();
        return FilePlan.MakeAll(
            [.. plans, FilePlan.Text("results.json", Say.Of("all of it for programs"), () => ResultsJson.Of(outcome, names))], outcome.Cancellation);
    }

    /// <summary>The files of one of several carriers, without what is common to all: cut plan, order, work, care.</summary>
    internal static ImmutableArray<ResultFile> OfCarrier(JobRun outcome)
    {
        var (shape, drawings, context) = (outcome.Shape, outcome.Drawings, outcome.Context);
        ImmutableArray<FilePlan> plans =
        [
            FilePlan.Pdf("report.pdf", Say.Of("does it fit, where it goes, what it is made of"), Say.Of($"Report, {context.JobName}"), () => ReportSheets.OfCarrier(outcome.Carrier, context, shape)),
            RemovalPlan(outcome),
            .. PiecePapers(outcome, drawings),
            .. TopPictures(outcome, shape),
            .. CutterFiles.Of(outcome, drawings),
            .. PiecePlans(drawings),
        ];
        var names = plans.Select(file => file.Name).Append("results.json").ToList();
        return FilePlan.MakeAll(
            [.. plans, FilePlan.Text("results.json", Say.Of("what concerns this carrier, for programs"), () => ResultsJson.OfCarrier(outcome, names))], outcome.Cancellation);
    }

    /// <summary>What could not be made, and why, a sentence each; none when all is there.</summary>
    public static ImmutableArray<string> LeftOut(JobRun outcome, IEnumerable<ResultFile> files) => outcome.Spoken<ImmutableArray<string>>(() =>
        ShapeSheet.WhyNot(outcome.Pieces) is { } why
            ? [.. PlotFiles.LeftOut(outcome, files), Say.Of($"Left out {ShapeName}.svg and {ShapeName}.png. {why}")]
            : [.. PlotFiles.LeftOut(outcome, files)]);

    /// <summary>What is printed.</summary>
    private static IEnumerable<FilePlan> Papers(JobRun outcome, ImmutableArray<PieceDrawing> drawings, Sheet? shape)
    {
        var (content, context) = (outcome.Content, outcome.Context);
        return
        [
            FilePlan.Pdf("report.pdf", Say.Of("does it fit, what to buy, in which order to work"), Say.Of($"Report, {context.JobName}"), () => ReportSheets.Of(content, context, shape)),
            RemovalPlan(outcome),
            FilePlan.Pdf("care.pdf", Say.Of("form for the first day, card for stowing and checking, care calendar"), Say.Of($"Care, {context.JobName}"), () => CareSheets.Of(content.Patterns, context)),
            .. outcome.Wiring is { } wiring ? WiringFiles.Of(wiring, outcome.Job.Conditions.Heat, context) : [],
            .. CareCalendar(outcome),
            .. PiecePapers(outcome, drawings),
        ];
    }

    private static FilePlan RemovalPlan(JobRun outcome) => FilePlan.Pdf(
        "removal-card.pdf",
        Say.Of("at which wind the panel comes off, and how; to hang up"),
        Say.Of($"Removal card, {outcome.Context.JobName}"),
        () => [RemovalCard.Of(outcome.Pieces, outcome.Context)]);

    private static IEnumerable<FilePlan> PiecePlans(ImmutableArray<PieceDrawing> drawings) =>
        drawings.Select(drawing => FilePlan.Svg($"pieces/{drawing.Piece.Key.Id}.svg", Say.Of($"{drawing.Title}, true size"), drawing.ToSheet));

    /// <summary>The pieces on paper.</summary>
    private static IEnumerable<FilePlan> PiecePapers(JobRun outcome, ImmutableArray<PieceDrawing> drawings)
    {
        var context = outcome.Context;
        return
        [
            FilePlan.Pdf("templates.pdf", Say.Of($"Templates, {context.JobName}"), () => Templates(outcome, drawings)),
            .. PlotFiles.Of(drawings, outcome).Select(file => file.Name.EndsWith(".svg", StringComparison.Ordinal)
                ? FilePlan.Svg(file.Name, file.Tells, () => file.Sheets[0])
                : FilePlan.Pdf(file.Name, file.Tells, Say.Of($"{context.JobName}, true size"), () => file.Sheets)),
        ];
    }

    /// <summary>What is looked at.</summary>
    private static IEnumerable<FilePlan> Pictures(JobRun outcome, Sheet? shape)
    {
        Sheet CutPlan() => CutPlanSheet.Of(outcome.Plan, outcome.Context);
        return
        [
            .. TopPictures(outcome, shape),
            FilePlan.Svg("cut-plan.svg", Say.Of("the pieces on the roll"), CutPlan),
            FilePlan.Png("cut-plan.png", Say.Of("the same as a picture"), CutPlan),
        ];
    }

    /// <summary>The top, from above and in space.</summary>
    private static IEnumerable<FilePlan> TopPictures(JobRun outcome, Sheet? shape)
    {
        var samePicture = Say.Of("the same as a picture");
        Sheet Placement() => outcome.Placement;
        return
        [
            FilePlan.Svg("placement.svg", Say.Of("the top from above, with the marks"), Placement),
            FilePlan.Png("placement.png", samePicture, Placement),
            .. shape is null ? ImmutableArray<FilePlan>.Empty :
            [
                FilePlan.Svg($"{ShapeName}.svg", Say.Of("the top in space, with tubes and carrier"), () => shape),
                FilePlan.Png($"{ShapeName}.png", samePicture, () => shape),
            ],
        ];
    }

    private static IEnumerable<FilePlan> CareCalendar(JobRun outcome)
    {
        var job = outcome.Job;
        if (job.Care.Fitted is { } fitted)
        {
            yield return FilePlan.Text("care.ics", Say.Of("what is due when, for a calendar program"), () => CareCalendarFile.Of(job.Name, fitted, CarePlan.Of(job)));
        }
    }

    private static (IReadOnlyList<Sheet> Sheets, string Tells) Templates(JobRun outcome, ImmutableArray<PieceDrawing> drawings)
    {
        var (paper, context) = (outcome.Job.Workshop.Paper, outcome.Context);
        var sheets = TilePages.Of(
            [.. drawings.Select(drawing => new TilePiece(drawing.Piece.Key.Id, drawing.Title, drawing.Figures))],
            new(Say.Of("Templates"), context.JobName, context.Footer),
            PaperPages.LayoutOf(paper));
        return (sheets, Say.Of($"the pieces true size, {sheets.Length} pages {paper.Name}, to print at 100 %"));
    }
}
