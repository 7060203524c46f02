using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary>Shows whether, or when, a panel can be bonded.</summary>
internal static class BondingTable
{
    private static string Maker => Say.Of("The adhesive maker's own sheet goes before these figures.");

    /// <summary>One day; 0 when the panel can be bonded, else 1.</summary>
    public static int WriteDay(BondingDay day, BondingLimits limits, Faces faces)
    {
        var checks = BondingWeather.Of(day, limits);
        if (day.Air is { } air && day.Humidity is { } humidity)
        {
            faces.Output.WriteLine(Say.Of($"Dew point {QuantityWords.Of(DewPoint.Of(air, humidity))}"));
        }

        WriteChecks(checks, faces);
        var isGood = checks.All(check => check.Verdict == Verdict.Pass);
        faces.Output.WriteLine(isGood ? Say.Of("Bond now. Press every strip hard; flat and weighted until the hours are over.")
            : checks.Any(check => check.Verdict == Verdict.Caution) ? Say.Of("Do not bond now.")
            : Say.Of("Not decided: something was not given; --air, --humidity, --surface and --hours bring it."));
        faces.Output.WriteLine(Maker);
        return isGood ? ExitCode.Done : ExitCode.CheckFailed;
    }

    /// <summary>The best hour of a forecast; 0 when there is a good one, else 1.</summary>
    public static int WriteBest(ImmutableArray<BondingStart> starts, string path, Faces faces)
    {
        var best = BondingStart.Best(starts);
        if (best is null)
        {
            var nearest = starts.MaxBy(start => start.Checks.Count(check => check.Verdict == Verdict.Pass))!;
            faces.Output.WriteLine(Say.Of($"No hour of {path} is good. The nearest is {When(nearest)}:"));
            WriteChecks(nearest.Checks, faces);
        }
        else
        {
            faces.Output.WriteLine(Say.Of($"Best start in {path}: {When(best)}, the driest of {starts.Count(start => start.IsGood)} good hours; the work is taken to last {BondingStart.HoursOfWork} hours, and the cure begins after it"));
            WriteChecks(best.Checks, faces);
        }

        faces.Output.WriteLine(Maker);
        return best is null ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static string When(BondingStart start) => start.Time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static void WriteChecks(ImmutableArray<CheckResult> checks, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(Say.Of("Verdict"), Say.Of("What"), Say.Of("Found"), Say.Of("Limit"));
        foreach (var check in checks)
        {
            table.AddRow(new Text(CheckText.Of(check.Verdict)), new Text(check.Subject), new Text(CheckText.ValueOf(check, PrintUnits.Both)), new Text(CheckText.LimitOf(check, PrintUnits.Both)));
        }

        faces.Console().Write(table);
        foreach (var advice in checks.Where(check => check.Verdict != Verdict.Pass).Select(check => check.Advice))
        {
            faces.Output.WriteLine(advice);
        }
    }
}
