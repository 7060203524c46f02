using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Whether a panel can be bonded on a day.</summary>
public static class BondingWeather
{
    /// <summary>What to do when the adhesive was pressed on too cold; foam tape sellers' pages.</summary>
    public static string BondedCold =>
        Say.Of("Bonded cold already? Warm panel and carrier gently, in the sun or with a hair dryer, never above 65 °C and never with a flame; press every strip again, hard; then begin the curing hours anew.");

    private static string Window => Say.Of("bonding.least_surface, bonding.most_surface, bonding.hard_stop");

    /// <summary>Surface, dew and the hours after, each with a verdict; what was not given is not checked.</summary>
    public static ImmutableArray<CheckResult> Of(BondingDay day, BondingLimits limits) => [Surface(day, limits), Dew(day, limits), Clear(day, limits)];

    private static CheckResult Surface(BondingDay day, BondingLimits limits)
    {
        var subject = Say.Of("surface to be bonded");
        if (day.Surface is not { } surface)
        {
            return Missing(CheckCodes.BondingSurface, subject, Window, "bonding.surface");
        }

        var isHot = surface > limits.MostSurface;
        var measured = isHot ? Measured.AtMost(surface, limits.MostSurface) : Measured.AtLeast(surface, limits.LeastSurface);
        var advice = isHot ? Say.Of("Too hot: the adhesive grabs before it lies right and slides while hot. Work in the shade, or early.")
            : surface < limits.HardStop ? Say.Of($"Do not bond: far too cold, the adhesive is stiff and does not wet the surface. {BondedCold}")
            : Say.Of($"Do not bond yet: too cold. Warm the place, the panel and the carrier first. {BondedCold}");
        return CheckResult.Judged((CheckCodes.BondingSurface, subject), measured, Verdict.Caution, Window, advice);
    }

    private static CheckResult Dew(BondingDay day, BondingLimits limits)
    {
        var subject = Say.Of("surface above the dew point");
        var source = Say.Of("bonding.dew_margin; Magnus formula, WMO-No. 8");
        string[] missing = [.. Names((day.Air is null, "bonding.air"), (day.Humidity is null, "bonding.humidity"), (day.Surface is null, "bonding.surface"))];
        return missing.Length > 0
            ? Missing(CheckCodes.BondingDew, subject, source, missing)
            : CheckResult.Judged(
                (CheckCodes.BondingDew, subject),
                Measured.AtLeast(MarginOf(day.Air!.Value, day.Humidity!.Value, day.Surface!.Value), limits.DewMargin),
                Verdict.Caution,
                source,
                Say.Of("Do not bond: moisture that you cannot see lies on the surface, or soon will. Wait until it is warmer or drier, or warm the surface."));
    }

    private static CheckResult Clear(BondingDay day, BondingLimits limits)
    {
        var subject = Say.Of($"dry hours after bonding, {LimitWords.Least(limits.HardStop)} or warmer");
        const string Source = "work.cure, bonding.hard_stop";
        return day.Clear is not { } clear
            ? Missing(CheckCodes.BondingClear, subject, Source, "bonding.clear_hours")
            : CheckResult.Judged(
                (CheckCodes.BondingClear, subject),
                Measured.AtLeast(clear, limits.Cure),
                Verdict.Caution,
                Source,
                Say.Of("The bond is not full before rain or cold comes: wait for a longer spell, or bond and cure it indoors, flat and weighted."));
    }

    /// <summary>How far a surface is above the dew point of the air; below zero when it is wet.</summary>
    public static TemperatureDelta MarginOf(Temperature air, RelativeHumidity humidity, Temperature surface) =>
        TemperatureDelta.FromDegreesCelsius(surface.DegreesCelsius - DewPoint.Of(air, humidity).DegreesCelsius);

    private static IEnumerable<string> Names(params (bool IsMissing, string Field)[] fields) => fields.Where(field => field.IsMissing).Select(field => field.Field);

    private static CheckResult Missing(string code, string subject, string source, params string[] fields) =>
        new(code, subject, Verdict.NotChecked, Measured.Nothing, source, Say.Of($"Not given: {string.Join(", ", fields)}."));
}
