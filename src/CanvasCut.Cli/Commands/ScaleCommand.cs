using System.CommandLine;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary><c>canvascut scale</c>, and <c>canvascut scale --read-x X --read-y Y JOB</c></summary>
internal static class ScaleCommand
{
    private const string UsualFile = "scale-test.pdf";
    private const string UsualPaper = "A4";

    public static Command Create(Faces faces)
    {
        var job = new Argument<string?>("JOB") { Description = Say.Of("With readings: the job whose templates are corrected."), Arity = ArgumentArity.ZeroOrOne };
        var paper = new Option<string?>("--paper") { Description = Say.Of($"The test page's paper ({UsualPaper}): {string.Join(", ", ScaleTest.Papers)}.") };
        var output = new Option<string?>("--out", "-o") { Description = Say.Of($"The test page ({UsualFile}), never one that exists; with readings the folder ({MakeCommand.UsualFolder}), replaced whole.") };
        var readX = new Option<string?>("--read-x") { Description = Say.Of("What the 100 mm square reads along the sheet's short side, in mm or with a unit.") };
        var readY = new Option<string?>("--read-y") { Description = Say.Of("What it reads along the long side.") };
        var command = new Command("scale", Say.Of("Prints a page to measure a printer by; with readings, corrects a job's templates for it.")) { job, paper, output, readX, readY };
        command.SetAction(parsed => Run(new(parsed.GetValue(job), parsed.GetValue(paper), parsed.GetValue(output), parsed.GetValue(readX), parsed.GetValue(readY)), faces));
        return command;
    }

    private static int Run(Typed typed, Faces faces)
    {
        if (typed.Complaint() is { } complaint)
        {
            faces.Errors.WriteLine(complaint);
            return ExitCode.WrongInput;
        }

        return typed.ReadX is null ? WriteTest(typed.Paper ?? UsualPaper, typed.Out ?? UsualFile, faces)
            : Readings(typed, faces) is { } readings ? MakeCommand.Run(typed.Job, typed.Out ?? MakeCommand.UsualFolder, (readings, SideNames.None), faces)
            : ExitCode.WrongInput;
    }

    private static int WriteTest(string paper, string path, Faces faces)
    {
        if (ScaleTest.Pdf(paper) is not { } bytes)
        {
            faces.Errors.WriteLine(Say.Of($"--paper \"{paper}\" is none of {string.Join(", ", ScaleTest.Papers)}."));
            return ExitCode.WrongInput;
        }

        if (!NewFile.Write(path, bytes.Span, faces))
        {
            return ExitCode.NotWritten;
        }

        faces.Output.WriteLine(Say.Of($"Wrote {path}. Print it at 100 % and measure; if the squares are off: canvascut scale --read-x 99.2 --read-y 99.8 job.toml, with your readings."));
        return ExitCode.Done;
    }

    private static PrintReadings? Readings(Typed typed, Faces faces)
    {
        var (x, y) = (Reading("--read-x", typed.ReadX!, faces), Reading("--read-y", typed.ReadY!, faces));
        return x is { } along && y is { } up ? new(along, up) : null;
    }

    private static UnitsNet.Length? Reading(string name, string text, Faces faces)
    {
        var reading = PrintReadings.Parse(text);
        var complaint = reading.Value is { } length ? PrintReadings.Complaint(length) : $"\"{text}\" {reading.Reason}";
        if (complaint is null)
        {
            return reading.Value;
        }

        faces.Errors.WriteLine($"{name} {complaint}");
        return null;
    }

    /// <summary>What was typed.</summary>
    private sealed record Typed(string? Job, string? Paper, string? Out, string? ReadX, string? ReadY)
    {
        public string? Complaint() =>
            (ReadX is null) != (ReadY is null) ? Say.Of("--read-x and --read-y go together; a printer can be off one way and true the other.")
            : ReadX is not null && Job is null ? Say.Of("Readings need the job whose templates are to be corrected.")
            : ReadX is null && Job is not null ? Say.Of("A job needs --read-x and --read-y; without them scale prints its test page, for which no job is needed.")
            : ReadX is not null && Paper is not null ? Say.Of("--paper is for the test page; the paper of templates stands in the job file.")
            : Out is { } path && string.IsNullOrWhiteSpace(path) ? Say.Of("--out needs a name.")
            : null;
    }
}
