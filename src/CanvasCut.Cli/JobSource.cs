using CanvasCut.Design;
using CanvasCut.Job;

namespace CanvasCut.Cli;

/// <summary>Gets a job from the command line's argument and works it out, or tells what is wrong with it.</summary>
internal static class JobSource
{
    /// <summary>A job file larger than this is something else.</summary>
    private const long MostBytes = 1 << 20;

    /// <summary>Works out a job.</summary>
    /// <param name="path">The job file; null for the built-in example.</param>
    /// <param name="faces">Where to complain.</param>
    /// <param name="code">The exit code when there is no outcome.</param>
    public static JobOutcome? Read(string? path, Faces faces, out int code) => Read(path, readings: null, faces, out code);

    /// <summary>The same for a printer that is not true; readings null for what the file says of it.</summary>
    public static JobOutcome? Read(string? path, PrintReadings? readings, Faces faces, out int code)
    {
        code = ExitCode.Done;
        var text = path is null ? BuiltInExample.Text : TextOf(path, faces);
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

    private static string? TextOf(string path, Faces faces)
    {
        if (Directory.Exists(path))
        {
            faces.Errors.WriteLine($"{path} is a folder; name the job file in it.");
            return null;
        }

        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
            {
                faces.Errors.WriteLine($"{path} is larger than a job file can be; is it the right file?");
                return null;
            }

            return File.ReadAllText(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            var isMissing = exception is FileNotFoundException or DirectoryNotFoundException;
            faces.Errors.WriteLine(isMissing ? $"There is no file {path}; canvascut new {path} begins one." : $"{path} cannot be read: {exception.Message}");
            return null;
        }
    }
}
