using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What a bank's cells are.</summary>
public enum BankKind
{
    /// <summary>Lead in free acid.</summary>
    Flooded,

    /// <summary>Lead, the acid in glass mats.</summary>
    Agm,

    /// <summary>Lead, the acid in gel.</summary>
    Gel,

    /// <summary>Lithium iron phosphate.</summary>
    LithiumIronPhosphate,
}

/// <summary>The bank; what is not known is null.</summary>
/// <param name="Nominal">12, 24 or 48 V.</param>
/// <param name="Kind">What its cells are.</param>
/// <param name="Voltages">Between which it is charged and used.</param>
/// <param name="Store">What it holds.</param>
/// <param name="Fault">What it gives into a short circuit.</param>
/// <param name="Earthed">The pole that is joined to earth; null when not known.</param>
public sealed record BankSpec(ElectricPotential Nominal, BankKind Kind, BankVoltages Voltages, BankStore Store, BankFault Fault, Pole? Earthed)
{
    /// <summary>The voltage by which its charge is turned into energy.</summary>
    public ElectricPotential Usual => UsualOf(Nominal);

    /// <summary>Whether it is lead.</summary>
    public bool IsLead => Kind != BankKind.LithiumIronPhosphate;

    /// <summary>12.8 V for each 12: common practice, no source.</summary>
    public static ElectricPotential UsualOf(ElectricPotential nominal) => nominal * (12.8 / 12);
}

/// <summary>Between which voltages a bank is charged and used.</summary>
/// <param name="Absorption">The voltage at which it becomes full.</param>
/// <param name="Floating">The voltage that keeps it full.</param>
/// <param name="Lowest">The lowest it is let down to.</param>
public sealed record BankVoltages(ElectricPotential? Absorption, ElectricPotential? Floating, ElectricPotential? Lowest);

/// <summary>What a bank holds.</summary>
/// <param name="Capacity">By its maker.</param>
/// <param name="Usable">What part of it is used.</param>
public sealed record BankStore(ElectricCharge? Capacity, Ratio? Usable);

/// <summary>What a bank gives into a short circuit.</summary>
/// <param name="Cranking">The cold-cranking amperes of all batteries together; of lead.</param>
/// <param name="ShortCircuit">The short-circuit current, by its maker.</param>
public sealed record BankFault(ElectricCurrent? Cranking, ElectricCurrent? ShortCircuit);
