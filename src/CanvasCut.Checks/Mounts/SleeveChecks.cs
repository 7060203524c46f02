using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether a rod goes in and out of its sleeve, lies freely in it, and bears its bend.</summary>
internal static class SleeveChecks
{
    /// <summary>What a lug should measure along the rod to hold; common practice, no source.</summary>
    private static readonly Length LeastLug = Length.FromMillimeters(25);

    /// <summary>Two plies of a lug, which lie between the rod and the neighbour's opening.</summary>
    private static readonly Length TwoPlies = CarrierPath.ClothThickness * 2;

    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        foreach (var flap in patterns.Mounted.Fastened.Flaps.Where(flap => flap.Kind == MountKind.Sleeve))
        {
            foreach (var result in new[] { Reach(patterns.Mounted, flap), Lug(flap), Opening(flap, flap.Parts.Sleeve!), RodBend.Check(flap, patterns) })
            {
                yield return result.On(new PartKeys(patterns.Job).Fastening(flap.Side));
            }
        }
    }

    /// <summary>A rod under a pocket can be neither threaded nor drawn out: the pocket's seam bars its way.</summary>
    private static CheckResult Reach(MountedShape mounted, FlapPlace flap)
    {
        var rod = Outline.Of(flap.Rod!.Value);
        var nearest = mounted.Fastened.Pockets.Min(pocket => Witness.DistanceMm(pocket.Outline, rod));
        return CheckResult.Judged(
            (CheckCodes.MountReach, Say.Of($"rod of the {flap.Name} and pockets")),
            Measured.AtLeast(Length.FromMillimeters(nearest), MountedFastenings.SeamClearance),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of("The rod's end lies under a pocket, whose seam bars its way out: set pocket.over_zipper = false and make mount.setback larger, or shorten pocket.leg."));
    }

    private static CheckResult Lug(FlapPlace flap) => CheckResult.Judged(
        (CheckCodes.MountRoom, Say.Of($"{flap.Name}, length of a lug")),
        Measured.AtLeast(flap.Lugs!.Lug, LeastLug),
        Verdict.Fail,
        LimitSource.Practice,
        Say.Of("So short a lug tears out: make mount.sleeve.segment larger or mount.sleeve.gap smaller."));

    /// <summary>Between the far end of an opening and the neighbour's lug, which lies round the rod.</summary>
    private static CheckResult Opening(FlapPlace flap, SleeveSpec sleeve)
    {
        var kept = sleeve.Depth - SleeveOpening.DepthOf(sleeve);
        var free = sleeve.ToRod - SleeveSpec.Land - (sleeve.Rod / 2) - TwoPlies;
        return CheckResult.Judged(
            (CheckCodes.MountEdge, Say.Of($"{flap.Name}, room for the other's lugs in its openings")),
            Measured.AtLeast(free, kept),
            Verdict.Fail,
            Say.Of("the opening's own end (geometry), cloth of 0.5 mm"),
            Say.Of("The lugs would wedge in the openings: make mount.sleeve.ease larger."));
    }
}
