using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Which way the warp runs on the finished pieces.</summary>
public enum WarpDirection
{
    /// <summary>Along the boat.</summary>
    ForeAft,

    /// <summary>Across the boat.</summary>
    Athwart,
}

/// <summary>How a piece may be turned on the roll.</summary>
public enum RollTurns
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>End for end.</summary>
    Half,

    /// <summary>Any quarter turn; warp and fill change places.</summary>
    Quarter,
}

/// <summary>How two widths are joined.</summary>
public enum FelledSeam
{
    /// <summary>Half an inch on one piece and an inch on the other; both raw edges are buried.</summary>
    Full,

    /// <summary>Half an inch on both; opened, laid to one side and sewn down.</summary>
    Semi,
}

/// <summary>The cloth on its roll.</summary>
/// <param name="Name">What to ask the shop for.</param>
/// <param name="Roll">Width, selvage and the shop's step.</param>
/// <param name="Lay">How pieces may lie on it.</param>
/// <param name="Shrink">How much it will shrink, 0.01 for one per cent.</param>
/// <param name="Join">The seam between two widths.</param>
public sealed record ClothSpec(string Name, ClothRoll Roll, ClothLay Lay, ClothShrink Shrink, FelledSeam Join)
{
    /// <summary>How much it will shrink along the boat.</summary>
    public double ShrinkForeAft => Lay.Warp == WarpDirection.ForeAft ? Shrink.Warp : Shrink.Fill;

    /// <summary>How much it will shrink across the boat.</summary>
    public double ShrinkAthwart => Lay.Warp == WarpDirection.ForeAft ? Shrink.Fill : Shrink.Warp;

    /// <summary>How far a carrier that is sewn larger for shrinkage reaches beyond its finished size at each of two opposite edges.</summary>
    /// <param name="finished">From one edge to the other.</param>
    /// <param name="shrink">How much it will shrink that way.</param>
    public static Length GrownBy(Length finished, double shrink) => finished * (shrink / (1 - shrink) / 2);
}

/// <summary>The roll.</summary>
/// <param name="Width">From edge to edge.</param>
/// <param name="Selvage">Not used along each edge.</param>
/// <param name="OrderStep">The shop cuts in multiples of this.</param>
public sealed record ClothRoll(Length Width, Length Selvage, Length OrderStep)
{
    /// <summary>The width that can be used.</summary>
    public Length UsableWidth => Width - (Selvage * 2);
}

/// <summary>How pieces may lie on the roll.</summary>
/// <param name="Warp">Which way the warp runs on the finished pieces.</param>
/// <param name="Turns">How a piece may be turned.</param>
/// <param name="Gap">Between pieces.</param>
/// <param name="OneWay">Whether the cloth has an up and a down (pile, print), so that no piece may be turned end for end.</param>
public sealed record ClothLay(WarpDirection Warp, RollTurns Turns, Length Gap, bool OneWay)
{
    /// <summary>The turns that are left when the cloth is one-way.</summary>
    public RollTurns AllowedTurns => OneWay ? RollTurns.None : Turns;
}

/// <summary>Shrinkage, as a part of the length before it: 0.01 is one per cent.</summary>
/// <param name="Warp">Along the warp; 0 to below 0.1.</param>
/// <param name="Fill">Along the fill; 0 to below 0.1.</param>
public sealed record ClothShrink(double Warp, double Fill);
