using System.CommandLine;
using CanvasCut.Job;
using CanvasCut.JobFiles;
using CanvasCut.Language;
using CanvasCut.Measuring;

namespace CanvasCut.Cli;

/// <summary><c>canvascut measure FILE</c></summary>
internal static class MeasureCommand
{
    private const string UsualFile = "measuring-sheet.pdf";
    private const string UsualPaper = "A4";

    public static Command Create(Faces faces)
    {
        var file = new Argument<string?>("FILE") { Description = Say.Of("The measures, in the form of docs/measuring.md."), Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints the residuals for programs.") };
        var into = new Option<string?>("--into") { Description = Say.Of("Carries the adjusted figures over into this job file: their values are exchanged, all else stands as it was.") };
        var top = new Option<bool>("--top") { Description = Say.Of("Prints the adjusted figures alone, as tables to paste into a job file.") };
        var print = new Option<bool>("--print") { Description = Say.Of("Writes the sheet to take to the boat instead.") };
        var paper = new Option<string?>("--paper") { Description = Say.Of($"The sheet's paper ({UsualPaper}): {string.Join(", ", MeasuringPage.Papers)}.") };
        var output = new Option<string?>("--out", "-o") { Description = Say.Of($"The sheet's file ({UsualFile}), never one that exists.") };
        var command = new Command("measure", Say.Of("Tells whether the measures of a top agree, and which is most likely wrong; prints the sheet to measure by.")) { file, json, into, top, print, paper, output };
        command.SetAction(parsed => Run(new(parsed.GetValue(file), new(parsed.GetValue(json), parsed.GetValue(into), parsed.GetValue(top)), parsed.GetValue(print), parsed.GetValue(paper), parsed.GetValue(output)), faces));
        return command;
    }

    private static int Run(Typed typed, Faces faces)
    {
        if (typed.Complaint() is { } complaint)
        {
            faces.Errors.WriteLine(complaint);
            return ExitCode.WrongInput;
        }

        return typed.Print ? WriteSheet(typed.Paper ?? UsualPaper, typed.Out ?? UsualFile, faces) : Adjust(typed.File!, typed.Wanted, faces);
    }

    private static int WriteSheet(string paper, string path, Faces faces)
    {
        if (!NewFile.Write(path, MeasuringPage.Pdf(paper)!.Value.Span, faces))
        {
            return ExitCode.NotWritten;
        }

        faces.Output.WriteLine(Say.Of($"Wrote {path}. Fill it in at the boat, write the readings in a file, then: canvascut measure measures.toml"));
        return ExitCode.Done;
    }

    private static int Adjust(string path, Wanted wanted, Faces faces)
    {
        if (TextSource.Read(path, Say.Of("measures file"), Say.Of("docs/measuring.md shows one"), faces) is not { } text)
        {
            return ExitCode.NotWritten;
        }

        var top = MeasuresFile.Read(text, path);
        if (!top.IsValid)
        {
            foreach (var problem in top.Problems)
            {
                faces.Errors.WriteLine(problem);
            }

            faces.Errors.WriteLine(top.Problems.Length == 1 ? Say.Of("1 problem. docs/measuring.md tells of every field.") : Say.Of($"{top.Problems.Length} problems. docs/measuring.md tells of every field."));
            return ExitCode.WrongInput;
        }

        return Show(MeasureAdjustment.Of(top.Value), wanted, faces);
    }

    private static int Show(MeasureAdjustment adjustment, Wanted wanted, Faces faces)
    {
        if (wanted.Json)
        {
            faces.Output.Write(MeasureJson.Of(adjustment));
        }
        else if (!wanted.Top || !adjustment.Agrees)
        {
            MeasureTable.Write(adjustment, faces);
        }

        if (!adjustment.Agrees)
        {
            if (wanted.Top || wanted.Into is not null)
            {
                faces.Errors.WriteLine(Say.Of("Measures that do not agree are not carried over into a job."));
            }

            return ExitCode.CheckFailed;
        }

        if (wanted.Top)
        {
            MeasureInto.Print(JobTop.Of(adjustment), faces);
        }

        return wanted.Into is { } job ? MeasureInto.Write(JobTop.Of(adjustment), job, faces) : ExitCode.Done;
    }

    /// <summary>In which form the figures are wanted; as a table when none is named.</summary>
    private sealed record Wanted(bool Json, string? Into, bool Top)
    {
        public bool IsNamed => Json || Top || Into is not null;
    }

    /// <summary>What was typed.</summary>
    private sealed record Typed(string? File, Wanted Wanted, bool Print, string? Paper, string? Out)
    {
        public string? Complaint() =>
            !Print && File is null ? Say.Of("measure needs a file of measures, or --print for a sheet to measure by.")
            : Print && File is not null ? Say.Of("--print writes an empty sheet and takes no file.")
            : Print && Wanted.IsNamed ? Say.Of("--json, --into and --top are for measures, not for the sheet.")
            : Wanted is { Json: true, Top: true } or { Json: true, Into: not null } or { Top: true, Into: not null } ? Say.Of("--json, --into and --top do not go together.")
            : Wanted.Into is { } into && string.IsNullOrWhiteSpace(into) ? Say.Of("--into needs the name of a job file.")
            : !Print && (Paper ?? Out) is not null ? Say.Of("--paper and --out go with --print.")
            : Out is { } path && string.IsNullOrWhiteSpace(path) ? Say.Of("--out needs a name.")
            : Paper is { } paper && !MeasuringPage.Papers.Contains(paper, StringComparer.OrdinalIgnoreCase) ? Say.Of($"--paper \"{paper}\" is none of {string.Join(", ", MeasuringPage.Papers)}.")
            : null;
    }
}
