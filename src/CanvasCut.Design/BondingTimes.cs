using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How long the work of bonding a panel takes, before its cure begins; from memory, see docs/work-order.md.</summary>
public static class BondingTimes
{
    /// <summary>To clean both faces, lay the panel and roll it down.</summary>
    public static Duration Laying { get; } = Duration.FromMinutes(60);

    /// <summary>Before what was pressed on may be moved, at about half of full strength; widely printed.</summary>
    public static Duration Dwell { get; } = Duration.FromMinutes(20);

    /// <summary>To turn the panel over and weight it.</summary>
    public static Duration Weighting { get; } = Duration.FromMinutes(10);

    /// <summary>From the first wipe until the cure begins.</summary>
    public static Duration Whole => Laying + Dwell + Weighting;
}
