using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;
using CsvHelper;
using CsvHelper.Configuration;

namespace CanvasCut.JobFiles;

/// <summary>Reads forecasts: comma-separated values after RFC 4180 with a head line.</summary>
public static class ForecastFile
{
    /// <summary>The forecast that a text holds, or every problem in it at once, in the order of the text.</summary>
    /// <param name="text">The file's text; docs/weather.md tells its columns.</param>
    /// <param name="fileName">As the user gave it; stands before each problem, with the line and the number of the field in it.</param>
    /// <returns>Never throws for any text.</returns>
    public static Checked<Forecast> Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        var log = new ProblemLog();
        var rows = Rows(text, fileName, log);
        var hours = rows.Count > 0 && ForecastColumns.Of(rows[0], fileName, log) is { } columns ? Hours(rows, columns, fileName, log) : [];
        if (hours.IsEmpty && log.IsEmpty)
        {
            log.Report(ForecastCode.Empty, new(fileName, 1, 1, string.Empty), Say.Of("There is no hour in it; write a head line and a line for each hour."));
        }

        return log.Finish(() => new Forecast(hours));
    }

    private static List<ForecastRow> Rows(string text, string fileName, ProblemLog log)
    {
        var (line, isBroken) = (1, false);
        var settings = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            BadDataFound = _ => isBroken = true,
            TrimOptions = TrimOptions.Trim,
        };
        using var reader = new StringReader(text.TrimStart('\uFEFF'));
        using var parser = new CsvParser(reader, settings);
        var rows = new List<ForecastRow>();
        while (parser.Read())
        {
            // The library looks at quotation marks only when the fields are asked for.
            var fields = parser.Record ?? [];
            if (isBroken)
            {
                log.Report(ForecastCode.Row, new(fileName, line, 1, string.Empty), Say.Of("A quotation mark stands astray; a field in quotes has one at each end."));
            }

            rows.Add(new(line, [.. fields], isBroken));
            (line, isBroken) = (parser.RawRow + 1, false);
        }

        return rows;
    }

    private static ImmutableArray<ForecastHour> Hours(List<ForecastRow> rows, ForecastColumns columns, string fileName, ProblemLog log)
    {
        var hours = ImmutableArray.CreateBuilder<ForecastHour>();
        ForecastHour? before = null;
        foreach (var row in rows.Skip(1))
        {
            var hour = row.IsBroken ? null : columns.Read(row, fileName, log);
            if (hour is not null && before is not null && hour.Time != before.Time.AddHours(1))
            {
                log.Report(ForecastCode.Hours, columns.TimePlace(row, fileName), Say.Of($"is not one hour after the line before; {before.Time.AddHours(1):yyyy-MM-dd HH:mm} should follow."));
            }

            before = hour;
            if (hour is not null)
            {
                hours.Add(hour);
            }
        }

        return hours.ToImmutable();
    }
}
