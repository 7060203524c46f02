using CanvasCut.Design;
using CanvasCut.Job;

namespace CanvasCut.Cli;

/// <summary>Gets a job from the command line's argument and works it out, or tells what is wrong with it.</summary>
internal static class JobSource
{
    /// <summary>Works out a job.</summary>
    /// <param name="path">The job file; null for the built-in example.</param>
    /// <param name="faces">Where to complain.</param>
    /// <param name="code">The exit code when there is no outcome.</param>
    public static JobOutcome? Read(string? path, Faces faces, out int code) => Read(path, readings: null, faces, out code);

    /// <summary>The same for a printer that is not true; readings null for what the file says of it.</summary>
    public static JobOutcome? Read(string? path, PrintReadings? readings, Faces faces, out int code)
    {
        code = ExitCode.Done;
        var text = path is null ? BuiltInExample.Text : TextSource.Read(path, "job file", $"canvascut new {path} begins one", faces);
        if (text is null)
        {
            code = ExitCode.NotWritten;
            return null;
        }

        var outcome = JobOutcome.Of(text, path ?? BuiltInExample.FileName, readings);
        if (outcome.IsValid)
        {
            return outcome.Value;
        }

        foreach (var problem in outcome.Problems)
        {
            faces.Errors.WriteLine(problem);
        }

        faces.Errors.WriteLine(Summary(outcome));
        code = ExitCode.WrongInput;
        return null;
    }

    private static string Summary(Checked<JobOutcome> outcome) => outcome.Problems.Length == 1
        ? "1 problem; nothing was written. docs/job-file.md tells of every field."
        : $"{outcome.Problems.Length} problems; nothing was written. docs/job-file.md tells of every field.";
}
