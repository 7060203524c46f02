using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What was found about one thing.</summary>
public enum Finding
{
    /// <summary>It holds.</summary>
    Holds,

    /// <summary>It holds, or may not matter, but somebody should look.</summary>
    Caution,

    /// <summary>It does not hold.</summary>
    Fails,

    /// <summary>It was not checked; what was missing is said.</summary>
    NotChecked,
}

/// <summary>Why something was not checked.</summary>
public enum Missing
{
    /// <summary>Nothing was missing.</summary>
    Nothing,

    /// <summary>The coldest air in which the panels are mounted and lit.</summary>
    ColdestAir,

    /// <summary>A factor for air below -40 C where the label has no coefficient.</summary>
    FactorForSuchCold,

    /// <summary>The label's coefficient of the voltage.</summary>
    VoltageCoefficient,

    /// <summary>Another figure of the label.</summary>
    LabelFigure,

    /// <summary>The label's largest series fuse.</summary>
    SeriesFuse,

    /// <summary>The label's largest system voltage.</summary>
    SystemVoltage,

    /// <summary>The controller's largest panel voltage.</summary>
    ControllerVoltage,

    /// <summary>The controller's largest input current.</summary>
    ControllerCurrent,

    /// <summary>The panel's label.</summary>
    Label,

    /// <summary>Where the boat lies in the sun.</summary>
    Sun,

    /// <summary>The bank.</summary>
    Bank,

    /// <summary>The bank's absorption voltage.</summary>
    Absorption,

    /// <summary>The controller's rated output.</summary>
    RatedOutput,

    /// <summary>The length of a run, or the place of the junction box that it begins at.</summary>
    RunLength,

    /// <summary>Whose sizes the wires have.</summary>
    WireFamily,

    /// <summary>The rating of a device.</summary>
    DeviceRating,

    /// <summary>What a device can interrupt.</summary>
    DeviceInterrupts,

    /// <summary>What the bank gives into a short circuit.</summary>
    BankFault,

    /// <summary>How far a device is from the bank.</summary>
    DevicePlace,

    /// <summary>A size of wire that carries so much and loses so little.</summary>
    ThickEnoughWire,

    /// <summary>A fuse or breaker so large.</summary>
    DeviceOnSale,

    /// <summary>The bank's lowest voltage.</summary>
    LowestBankVoltage,

    /// <summary>A wire that the table of ampacities knows.</summary>
    WireInTable,

    /// <summary>The voltage up to which a device breaks direct current.</summary>
    DeviceVoltage,
}

/// <summary>One thing held against its limit.</summary>
/// <param name="Finding">What was found.</param>
/// <param name="Value">What it is; null when it could not be worked out.</param>
/// <param name="Limit">What it is held against; null when that is not known.</param>
/// <param name="Because">What was missing when it was not checked.</param>
public sealed record Judgement(Finding Finding, IQuantity? Value, IQuantity? Limit, Missing Because = Missing.Nothing)
{
    /// <summary>Something that was not checked, and why.</summary>
    public static Judgement NotChecked(Missing because, IQuantity? value = null) => new(Finding.NotChecked, value, null, because);
}

/// <summary>A figure, or what was missing for it.</summary>
/// <typeparam name="T">Its kind.</typeparam>
/// <param name="Value">The figure; null when something was missing.</param>
/// <param name="Because">What was missing.</param>
public sealed record Known<T>(T? Value, Missing Because)
    where T : struct, IQuantity;

/// <summary>Makes figures that are known or not.</summary>
public static class Known
{
    /// <summary>A figure that is known.</summary>
    public static Known<T> Of<T>(T value)
        where T : struct, IQuantity => new(value, Missing.Nothing);

    /// <summary>One for which something was missing.</summary>
    public static Known<T> Not<T>(Missing because)
        where T : struct, IQuantity => new(null, because);
}
