using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Which way the panel's long side lies.</summary>
public enum LongSide
{
    /// <summary>Across the boat.</summary>
    Athwart,

    /// <summary>Along the boat.</summary>
    ForeAft,
}

/// <summary>Which of its sides the maker allows the panel to bend along.</summary>
public enum BendAxis
{
    /// <summary>Either, one at a time.</summary>
    Either,

    /// <summary>Its length may be curved.</summary>
    Length,

    /// <summary>Its width may be curved.</summary>
    Width,
}

/// <summary>The panel's own measures.</summary>
/// <param name="Length">The longer side.</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Thickness">Without the junction box.</param>
/// <param name="CornerRadius">Of its rounded corners; zero for square ones.</param>
/// <param name="Mass">Null when not known.</param>
/// <param name="Droop">How far it hangs over a table's edge; null when not tried.</param>
public sealed record PanelBody(Length Length, Length Width, Length Thickness, Length CornerRadius, Mass? Mass, PanelDroop? Droop = null);

/// <summary>What the maker allows.</summary>
/// <param name="MinBendRadius">The smallest radius; null when the data sheet is silent.</param>
/// <param name="Bends">Which side may be curved.</param>
/// <param name="AllowsHardPoints">Whether a tube may lie under cells.</param>
/// <param name="MaxWind">The wind above which it must come off; null when not stated.</param>
/// <param name="HasAdhesive">Whether its back is adhesive, so that no tape is needed.</param>
/// <param name="AdhesivePull">What an adhesive back bears for long when it is pulled straight off; null when its maker does not tell.</param>
/// <param name="MaxBend">The limit as an angle over a length; null when the data sheet gives none.</param>
public sealed record PanelLimits(
    Length? MinBendRadius,
    BendAxis Bends,
    bool AllowsHardPoints,
    Speed? MaxWind,
    BendArc? MaxBend = null,
    bool HasAdhesive = false,
    Pressure? AdhesivePull = null)
{
    /// <summary>
    /// The radius assumed when the data sheet is silent: "30 degrees" over 1.05 m is about 2 m, the most cautious of the
    /// figures that makers publish.
    /// </summary>
    public static readonly Length AssumedRadius = Length.FromMeters(2);

    /// <summary>Whether the panel may be curved along the boat when it lies this way.</summary>
    public bool MayCurveAlong(LongSide way) => Bends == BendAxis.Either || Bends == (way == LongSide.ForeAft ? BendAxis.Length : BendAxis.Width);

    /// <summary>Whether it may be curved across the boat.</summary>
    public bool MayCurveAcross(LongSide way) => Bends == BendAxis.Either || Bends == (way == LongSide.Athwart ? BendAxis.Length : BendAxis.Width);

    /// <summary>The smallest radius allowed, of a radius and an angle the gentler one; null when neither is given.</summary>
    public Length? SmallestRadius => (MinBendRadius, MaxBend?.Radius) switch
    {
        ({ } radius, { } arc) => UnitMath.Max(radius, arc),
        var (radius, arc) => radius ?? arc,
    };
}

/// <summary>The junction box, as it lies on the mounted panel.</summary>
/// <param name="FromPort">From the panel's port edge to the box's port edge.</param>
/// <param name="FromForward">From the panel's forward edge to the box's forward edge.</param>
/// <param name="Athwart">The box's size across the boat.</param>
/// <param name="ForeAft">The box's size along the boat.</param>
/// <param name="Height">Above the panel's face; negative for a box at its back, below it.</param>
public sealed record JunctionBox(Length FromPort, Length FromForward, Length Athwart, Length ForeAft, Length Height)
{
    /// <summary>Whether it stands out of the panel's back.</summary>
    public bool IsAtBack => Height < Length.Zero;
}

/// <summary>Where the cable leaves through the carrier.</summary>
/// <param name="FromPort">From the panel's port edge to the middle of the hole; negative to port of it.</param>
/// <param name="FromForward">From the panel's forward edge to the middle of the hole; negative forward of it.</param>
/// <param name="Diameter">Of the hole.</param>
public sealed record CableExit(Length FromPort, Length FromForward, Length Diameter);

/// <summary>The flexible panel.</summary>
/// <param name="Body">Its measures.</param>
/// <param name="Limits">What its maker allows.</param>
/// <param name="LongSide">The way it must lie; null when either will do.</param>
/// <param name="Fittings">What lies on it, as mounted; when <paramref name="LongSide"/> is null, as mounted athwart.</param>
public sealed record SolarPanel(PanelBody Body, PanelLimits Limits, LongSide? LongSide, PanelFittings Fittings)
{
    /// <summary>What its label says; null when it was not given.</summary>
    public PanelLabel? Label { get; init; }
}

/// <summary>What lies on the panel, seen from above as mounted.</summary>
/// <param name="DeadBorder">From each edge of the panel to the first cell.</param>
/// <param name="JunctionBox">Null when its place was not given.</param>
/// <param name="CableExit">Null when the cable leaves over the edge.</param>
public sealed record PanelFittings(Sides<Length> DeadBorder, JunctionBox? JunctionBox, CableExit? CableExit)
{
    /// <summary>The fittings after a quarter turn of the panel, clockwise as seen from above.</summary>
    /// <param name="foreAft">The panel's size along the boat before the turn.</param>
    public PanelFittings TurnedClockwise(Length foreAft) => new(
        DeadBorder.TurnedClockwise(),
        JunctionBox is { } box ? new(foreAft - box.FromForward - box.ForeAft, box.FromPort, box.ForeAft, box.Athwart, box.Height) : null,
        CableExit is { } exit ? new(foreAft - exit.FromForward, exit.FromPort, exit.Diameter) : null);
}
