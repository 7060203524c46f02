using CanvasCut.Design;

namespace CanvasCut.Placing;

/// <summary>Whether a panel may be curved the way the top is, by its maker's word.</summary>
public static class PanelBends
{
    /// <summary>Whether it may be curved across the boat when it lies this way; over flat bows nothing is curved.</summary>
    public static bool MayAcross(CarrierJob job, LongSide way) =>
        Allows(job, way == LongSide.Athwart ? BendAxis.Length : BendAxis.Width) || job.Top.Bows.All(IsFlat);

    /// <summary>Whether it may be curved along the boat when it lies this way.</summary>
    public static bool MayAlong(CarrierJob job, LongSide way) => Allows(job, way == LongSide.ForeAft ? BendAxis.Length : BendAxis.Width);

    private static bool Allows(CarrierJob job, BendAxis curved) => job.Panel.Limits.Bends == BendAxis.Either || job.Panel.Limits.Bends == curved;

    private static bool IsFlat(Bow bow) => bow.Halves is { } halves && double.IsInfinity(halves.Port.RadiusMm) && double.IsInfinity(halves.Starboard.RadiusMm);
}
