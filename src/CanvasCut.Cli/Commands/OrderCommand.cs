using System.CommandLine;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut order JOB</c></summary>
internal static class OrderCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file.") };
        var csv = new Option<bool>("--csv") { Description = Say.Of("Prints what order.csv would hold.") };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints the order for programs.") };
        var command = new Command("order", Say.Of("Tells what to buy and what it costs; writes nothing.")) { job, csv, json };
        var side = new SideOptions();
        side.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), (parsed.GetValue(csv), parsed.GetValue(json)), side.Of(parsed), faces));
        return command;
    }

    private static int Run(string path, (bool AsCsv, bool AsJson) how, SideNames side, Faces faces)
    {
        if (how is { AsCsv: true, AsJson: true })
        {
            faces.Errors.WriteLine(Say.Of("--csv and --json do not go together."));
            return ExitCode.WrongInput;
        }

        if (JobSource.Whole(path, side, faces, out var code) is not { } top)
        {
            return code;
        }

        if (how.AsCsv)
        {
            faces.Output.Write(OrderCsv.Of(top.Purchase));
        }
        else if (how.AsJson)
        {
            faces.Output.Write(OrderJson.Of(top));
        }
        else
        {
            WriteTable(top, faces);
        }

        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static void WriteTable(TopRun top, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(Say.Of("Item"), Say.Of("Buy"), Say.Of("That is"), Say.Of("Rounded"), Say.Of("For"));
        foreach (var line in top.Purchase.Order)
        {
            table.AddRow(
                new Text(line.Item),
                new Text($"{line.Quantity} {Say.Of(line.Unit)}"),
                new Text(line.Bought.Other is { } other ? FormattableString.Invariant($"{other.Number} {Say.Of(other.Unit)}") : string.Empty),
                new Text(line.Rounding),
                new Text($"{line.Use.Text}; {line.Also}"));
        }

        faces.Console().Write(table);
        faces.Output.WriteLine(Say.Of($"Cloth: {ProofText.Of(top.Plan, top.Context.Units)}"));
        if (top.Purchase.Cost is { } cost)
        {
            WriteCost(cost, faces);
        }

        if (top.HasFailed)
        {
            faces.Output.WriteLine(Say.Of($"{top.Context.Warning}: run check before you buy."));
        }
    }

    private static void WriteCost(OrderCost cost, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(Say.Of("Item"), Say.Of("Price"), Say.Of("Amount"));
        foreach (var line in cost.Lines)
        {
            table.AddRow(
                new Text(line.Line.Item),
                new Text(line.Price is { } price ? Say.Of($"{price.Amount:0.00##} per {Say.Of(price.Per)}") : Say.Of("no price")),
                new Text(line.Amount is { } amount ? cost.Text(amount) : "-"));
        }

        foreach (var (name, amount) in new[] { (Say.Of("materials"), cost.Materials), (Say.Of("waste"), cost.Waste), (Say.Of("labour"), cost.Labour) })
        {
            table.AddRow(new Text(name), new Text(string.Empty), new Text(cost.Text(amount)));
        }

        faces.Console().Write(table);
        faces.Output.WriteLine(cost.Summary);
    }
}
