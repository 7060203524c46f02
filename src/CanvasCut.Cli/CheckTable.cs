using CanvasCut.Checks;
using CanvasCut.Job;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary>Shows the results of checks.</summary>
internal static class CheckTable
{
    /// <summary>One row a check; faults and cautions are followed by what to do.</summary>
    public static void Write(JobOutcome outcome, Faces faces)
    {
        var units = outcome.Context.Units;
        var table = new Table { Border = TableBorder.Simple, ShowRowSeparators = false };
        table.AddColumns("Verdict", "Check", "What", "Found", "Limit");
        foreach (var check in outcome.Content.Checks)
        {
            table.AddRow(
                new Markup(Markup.Escape(CheckText.Of(check.Verdict)), StyleOf(check.Verdict)),
                new Text(check.Code),
                new Text(check.Subject),
                new Text(CheckText.ValueOf(check, units)),
                new Text(CheckText.LimitOf(check, units)));
        }

        faces.Console().Write(table);
        WriteAdvice(outcome, faces);
        faces.Output.WriteLine(CheckText.Count(outcome.Content.Checks));
    }

    /// <summary>What to do about each check that did not pass, alike advice only once.</summary>
    public static void WriteAdvice(JobOutcome outcome, Faces faces)
    {
        foreach (var alike in outcome.Content.Checks
            .Where(check => check.Verdict != Verdict.Pass)
            .OrderBy(check => check.Verdict is Verdict.Fail ? 0 : 1)
            .GroupBy(check => (check.Verdict, check.Code, check.Advice)))
        {
            faces.Output.WriteLine($"{CheckText.Of(alike.Key.Verdict)} {alike.Key.Code}: {string.Join("; ", alike.Select(check => check.Subject))}");
            faces.Output.WriteLine($"    {alike.Key.Advice}");
        }
    }

    private static Style StyleOf(Verdict verdict) => verdict switch
    {
        Verdict.Fail => new Style(Color.Red, decoration: Decoration.Bold),
        Verdict.Caution => new Style(Color.Yellow),
        Verdict.NotChecked => new Style(decoration: Decoration.Dim),
        _ => Style.Plain,
    };
}
