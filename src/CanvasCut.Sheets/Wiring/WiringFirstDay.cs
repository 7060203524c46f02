using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The form of the first day: what each string should show in which light and heat, and room for what it shows.</summary>
internal static class WiringFirstDay
{
    private static readonly double[] Suns = [400, 600, 800, 1000];
    private static readonly double[] Heats = [25, 45, 65];

    /// <summary>How often there is room to write.</summary>
    private const int Readings = 3;

    /// <summary>Adds the form.</summary>
    public static void Add(Flow flow, WiringPlan plan)
    {
        flow.Heading(Say.Of("Form for the first day of the wiring"));
        flow.List(
        [
            Say.Of("Breaker off. First the poles: the meter shows plus where the label says plus."),
            Say.Of("Then the open voltage of each string, nothing connected; then the short-circuit current with a clamp through a switch, never by pulling leads apart."),
            Say.Of("Measure the back of a panel. Without a meter for the sun its strength follows from the short-circuit current."),
            Say.Of("Alike strings within 5 % of each other (IEC 62446-1, restated), the voltage within 3 % and the label's tolerance of what stands here, the current within 10 % (common practice, no source)."),
        ]);
        foreach (var one in plan.Strings)
        {
            flow.Heading(ElectricWords.Of(one));
            Expected(flow, one);
        }

        flow.Heading(Say.Of("Measured"));
        ImmutableArray<string> heads = [Say.Of("String"), Say.Of("Date, time"), Say.Of("Sky"), Say.Of("Back of panel"), Say.Of("Sun, W/m2"), Say.Of("Open, V"), Say.Of("Short, A"), Say.Of("Charging, A")];
        flow.Rows(Even(flow, heads), [.. Enumerable.Range(0, Readings).SelectMany(_ => plan.Strings).Select(one => ImmutableArray.Create(ElectricWords.Of(one), " ", " ", " ", " ", " ", " ", " "))]);
        flow.Text(string.Empty);
        flow.Text(Say.Of("canvascut wiring JOB --open V --short A --back C tells what a reading means. Night current over 0.05 A is a fault; insulation is measured by an electrician."));
    }

    private static void Expected(Flow flow, WiredString one)
    {
        if (FirstDay.OpenIn(one, Irradiance.FromWattsPerSquareMeter(1000), Temperature.FromDegreesCelsius(25)).Value is null)
        {
            flow.Text(Say.Of("What it should show is not known: give cells and open_voltage_per_kelvin of every label."));
            return;
        }

        ImmutableArray<string> heads = [Say.Of("Sun, W/m2"), Say.Of("Short, A"), .. Heats.Select(heat => Say.Of($"Open at {heat:0} C, V"))];
        flow.Rows(Even(flow, heads), [.. Suns.Select(sun => Row(one, Irradiance.FromWattsPerSquareMeter(sun)))]);
    }

    private static ImmutableArray<string> Row(WiredString one, Irradiance sun)
    {
        string Open(double heat) => FormattableString.Invariant($"{FirstDay.OpenIn(one, sun, Temperature.FromDegreesCelsius(heat)).Value!.Value.Volts:0.0}");
        var amperes = FirstDay.ShortIn(one, sun, Temperature.FromDegreesCelsius(45)).Value!.Value.Amperes;
        return [FormattableString.Invariant($"{sun.WattsPerSquareMeter:0}"), FormattableString.Invariant($"{amperes:0.0}"), .. Heats.Select(Open)];
    }

    private static Table Even(Flow flow, ImmutableArray<string> heads) => new([.. heads.Select(head => new Column(head, flow.WidthMm / heads.Length))], 2);
}
