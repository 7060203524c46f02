using System.Collections.Immutable;
using System.CommandLine;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut cloth JOB [--all] [--json]</c></summary>
internal static class ClothCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file.") };
        var all = new Option<bool>("--all") { Description = Say.Of("Lists the ways too that ask for more and save no cloth.") };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints every way for programs.") };
        var command = new Command("cloth", Say.Of("Compares the rolls on sale, with and without turning pieces or a seam in the carrier; writes nothing.")) { job, all, json };
        var side = new SideOptions();
        side.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), (parsed.GetValue(all), parsed.GetValue(json)), side.Of(parsed), faces));
        return command;
    }

    private static int Run(string path, (bool All, bool AsJson) how, SideNames side, Faces faces)
    {
        if (JobSource.Whole(path, side, faces, out var code) is not { } top)
        {
            return code;
        }

        var choices = ChoicesOf(top, faces);
        if (how.AsJson)
        {
            faces.Output.Write(ClothJson.Of(top, choices));
        }
        else
        {
            WriteTable(top, choices, how.All, faces);
        }

        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static ImmutableArray<ClothChoice> ChoicesOf(TopRun top, Faces faces)
    {
        using var line = new LayoutLine(faces);
        return top.ClothChoices(line.Tell);
    }

    private static void WriteTable(TopRun top, ImmutableArray<ClothChoice> all, bool isEveryOne, Faces faces)
    {
        var (priced, context) = (top.Purchase.Cost, top.Context);
        var choices = isEveryOne ? all : ClothChoices.WorthTelling(all);
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns([Say.Of("No"), .. ClothChoiceText.Heads.SkipLast(1)]);
        foreach (var (i, choice) in choices.Index())
        {
            table.AddRow([new Text($"{i + 1}"), .. ClothChoiceText.Row(choice, priced, context).SkipLast(1).Select(cell => new Text(cell))]);
        }

        faces.Console().Write(table);
        faces.Output.WriteLine($"{ClothChoiceText.Heads[^1]}:");
        foreach (var (i, choice) in choices.Index())
        {
            faces.Output.WriteLine($"{i + 1,3}  {ClothChoiceText.GivenUp(choice)}");
        }

        foreach (var sentence in ClothChoiceText.Sentences(all, priced, context))
        {
            faces.Output.WriteLine(sentence);
        }

        if (!isEveryOne && ClothChoiceText.LeftOut(all) is { Length: > 0 } leftOut)
        {
            faces.Output.WriteLine(Say.Of($"{leftOut} --all lists them."));
        }

        if (top.HasFailed)
        {
            faces.Output.WriteLine(Say.Of($"{context.Warning}: run check before you buy."));
        }
    }
}
