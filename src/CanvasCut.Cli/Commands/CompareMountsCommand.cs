using System.CommandLine;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.Language;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut compare-mounts JOB</c></summary>
internal static class CompareMountsCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file.") };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints the comparison for programs.") };
        var command = new Command("compare-mounts", Say.Of("Puts every way to hold the carrier's edges side by side; writes nothing.")) { job, json };
        var side = new SideOptions();
        side.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetValue(json), side.Of(parsed), faces));
        return command;
    }

    private static int Run(string path, bool asJson, SideNames side, Faces faces)
    {
        if (JobSource.Read(path, (null, side), faces, out var code) is not { } outcome)
        {
            return code;
        }

        var comparison = MountComparison.Of(outcome);
        if (asJson)
        {
            faces.Output.Write(MountComparisonJson.Of(outcome, comparison));
        }
        else
        {
            WriteTable(comparison, outcome.Context.Units, faces);
        }

        return ExitCode.Done;
    }

    private static void WriteTable(MountComparison comparison, PrintUnits units, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumn(new TableColumn(Say.Of("Edges held by")).NoWrap());
        table.AddColumns(Say.Of("Pieces"), Say.Of("Rows"), Say.Of("Hours"), Say.Of("Cost"), Say.Of("Moves"), Say.Of("Renew first"), Say.Of("Edges hold"), Say.Of("Off at"), Say.Of("Failed"));
        foreach (var choice in comparison.Choices)
        {
            table.AddRow(Row(choice, units).Select(cell => new Text(cell)));
        }

        faces.Console().Write(table);
        faces.Output.WriteLine(Say.Of("Moves are those of the hand that take it off; winds are gusts: to which the edges hold, and at which it must be off; failed are checks. Hours are estimates. Where it is not known what the edges hold to, \"?\" leaves them out: give mount.snaps.strength and its like. Flutter is not reckoned; if the cloth shakes, take it off at once."));
    }

    private static string[] Row(MountChoice choice, PrintUnits units)
    {
        var name = choice.IsTheJobs ? Say.Of($"{choice.Name.Replace(", ", ",\n", StringComparison.Ordinal)}\n(as in the job)") : choice.Name;
        return choice.Figures is not { } found
            ? [name, "-", "-", "-", "-", "-", "-", "-", "-", Say.Of("no room")]
            :
            [
                name,
                found.Pieces.ToString(CultureInfo.InvariantCulture),
                units == PrintUnits.Imperial ? FormattableString.Invariant($"{found.Seam.Feet:0} ft") : FormattableString.Invariant($"{found.Seam.Meters:0.0} m"),
                FormattableString.Invariant($"{found.Work.Bench.Hours:0.0}"),
                CostOf(found),
                found.RemovalActions.ToString(CultureInfo.InvariantCulture),
                found.Wear.Months is { } months ? Say.Of($"{months} months: {Say.Within(found.Wear.What)}") : Say.Of("no figure"),
                EdgesOf(found),
                OffOf(found),
                found.FailedChecks.ToString(CultureInfo.InvariantCulture),
            ];
    }

    /// <summary>A wind that no boat carries a top in is told as such.</summary>
    private static string EdgesOf(MountFiguresFound found) => !found.Wind.KnowsEdges || found.Wind.EdgesHoldTo is not { } hold ? Say.Of("not known")
        : hold.Knots > 64 ? Say.Of("over 64 kn")
        : FormattableString.Invariant($"{LimitWords.Knots(hold)} kn");

    private static string OffOf(MountFiguresFound found) => !found.Wind.KnowsPull ? Say.Of("not known")
        : FormattableString.Invariant($"{LimitWords.Knots(found.Wind.OffAt)} kn{(found.Wind.KnowsEdges ? string.Empty : "?")}");

    private static string CostOf(MountFiguresFound found) => found.Cost is not { } cost ? Say.Of("no prices")
        : cost.Unpriced == 0 ? $"{cost.List.Money.Currency} {cost.Text(cost.Total)}"
        : Say.Of($"{cost.List.Money.Currency} {cost.Text(cost.Total)}, {cost.Unpriced} lines unpriced");
}
