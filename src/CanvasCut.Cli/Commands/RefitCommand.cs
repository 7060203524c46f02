using System.CommandLine;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut refit OLD NEW [--out DIR | --json]</c></summary>
internal static class RefitCommand
{
    public static Command Create(Faces faces)
    {
        var old = new Argument<string>("OLD") { Description = Say.Of("The results.json, or its folder, that make wrote for what is sewn to the top.") };
        var job = new Argument<string>("NEW") { Description = Say.Of("The job file with the new panel.") };
        var folder = new Option<string?>("--out", "-o") { Description = Say.Of("A folder to write for the new carrier, replaced whole; not written when the panel does not fit.") };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints the answer for programs; writes nothing.") };
        var side = new SideOptions();
        var command = new Command("refit", Say.Of("Tells whether a new panel fits the half that is sewn to the top, and what is made anew.")) { old, job, folder, json };
        side.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetRequiredValue(old), (parsed.GetRequiredValue(job), side.Of(parsed)), (parsed.GetValue(folder), parsed.GetValue(json)), faces));
        return command;
    }

    private static int Run(string old, (string Path, SideNames Side) job, (string? Folder, bool AsJson) wanted, Faces faces)
    {
        if (wanted.Folder is { } folder && (string.IsNullOrWhiteSpace(folder) || wanted.AsJson))
        {
            faces.Errors.WriteLine(wanted.AsJson ? Say.Of("--json prints and writes no folder; leave out --out.") : Say.Of("--out needs the name of a folder."));
            return ExitCode.WrongInput;
        }

        if (JobSource.ReadTop(job.Path, (null, job.Side), faces, out var wrong) is not { } top)
        {
            return wrong;
        }

        if (top.Top.HasSeveral && job.Side.Panel is null)
        {
            return RunSeveral(old, top, wanted.Folder is not null || wanted.AsJson, faces);
        }

        var results = OldResults.Read(old);
        foreach (var problem in results.Problems)
        {
            faces.Errors.WriteLine(problem);
        }

        if (!results.IsValid)
        {
            faces.Errors.WriteLine(Say.Of("Nothing was written. docs/refit.md tells what the old results must hold."));
            return results.Problems.All(problem => problem.Code == ResultsCode.Missing) ? ExitCode.NotWritten : ExitCode.WrongInput;
        }

        if (JobSource.Narrowed(top, job.Side.Panel, faces)?.Mountings[0].Job is not { } read)
        {
            return ExitCode.WrongInput;
        }

        if (read.Row is not null)
        {
            faces.Errors.WriteLine(Say.Of($"refit takes a carrier with one panel, and {string.Join(", ", read.Panels.Select(panel => $"\"{panel.Name}\""))} share one in {job.Path}."));
            return ExitCode.WrongInput;
        }

        var outcome = RefitOutcome.Of(results.Value, read);
        if (wanted.AsJson)
        {
            faces.Output.Write(RefitJson.Of(results.Value.JobName, read.Name, outcome));
            return outcome.Made is { } made ? CodeOf(made) : ExitCode.CheckFailed;
        }

        faces.Output.WriteLine(Say.Of($"{read.Name}, on what is sewn for: {results.Value.JobName}"));
        return Tell(outcome, wanted.Folder, faces);
    }

    /// <summary>Tells of several carriers which stay and which are made anew, and why.</summary>
    private static int RunSeveral(string old, TopRun top, bool wantsOne, Faces faces)
    {
        if (wantsOne)
        {
            faces.Errors.WriteLine(Say.Of("--out and --json are for one carrier; name it with --panel, and the results.json in its old folder."));
            return ExitCode.WrongInput;
        }

        var carriers = CarrierRefit.All(old, top);
        foreach (var problem in carriers.Problems)
        {
            faces.Errors.WriteLine(problem);
        }

        if (!carriers.IsValid)
        {
            return carriers.Problems.All(problem => problem.Code == ResultsCode.Missing) ? ExitCode.NotWritten : ExitCode.WrongInput;
        }

        foreach (var carrier in carriers.Value)
        {
            faces.Output.WriteLine(carrier.Told);
        }

        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static int Tell(RefitOutcome outcome, string? folder, Faces faces)
    {
        var output = faces.Output;
        output.WriteLine(outcome.Verdict);
        WritePieces(outcome, faces);
        WriteRanges(outcome, faces);
        foreach (var line in outcome.Notes)
        {
            output.WriteLine(line);
        }

        if (outcome.Made is not { } made)
        {
            output.WriteLine(Say.Of("The smallest change after which it fits:"));
            foreach (var line in outcome.Changes)
            {
                output.WriteLine($"  {line}");
            }

            output.WriteLine(folder is null ? Say.Of("No carrier was drawn.") : Say.Of($"No carrier was drawn, and nothing was written to {folder}."));
            return ExitCode.CheckFailed;
        }

        CheckTable.WriteAdvice(made, faces);
        output.WriteLine(CheckText.Count(made.Checks));
        return folder is null ? CodeOf(made) : Write(folder, made, faces);
    }

    private static int Write(string folder, JobRun made, Faces faces)
    {
        if (FolderWriter.Write(folder, made, faces) is not { } files)
        {
            return ExitCode.NotWritten;
        }

        faces.Output.WriteLine(Say.Of($"Wrote {files.Count} files to {folder}, with the pieces of the carrier alone; look first at {Path.Combine(folder, "report.pdf")}."));
        return CodeOf(made);
    }

    private static int CodeOf(JobRun made) => made.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;

    private static void WritePieces(RefitOutcome outcome, Faces faces)
    {
        if (outcome.Pieces.IsEmpty)
        {
            return;
        }

        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(Say.Of("Piece"), Say.Of("Stays or anew"), Say.Of("Why"));
        foreach (var piece in outcome.Pieces)
        {
            table.AddRow(new Text(piece.Name), new Text(WordOf(piece.Fate)), new Text(piece.Why));
        }

        faces.Console().Write(table);
    }

    private static string WordOf(RefitFate fate) => fate switch
    {
        RefitFate.Stays => Say.Of("stays"),
        RefitFate.StaysAsSewn => Say.Of("stays as sewn"),
        RefitFate.Anew => Say.Of("ANEW"),
        RefitFate.NotOnTop => Say.Of("not on the top"),
        _ => Say.Of("not needed"),
    };

    private static void WriteRanges(RefitOutcome outcome, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(Say.Of("Panels that fit"), Say.Of("Borders as asked"), Say.Of("Borders may grow: length"), Say.Of("Width"), Say.Of("And"));
        foreach (var range in outcome.Ranges)
        {
            table.AddRow(new Text(range.Way), new Text(range.AsAsked), new Text(range.Length), new Text(range.Width), new Text(range.Further));
        }

        faces.Console().Write(table);
    }
}
