using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads the fields of one row by the names of their columns; null for what is wrong, which is reported.</summary>
internal sealed class ForecastCells(ForecastRow row, ImmutableArray<string> heads, string fileName, ProblemLog log)
{
    public DateTime? Time(string name, string[] forms) =>
        DateTime.TryParseExact(Text(name), forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? time
            : Report<DateTime>(ForecastCode.Unreadable, name, Say.Of("is not a time; write it as in 2026-05-14 09:00, by the clock of the place."));

    public double? Celsius(string name) => Number(name, (-90, 100), Say.Of("is colder or hotter than any air or cloth; it must be in °C."));

    public double? Number(string name, (double From, double To) range, string complaint, bool isOpenBelow = false)
    {
        const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(Text(name), Styles, CultureInfo.InvariantCulture, out var number))
        {
            return Report<double>(ForecastCode.Unreadable, name, Say.Of("is not a number; write digits, with a point before decimals and without a unit."));
        }

        var isLow = isOpenBelow ? number <= range.From : number < range.From;
        return isLow || number > range.To ? Report<double>(ForecastCode.Impossible, name, complaint) : number;
    }

    private string Text(string name) => row.Fields[heads.IndexOf(name)];

    private T? Report<T>(string code, string name, string complaint)
        where T : struct
    {
        var text = Text(name);
        log.Report(code, new(fileName, row.Line, heads.IndexOf(name) + 1, name), text.Length == 0 ? Say.Of("is empty.") : $"\"{(text.Length > 30 ? text[..30] + "..." : text)}\" {complaint}");
        return null;
    }
}
