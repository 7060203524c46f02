using System.CommandLine;
using System.Globalization;
using CanvasCut.Job;
using CanvasCut.Language;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut compare DIR</c></summary>
internal static class CompareCommand
{
    public static Command Create(Faces faces)
    {
        var folder = new Argument<string>("DIR") { Description = Say.Of("A folder that make wrote.") };
        var command = new Command("compare", Say.Of("Reads the drawings of a results folder again and measures every cut line.")) { folder };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), faces));
        return command;
    }

    private static int Run(string folder, Faces faces)
    {
        if (ResultsComparison.Of(folder) is not { Count: > 0 } lines)
        {
            faces.Errors.WriteLine(Say.Of($"{folder} is no results folder: it has no results.json that this program wrote."));
            return ExitCode.NotWritten;
        }

        WriteTable(lines, faces);
        var wrong = lines.Where(line => !line.IsTrue).ToList();
        foreach (var line in wrong)
        {
            faces.Output.WriteLine(TroubleOf(line));
        }

        if (lines.Where(line => line.Distance is not null).MaxBy(line => line.Distance!.Value.Millimeters) is { } worst)
        {
            faces.Output.WriteLine(Say.Of($"Farthest off: {Mm(worst)} mm, {worst.Piece} in {worst.File}."));
        }

        faces.Output.WriteLine(wrong.Count == 0
            ? Say.Of($"All {lines.Count} cut lines are true to {ComparedLine.Allowed.Millimeters} mm.")
            : Say.Of("Do not cut by these files; make them again."));
        return wrong.Count == 0 ? ExitCode.Done : ExitCode.CheckFailed;
    }

    private static void WriteTable(IEnumerable<ComparedLine> lines, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(new TableColumn(Say.Of("File")), new TableColumn(Say.Of("Piece")), new TableColumn(Say.Of("Off, mm")).RightAligned(), new TableColumn(Say.Of("Verdict")));
        foreach (var line in lines)
        {
            table.AddRow(new Text(line.File), new Text(line.Piece), new Text(Mm(line)), new Text(line.IsTrue ? Say.Of("true") : Say.Of("NOT TRUE")));
        }

        faces.Console().Write(table);
    }

    private static string TroubleOf(ComparedLine line) => line.Distance is null
        ? $"{line.File} {line.Trouble}"
        : Say.Of($"{line.File}: the cut line of {line.Piece} lies up to {Mm(line)} mm off.");

    private static string Mm(ComparedLine line) => line.Distance?.Millimeters.ToString("0.0000", CultureInfo.InvariantCulture) ?? "-";
}
