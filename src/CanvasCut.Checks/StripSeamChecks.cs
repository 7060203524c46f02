using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether a strip that is sewn to the carrier has room there: beside the panel, between the pockets.</summary>
internal static class StripSeamChecks
{
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted) =>
        mounted.Fastened.StripsOnCarrier.SelectMany(strip => Of(job, mounted, strip).Select(check => check.On(new PartKeys(job).Strip(strip.Side))));

    private static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted, StripPlace strip)
    {
        var seam = strip.SeamInside(mounted.CarrierBox);
        yield return CheckResult.Judged(
            (CheckCodes.StripSeam, Say.Of($"{strip.Name}'s seam and the panel")),
            Measured.AtLeast(StripPlace.Inside(strip.Side, mounted.CarrierBox, mounted.RowBox) - seam, StripPlace.PanelRoom),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of($"The panel would lie on the strip's seam: widen carrier.border.{Words.Id(strip.Side)} to {LimitWords.Least(seam + StripPlace.PanelRoom, job.Units)} or more, or sew fewer rows (sewing.rows)."));
        yield return CheckResult.Judged(
            (CheckCodes.StripSeam, Say.Of($"{strip.Name}'s ends and pockets")),
            Measured.AtLeast(ToPocket(mounted, strip), MountedFastenings.SeamClearance),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of("The pockets leave no room for a strip between them: shorten pocket.leg, or sew the strip to the top."));
    }

    /// <summary>Along the carrier's edge, from the strip's end to where the pocket's mouth crosses.</summary>
    private static Length ToPocket(MountedShape mounted, StripPlace strip) => mounted.Fastened.Pockets
        .Where(pocket => pocket.Corner.End == strip.Side || pocket.Corner.Hand == strip.Side)
        .Select(pocket => StripPlace.Inside(pocket.Corner.End == strip.Side ? pocket.Corner.Hand : pocket.Corner.End, mounted.CarrierBox, strip.Finished) - pocket.Covers)
        .Aggregate(UnitMath.Min);
}
