using System.Collections.Immutable;
using System.Text;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Export.Pdf;
using CanvasCut.Export.Png;
using CanvasCut.Export.Svg;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Makes every file of the results.</summary>
public static class ResultFiles
{
    /// <summary>Dots per millimetre of a picture; 8 is about 200 an inch.</summary>
    private const double PictureDotsPerMm = 6;

    private const string ShapeName = "top-shape";

    /// <summary>The files, those to look at first before the others.</summary>
    public static ImmutableArray<ResultFile> Of(JobOutcome outcome)
    {
        var (content, context) = (outcome.Content, outcome.Context);
        var drawings = PieceDrawing.All(content.Patterns, context);
        var (paper, templates) = (content.Patterns.Job.Workshop.Paper, Templates(drawings, content.Patterns.Job.Workshop.Paper, context));
        var (placement, cutPlan) = (PlacementSheet.Of(content.Patterns, context), CutPlanSheet.Of(content.Plan, context));
        ImmutableArray<ResultFile> files =
        [
            Pdf("report.pdf", ReportSheets.Of(content, context), $"Report, {context.JobName}", "does it fit, what to buy, in which order to work"),
            Pdf("removal-card.pdf", [RemovalCard.Of(content.Patterns, context)], $"Removal card, {context.JobName}", "at which wind the panel comes off, and how; to hang up"),
            Pdf("care.pdf", CareSheets.Of(content.Patterns, context), $"Care, {context.JobName}", "form for the first day, card for stowing and checking, care calendar"),
            .. CareCalendar(outcome),
            Pdf("templates.pdf", templates, $"Templates, {context.JobName}", FormattableString.Invariant($"the pieces true size, {templates.Length} pages {paper.Name}, to print at 100 %")),
            .. PlotFiles.Of(drawings, outcome).Select(file => file.Name.EndsWith(".svg", StringComparison.Ordinal)
                ? Svg(file.Sheets[0], file.Name, file.Tells)
                : Pdf(file.Name, file.Sheets, $"{context.JobName}, true size", file.Tells)),
            Svg(placement, "placement.svg", "the top from above, with the marks"),
            Png(placement, "placement.png", "the same as a picture"),
            .. Shape(content, context),
            Svg(cutPlan, "cut-plan.svg", "the pieces on the roll"),
            Png(cutPlan, "cut-plan.png", "the same as a picture"),
            Text("order.csv", OrderCsv.Of(content), "what to buy, for a spreadsheet"),
            .. CutterFiles.Of(outcome, drawings),
            .. drawings.Select(drawing => Svg(drawing.ToSheet(), $"pieces/{drawing.Piece.Title.Id}.svg", $"{drawing.Title}, true size")),
        ];
        return files.Add(Text("results.json", ResultsJson.Of(outcome, files.Select(file => file.Name).Append("results.json")), "all of it for programs"));
    }

    /// <summary>What could not be made, and why, a sentence each; none when all is there.</summary>
    public static IEnumerable<string> LeftOut(JobOutcome outcome, IEnumerable<ResultFile> files) =>
        ShapeSheet.WhyNot(outcome.Content.Patterns) is { } why
            ? PlotFiles.LeftOut(outcome, files).Append($"Left out {ShapeName}.svg and {ShapeName}.png. {why}")
            : PlotFiles.LeftOut(outcome, files);

    private static ResultFile[] Shape(ReportContent content, SheetContext context) => ShapeSheet.Of(content.Patterns, context) is { } shape
        ? [Svg(shape, $"{ShapeName}.svg", "the top in space, with tubes and carrier"), Png(shape, $"{ShapeName}.png", "the same as a picture")]
        : [];

    private static IEnumerable<ResultFile> CareCalendar(JobOutcome outcome)
    {
        var job = outcome.Content.Patterns.Job;
        if (job.Care.Fitted is { } fitted)
        {
            yield return Text("care.ics", CareCalendarFile.Of(job.Name, fitted, CarePlan.Of(job)), "what is due when, for a calendar program");
        }
    }

    private static ImmutableArray<Sheet> Templates(ImmutableArray<PieceDrawing> drawings, PaperSpec paper, SheetContext context) => TilePages.Of(
        [.. drawings.Select(drawing => new TilePiece(drawing.Piece.Title.Id, drawing.Title, drawing.Figures))],
        new("Templates", context.JobName, context.Footer),
        PaperPages.LayoutOf(paper));

    private static ResultFile Pdf(string name, IReadOnlyList<Sheet> sheets, string title, string tells)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(sheets, title, stream);
        return new(name, stream.ToArray(), tells);
    }

    private static ResultFile Svg(Sheet sheet, string name, string tells) => Written(name, tells, output => SvgWriter.Write(sheet, output));

    private static ResultFile Png(Sheet sheet, string name, string tells)
    {
        using var stream = new MemoryStream();
        PngWriter.Write(sheet, PictureDotsPerMm, stream);
        return new(name, stream.ToArray(), tells);
    }

    private static ResultFile Text(string name, string text, string tells) => new(name, Encoding.UTF8.GetBytes(text), tells);

    /// <summary>A text file, its lines ended as everywhere.</summary>
    internal static ResultFile Written(string name, string tells, Action<TextWriter> write)
    {
        using var output = new StringWriter { NewLine = "\n" };
        write(output);
        return Text(name, output.ToString(), tells);
    }
}
