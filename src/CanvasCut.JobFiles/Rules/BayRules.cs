using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The cloth from bow to bow: long enough for their heights, and no more than a half circle where it hangs.</summary>
internal static class BayRules
{
    public static void Check(JobValues values, RuleLog rules)
    {
        var bows = values.Tables("top.bow").ToList();
        foreach (var (bow, next) in bows.Zip(bows.Skip(1)))
        {
            CheckBay(values, rules, bow, next);
        }

        if (bows.Count > 0)
        {
            rules.When(
                values.Length($"{bows[^1]}.sag_aft") > Length.Zero,
                ProblemCode.BowPlace,
                $"{bows[^1]}.sag_aft",
                Say.Of("belongs to the last bow, which has no bow aft of it; give the sag at the bow forward of the bay."));
        }
    }

    private static void CheckBay(JobValues values, RuleLog rules, string bow, string next)
    {
        var cloth = values.Length($"{next}.station") - values.Length($"{bow}.station");
        var sag = values.Length($"{bow}.sag_aft") ?? Length.Zero;
        if (cloth is not { Millimeters: > 0 } along || sag < Length.Zero)
        {
            return;
        }

        var isDeep = sag > along / Math.PI;
        rules.When(isDeep, ProblemCode.BowsDisagree, $"{bow}.sag_aft", Say.Of($"is more than a half circle of the cloth in this bay, {In(along)}; measure it from a straight line down to the cloth."));
        var reach = sag > Length.Zero && !isDeep ? Length.FromMillimeters(CircularArc.FromGirthAndRise(along.Millimeters, sag.Millimeters).ChordMm) : along;
        rules.When(
            TopOf(values, next) - TopOf(values, bow) is { } rise && (rise >= reach || -rise >= reach),
            ProblemCode.BowsDisagree,
            $"{next}.height",
            Say.Of($"is further from the height of the bow before than the cloth between them reaches, {In(reach)}; measure heights from one level, stations along the cloth."));
    }

    private static Length? TopOf(JobValues values, string bow) => values.Length($"{bow}.height") + (values.Length($"{bow}.diameter") / 2);
}
