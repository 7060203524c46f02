using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What was measured on a string with nothing connected, and its ends joined.</summary>
/// <param name="Open">The open voltage; below zero with the meter's leads as marked means that the poles are changed.</param>
/// <param name="ShortCircuit">The short-circuit current, by a clamp through a switch.</param>
/// <param name="Cells">The back of a panel.</param>
/// <param name="Sun">What a meter shows in the panel's plane; null to reckon it from the current.</param>
public sealed record StringMeasured(ElectricPotential? Open, ElectricCurrent? ShortCircuit, Temperature Cells, Irradiance? Sun);

/// <summary>What may be behind a reading.</summary>
public enum ReadingFinding
{
    /// <summary>As it should be.</summary>
    AsExpected,

    /// <summary>Plus and minus are changed.</summary>
    PolesChanged,

    /// <summary>Nothing is there.</summary>
    Nothing,

    /// <summary>Too dull to judge.</summary>
    TooDull,

    /// <summary>A whole panel is missing.</summary>
    PanelsMissing,

    /// <summary>One or more shade groups are missing.</summary>
    GroupsMissing,

    /// <summary>Lower than it should be, by no step that tells why.</summary>
    Low,

    /// <summary>Higher than it can be.</summary>
    High,
}

/// <summary>A reading held against what was to be expected.</summary>
/// <param name="Finding">What may be behind it.</param>
/// <param name="Expected">What was to be expected.</param>
/// <param name="Parts">How many panels or groups are missing, where some are.</param>
public sealed record ReadingVerdict<T>(ReadingFinding Finding, T Expected, int Parts = 0)
    where T : struct, IQuantity;

/// <summary>What a string should show on its first day, and what may be wrong when it does not.</summary>
/// <remarks>The label's figures at the light and heat of the moment: the voltage falls with the logarithm of the light.</remarks>
public static class FirstDay
{
    private const double TestCelsius = 25;
    private const double TestSun = 1000;

    /// <summary>How ideal the cells' junction is: from memory.</summary>
    private const double Ideality = 1.1;

    /// <summary>Boltzmann's constant over the charge of an electron, V/K.</summary>
    private const double ThermalVolts = 8.6173e-5;

    /// <summary>alpha where the label is silent: the median of the 381 modules of the Sandia table.</summary>
    private const double UsualAlpha = 0.00054;

    /// <summary>Common practice, no source: below so much light nothing is judged, voltages within 3 % and the tolerance, currents within 10 %.</summary>
    private const double LeastSun = 200;
    private const double VoltageBand = 0.03;
    private const double CurrentBand = 0.10;

    /// <summary>A step of voltage is told as missing panels or groups when it is nearer than this.</summary>
    private const double StepBand = 0.04;

    /// <summary>The light that makes such a short-circuit current.</summary>
    public static Irradiance SunOf(PanelLabel label, ElectricCurrent current, Temperature cells) => Irradiance.FromWattsPerSquareMeter(
        TestSun * current.Amperes / (label.ShortCurrent.Amperes * Warm(label.ShortCurrentPerKelvin?.DecimalFractions ?? UsualAlpha, cells)));

    /// <summary>The short-circuit current in such light.</summary>
    public static ElectricCurrent ShortIn(PanelLabel label, Irradiance sun, Temperature cells) =>
        label.ShortCurrent * (sun.WattsPerSquareMeter / TestSun * Warm(label.ShortCurrentPerKelvin?.DecimalFractions ?? UsualAlpha, cells));

    /// <summary>The open voltage of a panel in such light; missing without the change of its voltage or the number of its cells.</summary>
    public static Known<ElectricPotential> OpenIn(PanelLabel label, Irradiance sun, Temperature cells) =>
        label.OpenVoltagePerKelvin is not { } beta ? Known.Not<ElectricPotential>(Missing.VoltageCoefficient)
        : label.CellsInSeries is not { } inSeries ? Known.Not<ElectricPotential>(Missing.LabelFigure)
        : Known.Of(
            (label.OpenVoltage * Warm(beta.DecimalFractions, cells))
            + ElectricPotential.FromVolts(inSeries * Ideality * ThermalVolts * cells.Kelvins * Math.Log(sun.WattsPerSquareMeter / TestSun)));

    /// <summary>The open voltage of a string in such light.</summary>
    public static Known<ElectricPotential> OpenIn(WiredString one, Irradiance sun, Temperature cells) => Knowns.Of(
        [.. one.Panels.Select(panel => panel.Label is { } label ? OpenIn(label, sun, cells) : Known.Not<ElectricPotential>(Missing.Label))],
        Knowns.Sum);

    /// <summary>The short-circuit current of a string in such light: that of its weakest panel.</summary>
    public static Known<ElectricCurrent> ShortIn(WiredString one, Irradiance sun, Temperature cells) => Knowns.Of(
        [.. one.Panels.Select(panel => panel.Label is { } label ? Known.Of(ShortIn(label, sun, cells)) : Known.Not<ElectricCurrent>(Missing.Label))],
        each => each.Min());

    /// <summary>The light of a measurement: the meter's, or reckoned from the current; null without either.</summary>
    public static Irradiance? SunOf(WiredString one, StringMeasured measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return measured.Sun
            ?? (measured.ShortCircuit is { } current && one.Panels.Select(panel => panel.Label).MinBy(label => label?.ShortCurrent ?? ElectricCurrent.Zero) is { } weakest
                ? SunOf(weakest, current, measured.Cells)
                : null);
    }

    /// <summary>What the open voltage tells.</summary>
    public static ReadingVerdict<ElectricPotential>? OfVoltage(WiredString one, StringMeasured measured)
    {
        if (measured.Open is not { } open || SunOf(one, measured) is not { } sun || sun <= Irradiance.Zero || OpenIn(one, sun, measured.Cells).Value is not { } expected)
        {
            return null;
        }

        var part = open / expected;
        var band = VoltageBand + one.Panels.Max(panel => panel.Label?.Tolerance?.DecimalFractions ?? 0);
        ReadingVerdict<ElectricPotential> Is(ReadingFinding finding, int parts = 0) => new(finding, expected, parts);
        return part < -StepBand ? Is(ReadingFinding.PolesChanged)
            : part < StepBand ? Is(ReadingFinding.Nothing)
            : sun.WattsPerSquareMeter < LeastSun ? Is(ReadingFinding.TooDull)
            : part > 1 + band ? Is(ReadingFinding.High)
            : part >= 1 - band ? Is(ReadingFinding.AsExpected)
            : Step(part, one.Panels.Length) is { } panels ? Is(ReadingFinding.PanelsMissing, panels)
            : one.Panels.All(panel => panel.Label?.ShadeGroups is > 1) && Step(part, one.Panels.Sum(panel => panel.Label!.ShadeGroups!.Value)) is { } groups ? Is(ReadingFinding.GroupsMissing, groups)
            : Is(ReadingFinding.Low);
    }

    /// <summary>What the short-circuit current tells, where a meter gave the light.</summary>
    public static ReadingVerdict<ElectricCurrent>? OfCurrent(WiredString one, StringMeasured measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        if (measured.ShortCircuit is not { } current || measured.Sun is not { } sun || ShortIn(one, sun, measured.Cells).Value is not { } expected)
        {
            return null;
        }

        var part = current / expected;
        return new(
            sun.WattsPerSquareMeter < LeastSun ? ReadingFinding.TooDull
            : Math.Abs(part) < StepBand ? ReadingFinding.Nothing
            : part < 0 ? ReadingFinding.PolesChanged
            : part < 1 - CurrentBand ? ReadingFinding.Low
            : part > 1 + CurrentBand ? ReadingFinding.High
            : ReadingFinding.AsExpected,
            expected);
    }

    /// <summary>How many of so many equal parts are missing; null when it is no whole number of them.</summary>
    private static int? Step(double part, int of)
    {
        var missing = (int)Math.Round((1 - part) * of);
        return missing > 0 && missing < of && Math.Abs(part - (1 - ((double)missing / of))) <= StepBand ? missing : null;
    }

    private static double Warm(double perKelvin, Temperature cells) => 1 + (perKelvin * (cells.DegreesCelsius - TestCelsius));
}
