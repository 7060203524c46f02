using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What the carrier meets: wind, the day it is bonded, heat, water, and the state of the top.</summary>
/// <param name="Wind">The wind it is to stand.</param>
/// <param name="Strength">How strong its parts are.</param>
/// <param name="Bonding">How and in what weather the panel is bonded.</param>
/// <param name="Heat">A hot day, and how warm the cells may get.</param>
/// <param name="LeastSlope">Below this water and dirt stay on the panel.</param>
/// <param name="TopState">Whether the top is worth sewing.</param>
public sealed record Conditions(WindSpec Wind, StrengthSpec Strength, BondingSpec Bonding, HeatSpec Heat, Angle LeastSlope, TopState TopState);

/// <summary>The wind.</summary>
/// <param name="OffAt">The speed, in gusts, at which the panel comes off whatever else would hold.</param>
/// <param name="Factors">What turns a speed into loads.</param>
public sealed record WindSpec(Speed OffAt, WindFactors Factors);

/// <summary>What turns a wind speed into loads.</summary>
/// <param name="Coefficient">Uplift as a multiple of the wind's dynamic pressure, over the whole carrier.</param>
/// <param name="Edge">How many times the mean load the worst-placed piece of a fastening carries.</param>
/// <param name="Gust">A gust's speed as a multiple of the mean wind's.</param>
/// <param name="Safety">A strength must be so many times the load.</param>
public sealed record WindFactors(Ratio Coefficient, Ratio Edge, Ratio Gust, Ratio Safety);

/// <summary>How strong the parts are.</summary>
/// <param name="Thread">What breaks the thread.</param>
/// <param name="ClothGrab">What breaks the cloth when an inch of its width is gripped.</param>
/// <param name="Zipper">The zippers.</param>
public sealed record StrengthSpec(Force Thread, Force ClothGrab, ZipperStrength Zipper);

/// <summary>How strong a zipper is.</summary>
/// <param name="Class">Its class after EN 16732.</param>
/// <param name="Chain">Across the closed chain, over a jaw of 25 mm; null for that of the class.</param>
/// <param name="End">Across its open end; null for that of the class.</param>
public sealed record ZipperStrength(ZipperClass Class, Force? Chain, Force? End);

/// <summary>The classes of EN 16732 and BS 3084, light to heavy.</summary>
public enum ZipperClass
{
    /// <summary>Light dresses.</summary>
    A,

    /// <summary>Skirts, jeans.</summary>
    B,

    /// <summary>Jackets, luggage, light tents.</summary>
    C,

    /// <summary>Coats, ski wear.</summary>
    D,

    /// <summary>Luggage, wet suits, awnings, frame tents.</summary>
    E,
}

/// <summary>A hot day.</summary>
/// <param name="Air">The air.</param>
/// <param name="Wind">The breeze.</param>
/// <param name="Limit">The warmest the cells may get.</param>
public sealed record HeatSpec(Temperature Air, Speed Wind, Temperature? Limit);
