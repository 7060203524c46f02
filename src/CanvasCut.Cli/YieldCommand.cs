using System.CommandLine;
using CanvasCut.Checks;
using CanvasCut.Electrics;
using CanvasCut.Language;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut yield JOB</c></summary>
internal static class YieldCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file, with its [electric.sun] table.") };
        var command = new Command("yield", Say.Of("Tells what the panels give a day through the year, against what is used; writes nothing.")) { job };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), faces));
        return command;
    }

    private static int Run(string path, Faces faces)
    {
        if (JobSource.ReadTop(path, (null, SideNames.None), faces, out var code) is not { } top)
        {
            return code;
        }

        if (top.Wiring is not { } plan)
        {
            faces.Errors.WriteLine(Say.Of("This job tells nothing of its wiring; docs/job-file.md tells of [electric]."));
            return ExitCode.WrongInput;
        }

        var (year, because) = YieldYear.Of(plan, top.Top.First.Conditions.Heat);
        if (year is null)
        {
            faces.Errors.WriteLine(ElectricWords.Of(because));
            return ExitCode.WrongInput;
        }

        var words = YieldText.Months(year);
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns([.. words.Heads]);
        foreach (var row in words.Rows)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        faces.Console().Write(table);
        foreach (var note in YieldText.Notes(year, plan))
        {
            faces.Output.WriteLine(note);
        }

        return ExitCode.Done;
    }
}
