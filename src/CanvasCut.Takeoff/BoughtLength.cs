using System.Globalization;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A length as a shop sells it: metres, or yards for a job in inches, and the other beside it.</summary>
/// <param name="Quantity">The number.</param>
/// <param name="Unit">m or yd.</param>
/// <param name="Also">The same in the other unit.</param>
internal sealed record BoughtLength(string Quantity, string Unit, string Also)
{
    /// <summary>A length that is bought as it is, to a thousandth.</summary>
    public static BoughtLength Exactly(Length length, PrintUnits units) => Of(length, units, value => Math.Round(value, 3));

    /// <summary>A length rounded up to whole metres and whole yards.</summary>
    public static BoughtLength RoundedUp(Length length, PrintUnits units) => Of(length, units, Math.Ceiling);

    private static BoughtLength Of(Length length, PrintUnits units, Func<double, double> round)
    {
        var metres = round(length.Meters).ToString(CultureInfo.InvariantCulture);
        var yards = round(length.Yards).ToString(CultureInfo.InvariantCulture);
        return units == PrintUnits.Imperial ? new(yards, "yd", $"{metres} m") : new(metres, "m", $"{yards} yd");
    }
}
