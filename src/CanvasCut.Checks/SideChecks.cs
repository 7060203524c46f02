using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Tells where what holds the carrier's port or starboard edge passes over a tube; fasteners are looked at one by one by <see cref="FitChecks"/>.</summary>
internal static class SideChecks
{
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted) =>
        from side in mounted.Fastened.Sides
        where side is not FlapPlace { Fasteners: not null }
        from bow in job.Top.Bows.Index()
        where !Plan.BandOf(job.Top, bow.Item).Shared(side.Band).IsEmpty
        select new CheckResult(
            side.Kind == MountKind.Zipper ? CheckCodes.TubeZipper : CheckCodes.TubeMount,
            Say.Of($"{side.Name} over bow {bow.Index + 1}"),
            Verdict.Caution,
            Measured.Nothing,
            LimitSource.Practice,
            Say.Of("It passes over the tube and is worn there from below: sew the chafe patch under it first, and look at this place in every six-month check."));
}
