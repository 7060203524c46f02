using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Holds the arc of the top across against the smallest radius the panel may be bent to.</summary>
internal static class AthwartBend
{
    /// <summary>
    /// The radius assumed when the data sheet is silent: "30 degrees" over 1.05 m is about 2 m, the most cautious of the
    /// figures that makers publish.
    /// </summary>
    public static readonly Length AssumedRadius = Length.FromMeters(2);

    private const string Source = "maker's smallest radius times limits.bend_factor (rule of thumb, editable)";

    /// <summary>Whether the panel may be curved across the boat when it lies this way.</summary>
    public static bool IsAllowed(CarrierJob job, LongSide way)
    {
        var curved = way == LongSide.Athwart ? BendAxis.Length : BendAxis.Width;
        return job.Panel.Limits.Bends == BendAxis.Either || job.Panel.Limits.Bends == curved || job.Top.Bows.All(IsFlat);
    }

    /// <summary>One result a bow that shapes the panel.</summary>
    public static IEnumerable<CheckResult> Check(CarrierJob job, MountedShape mounted)
    {
        if (!IsAllowed(job, mounted.Panel.LongSide))
        {
            var side = job.Panel.Limits.Bends == BendAxis.Length ? "length" : "width";
            yield return new(
                CheckCodes.BendAthwart,
                "panel's bend across the boat",
                Verdict.Fail,
                Measured.Nothing,
                "panel.bends",
                $"The maker allows only its {side} to be curved, and the top curves the other side: turn the panel.");
        }

        var shaping = Shaping(job.Top, mounted).ToList();
        if (shaping.Count == 0)
        {
            yield return Missing("arc across", "No bow is given, so the arc is not known: add [[top.bow]] with chord and crown.");
        }

        foreach (var (index, bow) in shaping)
        {
            yield return bow.Across is { } arc
                ? OnBow(job, $"arc across at bow {index + 1}", arc)
                : Missing($"arc across at bow {index + 1}", $"Give chord and crown (or girth) of bow {index + 1}.");
        }
    }

    private static CheckResult OnBow(CarrierJob job, string subject, CircularArc arc)
    {
        var known = job.Panel.Limits.MinBendRadius;
        var needed = (known ?? AssumedRadius) * job.Limits.BendFactor;
        if (double.IsPositiveInfinity(arc.RadiusMm))
        {
            return new(CheckCodes.BendAthwart, subject, Verdict.Pass, Measured.Nothing, Source, "The bow is flat.");
        }

        var measured = Measured.AtLeast(Length.FromMillimeters(arc.RadiusMm), needed);
        var verdict = !measured.Holds ? Verdict.Fail : known is null ? Verdict.Caution : Verdict.Pass;
        var advice = known is null
            ? "panel.min_bend_radius is not given; 2 m was assumed. Ask the panel's maker before cutting."
            : measured.Holds ? string.Empty : "Too sharp for this panel: turn it, move it to a flatter bow, or choose a panel that bends further.";
        return new(CheckCodes.BendAthwart, subject, verdict, measured, Source, advice);
    }

    private static CheckResult Missing(string subject, string advice) =>
        new(CheckCodes.BendAthwart, subject, Verdict.NotChecked, Measured.Nothing, Source, advice);

    /// <summary>The bows under the panel, and the nearest forward and aft of it.</summary>
    private static IEnumerable<(int Index, Bow Bow)> Shaping(TopCloth top, MountedShape mounted)
    {
        var (from, to) = (-mounted.PanelBox.Top, -mounted.PanelBox.Bottom);
        var all = top.Bows.Index().ToList();
        var before = all.LastOrDefault(each => each.Item.Station.Millimeters < from, (-1, null!));
        var after = all.FirstOrDefault(each => each.Item.Station.Millimeters > to, (-1, null!));
        return all.Where(each => each == before || each == after || (each.Item.Station.Millimeters >= from && each.Item.Station.Millimeters <= to));
    }

    private static bool IsFlat(Bow bow) => bow.Across is { } arc && double.IsPositiveInfinity(arc.RadiusMm);
}
