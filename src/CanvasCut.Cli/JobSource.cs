using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.JobFiles;

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
    public static JobOutcome? Read(string? path, Faces faces, out int code) => Read(path, (null, SideNames.None), faces, out code);

    /// <summary>The same for a printer that is not true, or with materials and prices of the user's own.</summary>
    public static JobOutcome? Read(string? path, (PrintReadings? Readings, SideNames Side) given, Faces faces, out int code)
    {
        code = ExitCode.NotWritten;
        var text = path is null ? BuiltInExample.Text : TextOf(path, faces);
        if (text is null
            || !TryRead(given.Side.Materials, faces, out var materials)
            || !TryRead(given.Side.Prices, faces, out var prices))
        {
            return null;
        }

        code = ExitCode.Done;
        var side = new SideFiles(name => Beside(path, name), materials, prices);
        var outcome = JobOutcome.Of(text, path ?? BuiltInExample.FileName, given.Readings, side);
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

    private static bool TryRead(string? path, Faces faces, out NamedText? file)
    {
        var text = path is null ? null : TextOf(path, faces, "canvascut order --help tells of it");
        file = text is null ? null : new(path!, text);
        return path is null || text is not null;
    }

    /// <summary>A file that a job names, looked for beside the job file; null when it cannot be read.</summary>
    private static NamedText? Beside(string? path, string name)
    {
        try
        {
            var full = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, name);
            return new FileInfo(full) is { Exists: true, Length: <= MostBytes } ? new(full, File.ReadAllText(full)) : null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    private static string? TextOf(string path, Faces faces) => TextOf(path, faces, $"canvascut new {path} begins one");

    private static string? TextOf(string path, Faces faces, string help)
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
            faces.Errors.WriteLine(isMissing ? $"There is no file {path}; {help}." : $"{path} cannot be read: {exception.Message}");
            return null;
        }
    }
}
