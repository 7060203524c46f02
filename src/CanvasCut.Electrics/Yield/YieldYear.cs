using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What a month gives a day.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Clear">On level ground on a clear day: no day has more.</param>
/// <param name="Sun">On level ground by the user's hours of sun; null when not known.</param>
/// <param name="Low">Half of what is likely.</param>
/// <param name="Likely">By the user's hours of sun.</param>
/// <param name="High">On a clear day, no shade, air behind the panels.</param>
public sealed record YieldMonth(int Month, Irradiation Clear, Irradiation? Sun, Energy? Low, Energy? Likely, Energy High);

/// <summary>What the panels give through a year, against what is used.</summary>
/// <param name="Months">All twelve.</param>
/// <param name="Load">What is used a day; null when not told.</param>
/// <param name="Store">What the bank holds of use; null when not known.</param>
/// <param name="Watts">The labels of all panels.</param>
/// <param name="Taken">What was taken for want of a figure.</param>
public sealed record YieldYear(ImmutableArray<YieldMonth> Months, Energy? Load, Energy? Store, Power Watts, YieldTaken Taken)
{
    /// <summary>The middle of each month, as a day of the year.</summary>
    private static readonly int[] Middles = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];

    /// <summary>gamma where the label is silent, %/K: the median of the 381 modules of the Sandia table.</summary>
    private const double UsualGamma = -0.49;

    /// <summary>The month with the least of what is likely; null without hours of sun.</summary>
    public YieldMonth? Weakest => Months.Where(month => month.Likely is not null).MinBy(month => month.Likely!.Value.WattHours);

    /// <summary>How many days the bank alone bridges; null when not known.</summary>
    public Duration? Autonomy => Load is { } load && Store is { } store && load > Energy.Zero ? Duration.FromDays(store / load) : null;

    /// <summary>The year of a wiring; missing when something is that it cannot do without.</summary>
    public static (YieldYear? Year, Missing Because) Of(WiringPlan plan, HeatSpec heat)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(heat);
        if (plan.Spec.Sun is not { } sun)
        {
            return (null, Missing.Sun);
        }

        if (plan.Spec.Bank is not { } bank)
        {
            return (null, Missing.Bank);
        }

        if (plan.Panels.Any(panel => panel.Label is null))
        {
            return (null, Missing.Label);
        }

        var months = Enumerable.Range(1, Middles.Length).Select(number => Month(plan, (sun, heat), number)).ToImmutableArray();
        return (new(
            months,
            plan.Spec.Loads.IsEmpty ? null : Energy.FromWattHours(plan.Spec.Loads.Sum(load => load.Energy.WattHours)),
            bank.Store is { Capacity: { } capacity, Usable: { } usable } ? Energy.FromWattHours(capacity.AmpereHours * bank.Usual.Volts * usable.DecimalFractions) : null,
            Power.FromWatts(plan.Panels.Sum(panel => (double)panel.Label!.Power.Watts)),
            new(plan.Panels.Any(panel => panel.Lies is null), plan.Panels.Any(panel => panel.Label!.PowerPerKelvin is null))), Missing.Nothing);
    }

    private static YieldMonth Month(WiringPlan plan, (SunSpec Sun, HeatSpec Heat) where, int number)
    {
        var (sun, day) = (where.Sun, Middles[number - 1]);
        var (_, most) = ClearSky.Day(sun.Latitude, day);
        var known = sun.Months.FirstOrDefault(month => month.Number == number);
        var level = known is null ? (Irradiation?)null : OnLevel(sun, day, known.Hours);
        var heat = where.Heat with { Air = known?.Air ?? where.Heat.Air };
        var likely = level is { } light ? OfDay(plan, (sun, day, heat), (light, IsBound: false)) : (Energy?)null;
        return new(number, most, level, likely * 0.5, likely, OfDay(plan, (sun, day, heat), (most, IsBound: true)));
    }

    /// <summary>Peak hours as they are; bright ones by Angstrom's formula in FAO-56, equation 35.</summary>
    public static Irradiation OnLevel(SunSpec sun, int dayOfYear, Duration hours)
    {
        ArgumentNullException.ThrowIfNull(sun);
        if (sun.HoursAre == SunHoursKind.Peak)
        {
            return Irradiation.FromWattHoursPerSquareMeter(hours.Hours * 1000);
        }

        var longest = ClearSky.DayLength(sun.Latitude, ClearSky.FaoDeclination(dayOfYear));
        return ClearSky.OutsideDay(sun.Latitude, dayOfYear) * (0.25 + (0.50 * Math.Min(1, hours / longest)));
    }

    private static Energy OfDay(WiringPlan plan, (SunSpec Sun, int Day, HeatSpec Heat) when, (Irradiation Level, bool IsBound) light) =>
        Energy.FromWattHours(plan.Controllers.Where(controller => !controller.Strings.IsEmpty).Sum(controller => OfController(plan, controller, when, light).WattHours));

    private static Energy OfController(WiringPlan plan, WiredController controller, (SunSpec Sun, int Day, HeatSpec Heat) when, (Irradiation Level, bool IsBound) light)
    {
        var bank = plan.Spec.Bank!;
        var given = controller.Strings.Sum(one => OfString(controller, one, when, light).WattHours);
        var hours = ClearSky.DayLength(when.Sun.Latitude, ClearSky.FaoDeclination(when.Day)).Hours;
        var most = controller.Spec.Output.Rated is { } rated ? rated.Amperes * bank.Usual.Volts * hours : double.PositiveInfinity;
        return Energy.FromWattHours(Math.Min(given, most));
    }

    /// <summary>A string in series gets what its worst-placed panel gets.</summary>
    private static Energy OfString(WiredController controller, WiredString one, (SunSpec Sun, int Day, HeatSpec Heat) when, (Irradiation Level, bool IsBound) light)
    {
        var (sun, heat) = (when.Sun, when.Heat);
        var days = one.Panels.Select(panel => ClearDay.Of(sun.Latitude, when.Day, panel.Lies ?? PanelLie.Level, (sun.Heading, sun.Albedo))).ToList();
        var plane = light.Level * days.Min(day => day.OfLevel.DecimalFractions);
        var usual = days[0].Level > Irradiation.Zero ? days[0].Usual * Math.Min(1, light.Level / days[0].Level) : Irradiance.Zero;
        var (free, blocked) = (CellTemperature.FreeBack(usual, heat.Air, heat.Wind), CellTemperature.BlockedBack(usual, heat.Air, heat.Wind));
        var cells = light.IsBound ? free : Temperature.FromDegreesCelsius((free.DegreesCelsius + blocked.DegreesCelsius) / 2);
        var isSwitch = controller.Spec.Kind == ControllerKind.PulseWidth;
        var label = isSwitch ? SwitchedPower(controller, one) : one.Power.Value!.Value;
        var gamma = isSwitch ? Ratio.Zero : Ratio.FromDecimalFractions(one.Panels.Min(panel => panel.Label!.PowerPerKelvin?.DecimalFractions ?? (UsualGamma / 100)));
        return YieldFormula.OfDay(label, plane, YieldFormula.Left(
            (gamma, cells), LostOf(controller, sun.Losses), light.IsBound ? Ratio.Zero : sun.Losses.Shade, isSwitch ? Ratio.FromPercent(100) : controller.Spec.Output.Efficiency));
    }

    /// <summary>A switch holds the panels at the bank's voltage: no more than their own.</summary>
    private static Power SwitchedPower(WiredController controller, WiredString one) => Power.FromWatts(
        Math.Min(controller.Electric.Bank!.Usual.Volts, one.PeakVoltage.Value!.Value.Volts) * one.Panels.Min(panel => panel.Label!.PeakCurrent.Amperes));

    /// <summary>All losses but shade, the wires at full current.</summary>
    public static Ratio LostOf(WiredController controller, SunLosses losses)
    {
        ArgumentNullException.ThrowIfNull(controller);
        ArgumentNullException.ThrowIfNull(losses);
        return YieldFormula.Together(losses.Soiling, losses.Mismatch, losses.Connections, losses.LightInduced, losses.Nameplate, WiresOf(controller));
    }

    /// <summary>What the wires lose, as a part: as reckoned at full current, or the most that is allowed.</summary>
    public static Ratio WiresOf(WiredController controller)
    {
        ArgumentNullException.ThrowIfNull(controller);
        var panel = controller is { PanelRun.Drop.Value: { } drop, HotPeak.Value: { } hot } ? Ratio.FromDecimalFractions(drop / hot) : controller.Electric.Wires.Panel.Drop;
        var bank = controller is { BankRun.Drop.Value: { } fall, Absorption.Value: { } full } ? Ratio.FromDecimalFractions(fall / full) : controller.Electric.Wires.Bank.Drop;
        return YieldFormula.Together(panel, bank);
    }
}

/// <summary>What was taken for want of a figure, to be told.</summary>
/// <param name="Level">That panels lie level, for the top's shape is not known.</param>
/// <param name="Gamma">The modules' median for the change of power with heat.</param>
public sealed record YieldTaken(bool Level, bool Gamma);
