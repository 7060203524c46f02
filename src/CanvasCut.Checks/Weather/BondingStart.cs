using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>An hour at which to begin, as a forecast has it.</summary>
/// <param name="Time">When.</param>
/// <param name="Day">The weather at that hour, and the clear time after it.</param>
/// <param name="Checks">What the checks say of it.</param>
/// <param name="MeanSurface">The mean of the surface over the curing hours, or what there is of them.</param>
public sealed record BondingStart(DateTime Time, BondingDay Day, ImmutableArray<CheckResult> Checks, Temperature MeanSurface)
{
    /// <summary>Whether everything is as it should be.</summary>
    public bool IsGood => Checks.All(check => check.Verdict == Verdict.Pass);

    /// <summary>
    /// Every hour of a forecast as a start. The clear time runs from the hour to the end of the last hour before rain, before
    /// the surface falls below the hard stop, or before the forecast ends.
    /// </summary>
    /// <param name="forecast">Hour by hour, without gaps.</param>
    /// <param name="limits">What the day must be like.</param>
    public static ImmutableArray<BondingStart> In(ImmutableArray<ForecastHour> forecast, BondingLimits limits) =>
        [.. Enumerable.Range(0, forecast.Length).Select(start => At(forecast.AsSpan()[start..], limits))];

    /// <summary>The best of the good starts: the warmest over the curing hours, of equals the first; null when none is good.</summary>
    public static BondingStart? Best(IEnumerable<BondingStart> starts) =>
        starts.Where(start => start.IsGood).OrderByDescending(start => Math.Round(start.MeanSurface.DegreesCelsius, 6)).ThenBy(start => start.Time).FirstOrDefault();

    private static BondingStart At(ReadOnlySpan<ForecastHour> rest, BondingLimits limits)
    {
        var clear = 0;
        while (clear < rest.Length && rest[clear].IsDry && rest[clear].Surface >= limits.HardStop)
        {
            clear++;
        }

        var first = rest[0];
        var day = new BondingDay(first.Air, first.Humidity, first.Surface, Duration.FromHours(clear));
        var cure = rest[..Math.Min(rest.Length, (int)Math.Ceiling(limits.Cure.Hours))].ToArray();
        return new(first.Time, day, BondingWeather.Of(day, limits), Temperature.FromDegreesCelsius(cure.Average(hour => hour.Surface.DegreesCelsius)));
    }
}
