using System.CommandLine;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Sheets;

namespace CanvasCut.Cli;

/// <summary><c>canvascut make [JOB] [--out DIR]</c></summary>
internal static class MakeCommand
{
    /// <summary>The folder that is written when none is named.</summary>
    public const string UsualFolder = "canvascut-out";

    public static Command Create(Faces faces)
    {
        var job = new Argument<string?>("JOB") { Description = Say.Of("The job file; without one the built-in example runs."), Arity = ArgumentArity.ZeroOrOne };
        var folder = new Option<string>("--out", "-o") { Description = Say.Of("The folder to write, replaced whole."), DefaultValueFactory = _ => UsualFolder };
        var command = new Command("make", Say.Of("Makes templates, cut plan, report and order of a job.")) { job, folder };
        var side = new SideOptions();
        side.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetValue(job), parsed.GetRequiredValue(folder), (null, side.Of(parsed)), faces));
        return command;
    }

    /// <summary>Makes all files of a job.</summary>
    public static int Run(string? path, string folder, (PrintReadings? Readings, SideNames Side) given, Faces faces)
    {
        if (string.IsNullOrWhiteSpace(folder))
        {
            faces.Errors.WriteLine(Say.Of("--out needs the name of a folder."));
            return ExitCode.WrongInput;
        }

        if (JobSource.ReadTop(path, given, faces, out var code) is not { } top)
        {
            return code;
        }

        if (JobSource.Narrowed(top, given.Side.Panel, faces) is not { } meant)
        {
            return ExitCode.WrongInput;
        }

        return meant.IsOnlyOne ? MakeOne(path, folder, meant.Mountings[0], faces) : MakeSeveral(folder, meant, faces);
    }

    private static int MakeOne(string? path, string folder, JobRun outcome, Faces faces)
    {
        if (FolderWriter.Write(folder, outcome, faces) is not { } files)
        {
            return ExitCode.NotWritten;
        }

        Tell(path, folder, outcome, files, faces);
        return outcome.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static int MakeSeveral(string folder, TopRun top, Faces faces)
    {
        if (FolderWriter.Write(folder, top, faces) is not { } files)
        {
            return ExitCode.NotWritten;
        }

        var output = faces.Output;
        output.WriteLine(top.Context.JobName);
        foreach (var run in top.Mountings)
        {
            output.WriteLine(Say.Of($"Carrier \"{TopFiles.FolderOf(run)}\": {CheckText.Count(run.Checks)}"));
            CheckTable.WriteAdvice(run, faces);
        }

        CheckTable.WriteBetween(top, faces);
        CheckTable.WriteElectric(top, faces);
        output.WriteLine(Say.Of($"Wrote {files.Count} files to {folder}:"));
        foreach (var file in files.Where(file => !file.Name.Contains('/', StringComparison.Ordinal)))
        {
            output.WriteLine($"  {file.Name,-18} {file.Tells}");
        }

        foreach (var run in top.Mountings)
        {
            output.WriteLine($"  {TopFiles.FolderOf(run) + "/",-18} {Say.Of("checks, templates and pieces of this carrier")}");
        }

        var sets = top.Top.Copies > 1 ? Say.Of($" for {top.Top.Copies} sets") : string.Empty;
        if (top.Purchase.Cost is { } cost)
        {
            output.WriteLine(cost.Summary);
        }

        output.WriteLine(Say.Of($"Cloth{sets}, all pieces on one roll: {LengthText.Of(top.Plan.Ordered, top.Context.Units)}."));
        output.WriteLine(Say.Of($"Look first at {Path.Combine(folder, "report.pdf")}, then at the report.pdf of each carrier; print each templates.pdf at 100 %, never \"fit to page\"."));
        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static void Tell(string? path, string folder, JobRun outcome, IReadOnlyCollection<ResultFile> files, Faces faces)
    {
        var output = faces.Output;
        output.WriteLine(path is null
            ? Say.Of($"{outcome.Context.JobName} (no job named, so the built-in example; \"new job.toml\" begins your own)")
            : outcome.Context.JobName);
        output.WriteLine(CheckText.Count(outcome.Checks));
        CheckTable.WriteAdvice(outcome, faces);
        output.WriteLine(Say.Of($"Wrote {files.Count} files to {folder}:"));
        var pieces = files.Where(file => file.Name.StartsWith("pieces/", StringComparison.Ordinal)).ToList();
        foreach (var file in files.Except(pieces))
        {
            output.WriteLine($"  {file.Name,-18} {file.Tells}");
        }

        output.WriteLine($"  {"pieces/",-18} {Say.Of($"{pieces.Count} pieces, one true-size drawing each")}");
        foreach (var sentence in ResultFiles.LeftOut(outcome, files))
        {
            output.WriteLine(sentence);
        }

        if (outcome.Purchase.Cost is { } cost)
        {
            output.WriteLine(cost.Summary);
        }

        output.WriteLine(Say.Of($"Look first at {Path.Combine(folder, "report.pdf")}; then print {Path.Combine(folder, "templates.pdf")} at 100 %, never \"fit to page\"."));
        if (outcome.HasFailed)
        {
            output.WriteLine(Say.Of($"{outcome.Context.Warning}: do not cut before this is settled."));
        }
    }
}
