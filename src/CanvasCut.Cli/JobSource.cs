using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.JobFiles;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Gets a job from the command line's argument and works it out, or tells what is wrong with it.</summary>
internal static class JobSource
{
    /// <summary>Works out a job.</summary>
    /// <param name="path">The job file; null for the built-in example.</param>
    /// <param name="faces">Where to complain.</param>
    /// <param name="code">The exit code when there is no outcome.</param>
    public static JobRun? Read(string? path, Faces faces, out int code) => Read(path, (null, SideNames.None), faces, out code);

    /// <summary>The same for a printer that is not true, or with materials and prices of the user's own; of several panels for the one that is named.</summary>
    public static JobRun? Read(string? path, (PrintReadings? Readings, SideNames Side) given, Faces faces, out int code)
    {
        if (ReadTop(path, given, faces, out code) is not { } top)
        {
            return null;
        }

        if (Chosen(top, given.Side.Panel, faces) is not { } runs)
        {
            code = ExitCode.WrongInput;
            return null;
        }

        if (runs is [var only])
        {
            return only;
        }

        faces.Errors.WriteLine(Say.Of($"This job has several panels; name one with --panel: {NamesOf(top)}."));
        code = ExitCode.WrongInput;
        return null;
    }

    /// <summary>Works out all panels of a job, or the one that is named as if there were no other.</summary>
    public static TopRun? Whole(string? path, SideNames side, Faces faces, out int code)
    {
        if (ReadTop(path, (null, side), faces, out code) is not { } top)
        {
            return null;
        }

        if (Narrowed(top, side.Panel, faces) is { } meant)
        {
            return meant;
        }

        code = ExitCode.WrongInput;
        return null;
    }

    /// <summary>The whole top, or the panel that is named as if there were no other; null when there is no such panel, which is told.</summary>
    public static TopRun? Narrowed(TopRun top, string? panel, Faces faces) =>
        panel is null ? top : Chosen(top, panel, faces) is [var only] ? TopRun.Of(only) : null;

    /// <summary>Works out a job with all its panels.</summary>
    public static TopRun? ReadTop(string? path, (PrintReadings? Readings, SideNames Side) given, Faces faces, out int code) =>
        Read(path, given.Side, (text, name, side) => TopRun.Of(text, name, new() { Readings = given.Readings, Side = side, Watch = new PlanWatch(faces) }), faces, out code);

    /// <summary>The runs that are meant: that of the panel named, or all; null when there is no such panel, which is told.</summary>
    public static ImmutableArray<JobRun>? Chosen(TopRun top, string? panel, Faces faces)
    {
        if (panel is null)
        {
            return top.Mountings;
        }

        ImmutableArray<JobRun> named = [.. top.Mountings.Where(run => run.Job.Mounting == new MountingName(panel))];
        if (named.IsEmpty)
        {
            TellNoSuch(panel, top.Top.HasSeveral, [.. top.Mountings.Select(run => run.Job.Mounting)], faces);
        }

        return named.IsEmpty ? null : named;
    }

    /// <summary>Tells that a panel was named that there is not.</summary>
    public static void TellNoSuch(string panel, bool hasSeveral, ImmutableArray<MountingName> names, Faces faces) => faces.Errors.WriteLine(hasSeveral
        ? Say.Of($"--panel \"{panel}\" is no carrier of this job; there are {string.Join(", ", names)}.")
        : Say.Of("--panel is for jobs of several panels; this one has one."));

    private static string NamesOf(TopRun top) => string.Join(", ", top.Mountings.Select(run => run.Job.Mounting.Text));

    /// <summary>Reads a job without working it out.</summary>
    public static TopJob? ReadJob(string path, SideNames side, Faces faces, out int code) => Read(path, side, JobFile.Read, faces, out code);

    private static T? Read<T>(string? path, SideNames names, Func<string, string, SideFiles, Checked<T>> read, Faces faces, out int code)
        where T : class
    {
        code = ExitCode.NotWritten;
        var text = path is null ? BuiltInExample.Text : TextSource.Read(path, Say.Of("job file"), Say.Of($"canvascut new {path} begins one"), faces);
        if (text is null
            || !TryRead(names.Materials, Say.Of("materials file"), faces, out var materials)
            || !TryRead(names.Prices, Say.Of("price file"), faces, out var prices))
        {
            return null;
        }

        code = ExitCode.Done;
        var side = new SideFiles(name => Beside(path, name), materials, prices);
        var outcome = read(text, path ?? BuiltInExample.FileName, side);
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

    private static string Summary<T>(Checked<T> outcome)
        where T : class => outcome.Problems.Length == 1
        ? Say.Of("1 problem; nothing was written. docs/job-file.md tells of every field.")
        : Say.Of($"{outcome.Problems.Length} problems; nothing was written. docs/job-file.md tells of every field.");

    private static bool TryRead(string? path, string what, Faces faces, out NamedText? file)
    {
        var text = path is null ? null : TextSource.Read(path, what, Say.Of("canvascut order --help tells of it"), faces);
        file = text is null ? null : new(path!, text);
        return path is null || text is not null;
    }

    /// <summary>A file that a job names, looked for beside the job file; null when it cannot be read.</summary>
    private static NamedText? Beside(string? path, string name)
    {
        var full = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, name);
        return TextSource.ReadQuietly(full) is { } text ? new(full, text) : null;
    }
}
