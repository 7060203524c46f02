using System.Collections.Immutable;
using CanvasCut.JobFiles;
using CanvasCut.Language;
using CanvasCut.Measuring;

namespace CanvasCut.Cli;

/// <summary>Carries the adjusted figures of a top into a job file, or prints them for one.</summary>
internal static class MeasureInto
{
    private const string Width = "top.width";

    /// <summary>The tables top and top.bow, to paste into a job file; a blank where the job needs what was not measured.</summary>
    public static void Print(JobTop top, Faces faces)
    {
        faces.Output.WriteLine("[top]");
        WriteFigures(top.Top, ["length", "width"], faces);
        foreach (var bow in top.Bows)
        {
            WriteBow(bow, faces);
        }
    }

    /// <summary>Exchanges the values in a job file; the exit code.</summary>
    /// <remarks>Nothing is written when the job would be wrong then where it was not before.</remarks>
    public static int Write(JobTop top, string path, Faces faces)
    {
        if (EditedFile.Read(path, faces) is not { } file)
        {
            return ExitCode.NotWritten;
        }

        if (JobEdit.BowsIn(file.Text) is not { } bows)
        {
            Complain([.. Problems(file.Text, path)], path, faces);
            return ExitCode.WrongInput;
        }

        if (bows != 0 && bows != top.Bows.Length)
        {
            faces.Errors.WriteLine(Say.Of($"{path} has {bows} bows and the measures have {top.Bows.Length}, so which is which is not known. Nothing was written; --top prints the tables to paste."));
            return ExitCode.WrongInput;
        }

        var hasOutline = JobEdit.HasWidths(file.Text);
        var ofTop = OfTop(top).Where(value => !hasOutline || value.Path != Width);
        var edit = JobEdit.Of(file.Text, bows == 0 ? ofTop : ofTop.Concat(OfBows(top)));
        List<string> fresh = [.. Problems(edit.Text, path).Except(Problems(file.Text, path), StringComparer.Ordinal)];
        if (fresh.Count > 0)
        {
            Complain(fresh, path, faces);
            return ExitCode.WrongInput;
        }

        if (edit.Exchanged.Length > 0 && !file.Exchange(edit.Text, faces))
        {
            return ExitCode.NotWritten;
        }

        Tell(edit, path, faces);
        if (hasOutline && OfTop(top).FirstOrDefault(value => value.Path == Width) is { Value: { } width })
        {
            faces.Output.WriteLine(Say.Of($"{path} has its widths at stations, [[top.width_at]], and the measures know one width only, {width}: nothing was done with it. Hold the two against each other yourself."));
        }

        if (bows == 0 && top.Bows.Length > 0)
        {
            faces.Output.WriteLine(Say.Of($"{path} has no bows yet; paste these:"));
            top.Bows.ToList().ForEach(bow => WriteBow(bow, faces));
        }

        return ExitCode.Done;
    }

    private static void Tell(JobEdit edit, string path, Faces faces)
    {
        faces.Output.WriteLine(edit.Exchanged.Length == 0
            ? Say.Of($"{path} has these figures already; nothing was written.")
            : Say.Of($"{edit.Exchanged.Length} values of {path} are new, all else stands as it was:"));
        foreach (var value in edit.Exchanged)
        {
            faces.Output.WriteLine($"  {value.Path}: {value.Old} -> {value.New}");
        }

        if (edit.Absent.Length > 0)
        {
            faces.Output.WriteLine(Say.Of($"Measured, but no line of {path}: {string.Join(", ", edit.Absent)}. --top prints them to paste."));
        }
    }

    private static void Complain(List<string> problems, string path, Faces faces)
    {
        problems.ForEach(faces.Errors.WriteLine);
        faces.Errors.WriteLine(Say.Of($"{path} would be wrong so; nothing was written. --top prints the tables to paste."));
    }

    /// <summary>Without the columns, which a longer value shifts.</summary>
    private static IEnumerable<string> Problems(string text, string path) => JobFile.Read(text, path).Problems
        .Select(problem => $"{problem.Place.File}({problem.Place.Line}): {problem.Code}: {(problem.Place.Field.Length > 0 ? $"{problem.Place.Field}: " : string.Empty)}{problem.Message}");

    private static IEnumerable<(string Path, string Value)> OfTop(JobTop top) => top.Top.Select(figure => ($"top.{figure.Field}", figure.Value));

    private static IEnumerable<(string Path, string Value)> OfBows(JobTop top) =>
        top.Bows.Index().SelectMany(bow => bow.Item.Figures.Select(figure => ($"top.bow[{bow.Index + 1}].{figure.Field}", figure.Value)));

    private static void WriteBow(JobBow bow, Faces faces)
    {
        faces.Output.WriteLine();
        faces.Output.WriteLine($"[[top.bow]] # {bow.Name}");
        WriteFigures(bow.Figures, ["station"], faces);
    }

    private static void WriteFigures(ImmutableArray<JobFigure> figures, string[] needed, Faces faces)
    {
        foreach (var field in needed.Where(field => !figures.Any(figure => figure.Field == field)))
        {
            faces.Output.WriteLine($"{field} = \"\"");
        }

        foreach (var figure in figures)
        {
            faces.Output.WriteLine($"{figure.Field} = \"{figure.Value}\"");
        }
    }
}
