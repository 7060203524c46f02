using System.CommandLine;
using System.Globalization;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut work JOB</c></summary>
internal static class WorkCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file.") };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints what results.json holds under \"work\".") };
        var panel = SideOptions.Panel();
        var command = new Command("work", Say.Of("Tells in which order to work, and on which day; writes nothing.")) { job, json, panel };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetValue(json), parsed.GetValue(panel), faces));
        return command;
    }

    private static int Run(string path, bool asJson, string? panel, Faces faces)
    {
        if (JobSource.Whole(path, SideNames.None with { Panel = panel }, faces, out var code) is not { } top)
        {
            return code;
        }

        if (asJson)
        {
            faces.Output.Write(WorkJson.Of(top));
        }
        else
        {
            WriteTable(top, faces);
        }

        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static void WriteTable(TopRun top, Faces faces)
    {
        var order = top.Work;
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(Say.Of("No"), Say.Of("Day"), Say.Of("What"), Say.Of("Time"), Say.Of("Before going on"));
        foreach (var each in order.Steps)
        {
            table.AddRow(
                new Text(each.Number.ToString(CultureInfo.InvariantCulture)),
                new Text(each.Day.ToString(CultureInfo.InvariantCulture)),
                new Text(NameOf(each.Step, top.Top.HasSeveral)),
                new Text(WorkText.Time(each.Step.Time)),
                new Text(each.Step.Advice.Check));
        }

        faces.Console().Write(table);
        faces.Output.WriteLine(Say.Of($"{WorkText.Total(order)} Times are estimates. report.pdf tells how to do each step, with what, and what can hurt."));
        if (WorkText.Sets(top.Made) is { Length: > 0 } sets)
        {
            faces.Output.WriteLine(sets);
        }

        if (top.HasFailed)
        {
            faces.Output.WriteLine(Say.Of($"{top.Context.Warning}: do not cut before this is settled."));
        }
    }

    /// <summary>The name, and of several carriers whose things the step is about.</summary>
    private static string NameOf(WorkStep step, bool tellsWhose) =>
        tellsWhose && !step.Whose.IsEmpty ? $"{step.Task.Name} ({string.Join(", ", step.Whose)})" : step.Task.Name;
}
