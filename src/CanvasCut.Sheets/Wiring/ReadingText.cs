using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>What a measured string tells, in words.</summary>
public static class ReadingText
{
    /// <summary>A line for each thing that is told.</summary>
    /// <param name="one">The string.</param>
    /// <param name="measured">What was measured on it.</param>
    public static ImmutableArray<string> Of(WiredString one, StringMeasured measured)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(measured);
        return [.. Lines(one, measured)];
    }

    private static IEnumerable<string> Lines(WiredString one, StringMeasured measured)
    {
        if (FirstDay.SunOf(one, measured) is not { } sun)
        {
            yield return Say.Of("Not judged because the label or the sun is missing.");
            yield break;
        }

        yield return measured.Sun is null
            ? Say.Of($"Sun in the panels' plane by the short-circuit current: {sun.WattsPerSquareMeter:0} W/m2.")
            : Say.Of($"Sun in the panels' plane by the meter: {sun.WattsPerSquareMeter:0} W/m2.");
        if (measured.Open is { } open)
        {
            yield return FirstDay.OfVoltage(one, measured) is { } verdict
                ? Say.Of($"Open voltage {Volts(open)}, to be expected {Volts(verdict.Expected)}: {Voltage(verdict)}")
                : Say.Of("The open voltage is not judged because panel.label.cells or panel.label.open_voltage_per_kelvin is missing.");
        }

        if (measured.ShortCircuit is { } current && FirstDay.OfCurrent(one, measured) is { } flow)
        {
            yield return Say.Of($"Short-circuit current {QuantityWords.Of(current)}, to be expected {QuantityWords.Of(flow.Expected)}: {Current(flow.Finding)}");
        }
        else if (measured.ShortCircuit is not null && measured.Sun is null)
        {
            yield return Say.Of("The current itself is not judged without a meter for the sun: hold alike strings against each other in the same minute, within 5 %.");
        }
    }

    private static string Volts(ElectricPotential volts) => FormattableString.Invariant($"{volts.Volts:0.00} V");

    private static string Voltage(ReadingVerdict<ElectricPotential> verdict) => verdict.Finding switch
    {
        ReadingFinding.AsExpected => Say.Of("as it should be."),
        ReadingFinding.PolesChanged => Say.Of("THE POLES ARE CHANGED. Connect nothing; find the connector or the label that is wrong."),
        ReadingFinding.Nothing => Say.Of("NOTHING THERE: a connector not home, a broken lead, a breaker that is off, a fuse."),
        ReadingFinding.TooDull => Say.Of("too dull to judge; measure at over 200 W/m2."),
        ReadingFinding.PanelsMissing => Say.Of($"low by {verdict.Parts} whole panel of the string: a panel is bridged, turned about, or not in the string."),
        ReadingFinding.GroupsMissing => Say.Of($"low by {verdict.Parts} shade group: a bypass diode that is burnt through, or a shadow on a cell."),
        ReadingFinding.High => Say.Of("higher than it can be: a panel more in series than the job has, another label, or cells cooler than was measured. Look before you connect the controller."),
        _ => Say.Of("low: cells warmer than the back (add 2 to 3 C), a shadow, a wet connector, or a panel that is worn out."),
    };

    private static string Current(ReadingFinding finding) => finding switch
    {
        ReadingFinding.AsExpected => Say.Of("as it should be."),
        ReadingFinding.PolesChanged => Say.Of("it flows the wrong way: the poles or the clamp are turned about."),
        ReadingFinding.Nothing => Say.Of("NOTHING FLOWS: a connector not home, a broken lead, a breaker that is off, a fuse."),
        ReadingFinding.TooDull => Say.Of("too dull to judge; measure at over 200 W/m2."),
        ReadingFinding.High => Say.Of("more than it can be: the meter does not lie in the panels' plane, or two strings flow through the clamp."),
        _ => Say.Of("low: dirt, salt, a shadow on part of a panel, a cracked or brown cell, or a meter that lies otherwise than the panels."),
    };
}
