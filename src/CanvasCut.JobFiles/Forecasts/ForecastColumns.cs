using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The columns of a forecast file; the order is the file's, and columns of other names are passed over.</summary>
internal sealed class ForecastColumns
{
    private const string Time = "time";
    private const string Air = "air_c";
    private const string Humidity = "humidity_percent";
    private const string Rain = "rain_mm";
    private const string Surface = "surface_c";
    private static readonly string[] Needed = [Time, Air, Humidity, Rain];
    private static readonly string[] TimeForms = ["yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss"];

    private readonly ImmutableArray<string> _heads;

    private ForecastColumns(ImmutableArray<string> heads) => _heads = heads;

    /// <summary>The columns that a head line names; null when one is missing or there twice, which is reported.</summary>
    public static ForecastColumns? Of(ForecastRow head, string fileName, ProblemLog log)
    {
        var missing = Needed.Where(name => !head.Fields.Contains(name)).ToList();
        var twice = Needed.Append(Surface).Where(name => head.Fields.Count(field => field == name) > 1).ToList();
        foreach (var name in missing)
        {
            log.Report(ForecastCode.Columns, new(fileName, head.Line, 1, name), Say.Of($"This column is missing; the head line needs {string.Join(", ", Needed)}, and may have {Surface}."));
        }

        foreach (var name in twice)
        {
            log.Report(ForecastCode.Columns, new(fileName, head.Line, head.Fields.LastIndexOf(name) + 1, name), Say.Of("This column is there twice; keep one."));
        }

        return missing.Count + twice.Count == 0 ? new(head.Fields) : null;
    }

    /// <summary>Where the time of a row stands.</summary>
    public Place TimePlace(ForecastRow row, string fileName) => new(fileName, row.Line, _heads.IndexOf(Time) + 1, Time);

    /// <summary>The hour that a row tells of; null when something in it is wrong, which is reported.</summary>
    public ForecastHour? Read(ForecastRow row, string fileName, ProblemLog log)
    {
        if (row.Fields.Length != _heads.Length)
        {
            log.Report(ForecastCode.Row, new(fileName, row.Line, 1, string.Empty), Say.Of($"This line has {row.Fields.Length} fields, and the head line {_heads.Length}."));
            return null;
        }

        var cells = new ForecastCells(row, _heads, fileName, log);
        var time = cells.Time(Time, TimeForms);
        var (air, humidity, rain) = (cells.Celsius(Air), cells.Number(Humidity, (0, 100), "is not a relative humidity above 0 and at most 100 %.", isOpenBelow: true), cells.Number(Rain, (0, 1000), "is no amount of rain in an hour."));
        var surface = _heads.Contains(Surface) ? cells.Celsius(Surface) : air;
        return time is { } known && air is { } warm && humidity is { } moist && rain is { } wet && surface is { } solid
            ? new(known, Temperature.FromDegreesCelsius(warm), RelativeHumidity.FromPercent(moist), Temperature.FromDegreesCelsius(solid), IsDry: wet <= 0)
            : null;
    }
}
