using System.CommandLine;
using CanvasCut.Job;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut order JOB</c></summary>
internal static class OrderCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = "The job file." };
        var csv = new Option<bool>("--csv") { Description = "Prints what order.csv would hold." };
        var command = new Command("order", "Tells what to buy; writes nothing.") { job, csv };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetValue(csv), faces));
        return command;
    }

    private static int Run(string path, bool asCsv, Faces faces)
    {
        if (JobSource.Read(path, faces, out var code) is not { } outcome)
        {
            return code;
        }

        if (asCsv)
        {
            faces.Output.Write(OrderCsv.Of(outcome.Content.Order));
        }
        else
        {
            WriteTable(outcome, faces);
        }

        return outcome.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static void WriteTable(JobOutcome outcome, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns("Item", "Quantity", "Unit", "That is", "For");
        foreach (var line in outcome.Content.Order)
        {
            table.AddRow(new Text(line.Item), new Text(line.Quantity), new Text(line.Unit), new Text(line.Also), new Text(line.For));
        }

        faces.Console().Write(table);
        faces.Output.WriteLine($"Cloth: {ProofText.Of(outcome.Content.Plan, outcome.Context.Units)}");
        if (outcome.HasFailed)
        {
            faces.Output.WriteLine($"{outcome.Context.Warning}: run check before you buy.");
        }
    }
}
