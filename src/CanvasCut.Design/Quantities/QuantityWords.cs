using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Any quantity as people read it and as programs read it; <see cref="QuantityKinds"/> has how.</summary>
public static class QuantityWords
{
    /// <summary>As in "35 kn (18 m/s)"; rounded for reading, never for reckoning.</summary>
    public static string Of(IQuantity quantity) => Of(quantity, RoundTo.Nearest);

    /// <summary>The same, rounded to a side in every unit.</summary>
    internal static string Of(IQuantity quantity, RoundTo way) => QuantityKind.Of(quantity).Print(quantity, way);

    /// <summary>The number in the unit that results.json gives, with that unit.</summary>
    public static (double Number, string Unit) Plain(IQuantity quantity) => QuantityKind.Of(quantity).Plain(quantity);
}
