using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>Where a wire lies.</summary>
/// <param name="Insulation">What it is covered with.</param>
/// <param name="HottestAir">Around it, at the hottest place of its way.</param>
/// <param name="InBundle">How many wires that carry current lie together, itself included.</param>
public sealed record WirePlace(Insulation Insulation, Temperature HottestAir, int InBundle);

/// <summary>What a wire may carry: 33 CFR 183.425, table 5, in hotter air and in bundles less.</summary>
public static class Ampacity
{
    private const double TableCelsius = 30;

    /// <summary>So much more copper than its gauge a wire need not have: the areas of metric sizes and gauges are rounded.</summary>
    private const double Slack = 1 + 1e-9;

    private static readonly int[] Celsius = [60, 75, 80, 90, 105];

    /// <summary>Amperes by gauge, thinnest first, for each insulation.</summary>
    private static readonly (string Awg, int[] Amperes)[] Table =
    [
        ("18", [10, 10, 15, 20, 20]), ("16", [15, 15, 20, 25, 25]), ("14", [20, 20, 25, 30, 35]), ("12", [25, 25, 35, 40, 45]), ("10", [40, 40, 50, 55, 60]),
        ("8", [55, 65, 70, 70, 80]), ("6", [80, 95, 100, 100, 120]), ("4", [105, 125, 130, 135, 160]), ("2", [140, 170, 175, 180, 210]),
        ("1", [165, 195, 210, 210, 245]), ("1/0", [195, 230, 245, 245, 285]), ("2/0", [225, 265, 285, 285, 330]), ("3/0", [260, 310, 330, 330, 385]), ("4/0", [300, 360, 385, 385, 445]),
    ];

    /// <summary>What a wire may carry there; missing for one thinner than the table knows.</summary>
    /// <remarks>A size that is no gauge carries what the next gauge with no more copper does, SAE sizes too: to the safe side.</remarks>
    public static Known<ElectricCurrent> Of(WireSize wire, WirePlace place)
    {
        var row = Array.FindLast(Table, each => WireSize.Of(WireFamily.Awg, each.Awg).Area.SquareMillimeters <= wire.Area.SquareMillimeters * Slack);
        return row.Amperes is { } amperes
            ? Known.Of(ElectricCurrent.FromAmperes(amperes[(int)place.Insulation]) * HotFactor(place.Insulation, place.HottestAir) * BundleFactor(place.InBundle))
            : Known.Not<ElectricCurrent>(Missing.WireInTable);
    }

    /// <summary>The thinnest size of a family that carries so much; null when none does.</summary>
    public static WireSize? Thinnest(WireFamily family, ElectricCurrent current, WirePlace place) =>
        WireSize.Of(family).FirstOrDefault(size => Of(size, place).Value is { } most && most >= current);

    /// <summary>What is left in hotter air, as heat flows: the square root of what it may still warm up by. Cooler air gives no more than the table.</summary>
    internal static double HotFactor(Insulation insulation, Temperature air)
    {
        double most = Celsius[(int)insulation];
        return Math.Min(1, Math.Sqrt(Math.Max(0, most - air.DegreesCelsius) / (most - TableCelsius)));
    }

    /// <summary>Note 2 of the table: it asks for this from 50 V up; the trade does below too.</summary>
    private static double BundleFactor(int wires) => wires switch
    {
        < 1 => throw new ArgumentOutOfRangeException(nameof(wires)),
        <= 2 => 1,
        3 => 0.70,
        <= 6 => 0.60,
        <= 24 => 0.50,
        _ => 0.40,
    };
}
