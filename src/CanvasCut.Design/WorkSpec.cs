using UnitsNet;

namespace CanvasCut.Design;

/// <summary>When the panel is bonded to the carrier; all machine sewing on the carrier comes before it either way.</summary>
public enum BondOrder
{
    /// <summary>Before the top is marked and sewn, so that the top is marked from the carrier with its panel.</summary>
    BondFirst,

    /// <summary>After all sewing on the top, so that nothing stiff is about while the top is sewn.</summary>
    SewFirst,
}

/// <summary>How the work is planned.</summary>
/// <param name="HoursPerDay">Hands-on work in one day; above zero, at most 24 h.</param>
/// <param name="Cure">How long the bond is left alone before anything pulls on it.</param>
/// <param name="Order">When the panel is bonded.</param>
public sealed record WorkSpec(Duration HoursPerDay, Duration Cure, BondOrder Order);

/// <summary>What the care of the finished job depends on.</summary>
/// <param name="Fitted">The day it was fitted; null while it is not known.</param>
/// <param name="ThreadLifeMonths">What the user holds the thread's life to be; null for the life of its grade.</param>
/// <param name="HasHookAndLoop">Whether hook-and-loop is used anywhere on it.</param>
public sealed record CareSpec(DateOnly? Fitted, int? ThreadLifeMonths, bool HasHookAndLoop);
