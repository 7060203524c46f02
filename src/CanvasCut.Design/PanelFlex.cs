using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A bend limit given as an angle, which means nothing without the length it is spread over.</summary>
/// <param name="Angle">From one end of the arc to the other; above zero.</param>
/// <param name="Over">Along the arc; above zero.</param>
public sealed record BendArc(Angle Angle, Length Over)
{
    /// <summary>The radius: length over angle in radians. 30 degrees over 1050 mm is 2.01 m.</summary>
    public Length Radius => Over / Angle.Radians;
}

/// <summary>How far a panel hangs down when a part of it lies over a table's edge: it tells weight against stiffness.</summary>
/// <param name="Overhang">From the table's edge to the panel's free edge; above zero.</param>
/// <param name="Drop">How far below the table the free edge hangs; above zero.</param>
public sealed record PanelDroop(Length Overhang, Length Drop);
