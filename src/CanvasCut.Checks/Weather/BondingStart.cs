using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>An hour at which to begin, as a forecast has it.</summary>
/// <param name="Time">When.</param>
/// <param name="Day">The weather at that hour, and the clear time after it.</param>
/// <param name="Checks">What the checks say of the hour, and of the next one where that is worse.</param>
/// <param name="Margin">How far the surface is above the dew point, in the worse of the two hours.</param>
public sealed record BondingStart(DateTime Time, BondingDay Day, ImmutableArray<CheckResult> Checks, TemperatureDelta Margin)
{
    /// <summary>The hours of a forecast that the work takes; the cure begins after them.</summary>
    public static int HoursOfWork { get; } = (int)Math.Ceiling(BondingTimes.Whole.Hours);

    /// <summary>Whether everything is as it should be.</summary>
    public bool IsGood => Checks.All(check => check.Verdict == Verdict.Pass);

    /// <summary>
    /// Every hour of a forecast as a start. The clear time runs from the end of the work to the end of the last hour before
    /// rain, before the surface falls below the hard stop, or before the forecast ends.
    /// </summary>
    /// <param name="forecast">Hour by hour, without gaps.</param>
    /// <param name="limits">What the day must be like.</param>
    public static ImmutableArray<BondingStart> In(ImmutableArray<ForecastHour> forecast, BondingLimits limits) =>
        [.. Enumerable.Range(0, forecast.Length).Select(start => At(forecast.AsSpan()[start..], limits))];

    /// <summary>The best of the good starts: the one with the surface furthest above the dew point, of equals the first; null when none is good.</summary>
    public static BondingStart? Best(IEnumerable<BondingStart> starts) =>
        starts.Where(start => start.IsGood).OrderByDescending(start => Math.Round(start.Margin.DegreesCelsius, 6)).ThenBy(start => start.Time).FirstOrDefault();

    private static BondingStart At(ReadOnlySpan<ForecastHour> rest, BondingLimits limits)
    {
        var clear = 0;
        while (clear < rest.Length && rest[clear].IsDry && rest[clear].Surface >= limits.HardStop)
        {
            clear++;
        }

        var cured = Duration.FromHours(Math.Max(0, clear - HoursOfWork));
        var worked = rest[..Math.Min(rest.Length, HoursOfWork)].ToArray();
        var days = worked.Select(hour => new BondingDay(hour.Air, hour.Humidity, hour.Surface, cured)).ToList();
        var checks = days.SelectMany(day => BondingWeather.Of(day, limits)).GroupBy(check => check.Code).Select(alike => alike.MaxBy(check => check.Verdict)!);
        var margin = worked.Min(hour => BondingWeather.MarginOf(hour.Air, hour.Humidity, hour.Surface).DegreesCelsius);
        return new(rest[0].Time, days[0], [.. checks], TemperatureDelta.FromDegreesCelsius(margin));
    }
}
