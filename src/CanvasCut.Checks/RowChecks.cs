using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Looks at the gaps between panels that share a carrier.</summary>
internal static class RowChecks
{
    /// <summary>Panels nearer to each other rub where the carrier bends; chosen for this program.</summary>
    public static readonly Length LeastGap = Length.FromMillimeters(5);

    /// <summary>One result a gap; none where a carrier has one panel.</summary>
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted)
    {
        var each = EachPanel.Of(job, mounted);
        return each.Zip(each.Skip(1), (before, after) => Of(job, before, after));
    }

    private static CheckResult Of(CarrierJob job, EachPanel before, EachPanel after)
    {
        var (one, other) = (before.Mounted.PanelBox, after.Mounted.PanelBox);
        var isAthwart = job.Row!.Axis == RowAxis.Athwart;
        var gap = Length.FromMillimeters(isAthwart ? other.Left - one.Right : one.Bottom - other.Top);
        var result = CheckResult.Judged(
            (CheckCodes.RowGap, Say.Of($"gap between panels \"{before.Job.PanelName}\" and \"{after.Job.PanelName}\"")),
            Measured.AtLeast(gap, LeastGap),
            Verdict.Caution,
            LimitSource.Chosen,
            Say.Of("Their edges rub where the carrier bends: widen panel.gap.")).On(new PartKeys(before.Job).Panel, new PartKeys(after.Job).Panel);
        return result.Verdict == Verdict.Pass && !isAthwart && BowUnder(job.Top, one.Bottom, other.Top) is { } bow
            ? (result with { Advice = Say.Of($"Bow {bow} lies under it: the cloth bends there and neither panel does, which is a good place for a gap.") }).On([.. result.About.Parts, PartKey.Bow(bow)])
            : result;
    }

    /// <summary>The bow whose middle lies under a gap, counted from 1; null for none.</summary>
    private static int? BowUnder(TopCloth top, double fromY, double toY) => top.Bows.Index()
        .Where(each => Plan.BandOf(top, each.Item).Center.Y is var y && y < fromY && y > toY)
        .Select(each => (int?)(each.Index + 1))
        .FirstOrDefault();
}
