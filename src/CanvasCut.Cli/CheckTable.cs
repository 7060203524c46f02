using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary>Shows the results of checks.</summary>
internal static class CheckTable
{
    /// <summary>One row a check, or, unless all are asked for, one for each kind that passed; then what to do.</summary>
    public static void Write(JobRun outcome, bool isEveryOne, Faces faces)
    {
        foreach (var notice in outcome.Notices)
        {
            faces.Output.WriteLine(notice);
        }

        var units = outcome.Context.Units;
        var table = new Table { Border = TableBorder.Simple, ShowRowSeparators = false };
        table.AddColumns(Say.Of("Verdict"), Say.Of("Check"), Say.Of("What"), Say.Of("Found"), Say.Of("Limit"));
        foreach (var row in isEveryOne ? outcome.Checks.Select(check => new CheckRow(check, 1)) : CheckRows.Of(outcome.Checks))
        {
            table.AddRow(
                new Markup(Markup.Escape(CheckText.Of(row.Check.Verdict)), StyleOf(row.Check.Verdict)),
                new Text(row.Check.Code),
                new Text(row.Subject),
                new Text(CheckText.ValueOf(row.Check, units)),
                new Text(CheckText.LimitOf(row.Check, units)));
        }

        faces.Console().Write(table);
        WriteAdvice(outcome, faces);
        faces.Output.WriteLine(CheckText.Count(outcome.Checks));
    }

    /// <summary>The room between the carriers of a top; nothing where there is one.</summary>
    public static void WriteBetween(TopRun top, Faces faces)
    {
        foreach (var check in top.Between)
        {
            faces.Output.WriteLine(Say.Of($"{CheckText.Of(check.Verdict)} {check.Code}: {check.Subject}, {CheckText.ValueOf(check, top.Context.Units)} between them; {CheckText.LimitOf(check, top.Context.Units)}"));
        }

        WriteAdvice(top.Between, faces);
    }

    /// <summary>The wiring of several carriers together; nothing where there is one.</summary>
    public static void WriteElectric(TopRun top, Faces faces)
    {
        if (top.Electric.IsEmpty)
        {
            return;
        }

        faces.Output.WriteLine(Say.Of($"Wiring of all panels: {CheckText.Count(top.Electric)}"));
        foreach (var row in CheckRows.Of(top.Electric))
        {
            string[] figures = [CheckText.ValueOf(row.Check, top.Context.Units), CheckText.LimitOf(row.Check, top.Context.Units)];
            faces.Output.WriteLine($"{CheckText.Of(row.Check.Verdict)} {row.Check.Code}: {string.Join("; ", figures.Where(text => text.Length > 0).Prepend(row.Subject))}");
        }

        WriteAdvice(top.Electric, faces);
    }

    /// <summary>What to do about each check that did not pass, alike advice only once.</summary>
    public static void WriteAdvice(JobRun outcome, Faces faces) => WriteAdvice(outcome.Checks, faces);

    /// <summary>The same of checks alone.</summary>
    public static void WriteAdvice(ImmutableArray<CheckResult> checks, Faces faces)
    {
        foreach (var alike in checks
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
