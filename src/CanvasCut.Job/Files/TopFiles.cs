using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Sheets;

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
        ImmutableArray<ResultFile> own = [.. run.Mountings.SelectMany(each => ResultFiles.Of(each).Select(file => file with { Name = $"{FolderOf(each)}/{file.Name}" }))];
        var common = Common(run);
        string[] names = [.. common.Select(plan => plan.Name), "results.json", .. own.Select(file => file.Name)];
        return
        [
            .. FilePlan.MakeAll([.. common, FilePlan.Text("results.json", Say.Of("what there is, for programs"), () => TopJson.Of(run, names))], run.Mountings[0].Cancellation),
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
        return
        [
            FilePlan.Svg("placement.svg", Say.Of("the top from above with every carrier, and the marks"), Placement),
            FilePlan.Png("placement.png", samePicture, Placement),
            FilePlan.Svg("cut-plan.svg", Say.Of("the pieces of every carrier on one roll"), CutPlan),
            FilePlan.Png("cut-plan.png", samePicture, CutPlan),
            FilePlan.Text("order.csv", Say.Of("what to buy for all of it, for a spreadsheet"), () => OrderCsv.Of(run.Purchase)),
            .. run.Top.HasSeveral && run.Wiring is { } wiring ? WiringFiles.Of(wiring, run.Top.First.Conditions.Heat, run.Context) : [],
        ];
    }
}
