using CanvasCut.Design;

namespace CanvasCut.Placing;

/// <summary>Whether a panel may be curved the way the top is, by its maker's word.</summary>
public static class PanelBends
{
    /// <summary>Whether it may be curved across the boat when it lies this way, of a row every panel; over flat bows nothing is curved.</summary>
    public static bool MayAcross(CarrierJob job, LongSide way) =>
        job.Panels.Select((each, i) => each.Panel.Limits.MayCurveAcross(i == 0 ? way : each.Panel.LongSide ?? way)).All(may => may) || job.Top.Bows.All(IsFlat);

    /// <summary>Whether it may be curved along the boat when it lies this way.</summary>
    public static bool MayAlong(CarrierJob job, LongSide way) => job.Panel.Limits.MayCurveAlong(way);

    private static bool IsFlat(Bow bow) => bow.Halves is { } halves && double.IsInfinity(halves.Port.RadiusMm) && double.IsInfinity(halves.Starboard.RadiusMm);
}
