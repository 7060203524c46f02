using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Makes every file of a top's results: a folder for each of several mountings, and beside them what is common to all.</summary>
public static class TopFiles
{
    /// <summary>The files, those to look at first before the others.</summary>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static ImmutableArray<ResultFile> Of(TopRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.IsOnlyOne ? ResultFiles.Of(run.Mountings[0]) : run.Spoken(() => Several(run));
    }

    private static ImmutableArray<ResultFile> Several(TopRun run)
    {
        ImmutableArray<ResultFile> own = [.. run.Mountings.SelectMany(each => ResultFiles.OfCarrier(each).Select(file => file with { Name = $"{FolderOf(each)}/{file.Name}" }))];
        var common = Common(run);
        string[] names = [.. common.Select(plan => plan.Name), "results.json", .. own.Select(file => file.Name)];
        return
        [
            .. FilePlan.MakeAll([.. common, FilePlan.Text("results.json", Say.Of("what there is, for programs"), () => ResultsJson.Of(run, names))], run.Mountings[0].Cancellation),
            .. own,
        ];
    }

    /// <summary>The folder of a mounting among the results.</summary>
    public static string FolderOf(JobRun mounting)
    {
        ArgumentNullException.ThrowIfNull(mounting);
        return mounting.Job.Mounting.IsOnly ? "carrier" : mounting.Job.Mounting.Text;
    }

    private static ImmutableArray<FilePlan> Common(TopRun run)
    {
        var samePicture = Say.Of("the same as a picture");
        Sheet Placement() => run.Placement;
        Sheet CutPlan() => CutPlanSheet.Of(run.Plan, run.Context);
        ImmutableArray<(PatternSet, SheetContext)> carriers = [.. run.Mountings.Select(each => (each.Pieces, each.Context))];
        var (content, context, job) = (run.Content, run.Context, run.Top.First);
        return
        [
            FilePlan.Pdf("report.pdf", Say.Of("does it fit, what to buy, in which order to work"), Say.Of($"Report, {context.JobName}"), () => TopReport.Of(content, context)),
            FilePlan.Pdf("removal-card.pdf", Say.Of("at which wind each panel comes off, and how; to hang up"), Say.Of($"Removal card, {context.JobName}"), () => TopRemovalCard.Of(carriers, context)),
            FilePlan.Pdf("care.pdf", Say.Of("form for the first day, card for stowing and checking, care calendar"), Say.Of($"Care, {context.JobName}"), () => CareSheets.Of(carriers, context)),
            .. job.Care.Fitted is { } fitted ? [FilePlan.Text("care.ics", Say.Of("what is due when, for a calendar program"), () => CareCalendarFile.Of(job.Name, fitted, CarePlan.Of([.. run.Mountings.Select(each => each.Job)])))] : Array.Empty<FilePlan>(),
            FilePlan.Svg("placement.svg", Say.Of("the top from above with every carrier, and the marks"), Placement),
            FilePlan.Png("placement.png", samePicture, Placement),
            FilePlan.Svg("cut-plan.svg", Say.Of("the pieces of every carrier on one roll"), CutPlan),
            FilePlan.Png("cut-plan.png", samePicture, CutPlan),
            FilePlan.Text("order.csv", Say.Of("what to buy for all of it, for a spreadsheet"), () => OrderCsv.Of(run.Purchase)),
            .. run.Top.HasSeveral && run.Wiring is { } wiring ? WiringFiles.Of(wiring, run.Top.First.Conditions.Heat, run.Context) : [],
        ];
    }
}
