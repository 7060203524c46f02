using System.CommandLine;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.Sheets;

namespace CanvasCut.Cli;

/// <summary><c>canvascut make [JOB] [--out DIR]</c></summary>
internal static class MakeCommand
{
    /// <summary>The folder that is written when none is named.</summary>
    public const string UsualFolder = "canvascut-out";

    public static Command Create(Faces faces)
    {
        var job = new Argument<string?>("JOB") { Description = "The job file; without one the built-in example runs.", Arity = ArgumentArity.ZeroOrOne };
        var folder = new Option<string>("--out", "-o") { Description = "The folder to write, replaced whole.", DefaultValueFactory = _ => UsualFolder };
        var command = new Command("make", "Makes templates, cut plan, report and order of a job.") { job, folder };
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
            faces.Errors.WriteLine("--out needs the name of a folder.");
            return ExitCode.WrongInput;
        }

        if (JobSource.Read(path, given, faces, out var code) is not { } outcome)
        {
            return code;
        }

        if (FolderWriter.Write(folder, outcome, faces) is not { } files)
        {
            return ExitCode.NotWritten;
        }

        Tell(path, folder, outcome, files, faces);
        return outcome.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static void Tell(string? path, string folder, JobOutcome outcome, IReadOnlyCollection<ResultFile> files, Faces faces)
    {
        var output = faces.Output;
        output.WriteLine(path is null
            ? $"{outcome.Context.JobName} (no job named, so the built-in example; \"new job.toml\" begins your own)"
            : outcome.Context.JobName);
        output.WriteLine(CheckText.Count(outcome.Content.Checks));
        CheckTable.WriteAdvice(outcome, faces);
        output.WriteLine($"Wrote {files.Count} files to {folder}:");
        var pieces = files.Where(file => file.Name.StartsWith("pieces/", StringComparison.Ordinal)).ToList();
        foreach (var file in files.Except(pieces))
        {
            output.WriteLine($"  {file.Name,-18} {file.Tells}");
        }

        output.WriteLine($"  {"pieces/",-18} {pieces.Count} pieces, one true-size drawing each");
        foreach (var sentence in ResultFiles.LeftOut(outcome, files))
        {
            output.WriteLine(sentence);
        }

        if (outcome.Content.Cost is { } cost)
        {
            output.WriteLine(cost.Summary);
        }

        output.WriteLine($"Look first at {Path.Combine(folder, "report.pdf")}; then print {Path.Combine(folder, "templates.pdf")} at 100 %, never \"fit to page\".");
        if (outcome.HasFailed)
        {
            output.WriteLine($"{outcome.Context.Warning}: do not cut before this is settled.");
        }
    }
}
