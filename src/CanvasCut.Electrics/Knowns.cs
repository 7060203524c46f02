using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>Figures made of several of which one may be missing; then the first that is missing tells why.</summary>
internal static class Knowns
{
    /// <summary>One figure of several.</summary>
    public static Known<T> Of<T>(IReadOnlyCollection<Known<T>> each, Func<IEnumerable<T>, T> made)
        where T : struct, IQuantity =>
        each.FirstOrDefault(one => one.Value is null) is { } missing ? Known.Not<T>(missing.Because) : Known.Of(made(each.Select(one => one.Value!.Value)));

    /// <summary>A figure that is given or missing.</summary>
    public static Known<T> Or<T>(this T? value, Missing because)
        where T : struct, IQuantity => value is { } known ? Known.Of(known) : Known.Not<T>(because);

    /// <summary>Another figure of a known one.</summary>
    public static Known<TOther> Then<T, TOther>(this Known<T> known, Func<T, TOther> made)
        where T : struct, IQuantity
        where TOther : struct, IQuantity => known.Value is { } value ? Known.Of(made(value)) : Known.Not<TOther>(known.Because);

    public static ElectricPotential Sum(IEnumerable<ElectricPotential> each) => ElectricPotential.FromVolts(each.Sum(one => one.Volts));

    public static ElectricCurrent Sum(IEnumerable<ElectricCurrent> each) => ElectricCurrent.FromAmperes(each.Sum(one => one.Amperes));

    public static Power Sum(IEnumerable<Power> each) => Power.FromWatts(each.Sum(one => (double)one.Watts));
}
