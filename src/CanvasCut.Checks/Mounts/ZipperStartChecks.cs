using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Tells whether hands reach pin and box of every zipper when the carrier's corners are in their pockets.</summary>
internal static class ZipperStartChecks
{
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted)
    {
        var keys = new PartKeys(job);
        return mounted.Fastened.Zippers.Select(zipper => OfStart(job, mounted, zipper, keys));
    }

    private static CheckResult OfStart(CarrierJob job, MountedShape mounted, ZipperPlace zipper, PartKeys keys)
    {
        var pocket = mounted.Fastened.Pockets.Single(each => IsAtStart(each.Corner, zipper));
        var needed = ZipperStart.Reach(pocket, zipper.Side, job.Fastenings.Zipper) + ZipperStart.Room;
        return CheckResult.Judged(
            (CheckCodes.ZipperStart, Say.Of($"start of the {zipper.Name} and the {pocket.Corner} pocket")),
            Measured.AtLeast(zipper.Choice.StartSetback, needed),
            Verdict.Caution,
            LimitSource.Practice,
            Say.Of($"It starts under the pocket: start and close it before that corner goes into its pocket, or set zipper.start_setback to {LengthText.Of(needed, job.Units)} or more."))
            .On(keys.Fastening(zipper.Side), keys.Pocket(pocket.Corner));
    }

    private static bool IsAtStart(Corner corner, ZipperPlace zipper) =>
        (corner.End == zipper.Side && corner.Hand == zipper.StartSide) || (corner.Hand == zipper.Side && corner.End == zipper.StartSide);
}
