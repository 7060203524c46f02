using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what holds the edges in the place of zippers sits well; nothing for zippers. Rods: <see cref="SleeveChecks"/>.</summary>
internal static class MountChecks
{
    /// <summary>From a fastener's rim, or a tape's edge, to the flap's edge; common practice, no source.</summary>
    private static readonly Length LeastEdge = Length.FromMillimeters(3);

    /// <summary>Between neighbouring rims, for the tool that sets them; common practice, no source.</summary>
    private static readonly Length ToolRoom = Length.FromMillimeters(10);

    /// <summary>More than this is not got off in a minute or two before a squall; chosen for this program.</summary>
    private const int MostActions = 20;


    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted)
    {
        var flaps = mounted.Fastened.Flaps;
        foreach (var flap in flaps.Where(flap => flap.Kind != MountKind.Sleeve))
        {
            foreach (var result in OnFlap(job, mounted, flap))
            {
                yield return result.On(new PartKeys(job).Fastening(flap.Side));
            }
        }

        if (!mounted.Fastened.HasEndZippersOnly || mounted.Fastened.Strips.Any(strip => strip.Holding is { Kind: Design.StripHold.Snaps }))
        {
            yield return CheckResult.Judged(
                (CheckCodes.MountRemoval, Say.Of("movements of the hand to take it off")),
                Measured.AtMost(Scalar.FromAmount(RemovalActions.Of(mounted.Fastened)), Scalar.FromAmount(MostActions)),
                Verdict.Caution,
                Say.Of("chosen for this program"),
                Say.Of("So many take minutes in a rising wind: begin early, set the fasteners further apart, or hold one edge by a zipper. canvascut compare-mounts tells what each kind takes."));
        }
    }

    private static IEnumerable<CheckResult> OnFlap(CarrierJob job, MountedShape mounted, FlapPlace flap)
    {
        var table = $"mount.{Words.Table(flap.Kind)}";
        if (flap is { Fasteners: { } row, Parts.Spec: { } spec })
        {
            yield return CheckResult.Judged(
                (CheckCodes.MountPitch, Say.Of($"{flap.Name}, centre to centre")),
                Measured.AtMost(row.Pitch, MostPitch(flap.Kind).Most),
                Verdict.Caution,
                MostPitch(flap.Kind).Source,
                Say.Of($"The edge gapes and flutters between fasteners so far apart: make {table}.pitch smaller."));
            yield return CheckResult.Judged(
                (CheckCodes.MountRoom, Say.Of($"{flap.Name}, rim to rim")),
                Measured.AtLeast(row.Pitch - spec.Diameter, ToolRoom),
                Verdict.Fail,
                LimitSource.Practice,
                Say.Of($"No tool sets fasteners so close: make {table}.pitch larger."));
            yield return Reach(mounted, flap, spec);
        }

        var held = flap.Parts.Spec?.Diameter ?? job.Workshop.Supplies.Tapes.Mount.HookAndLoop.Width;
        var width = flap.Parts.Spec?.Width ?? job.Fastenings.Mount.Figures.HookAndLoop.Width;
        yield return CheckResult.Judged(
            (CheckCodes.MountEdge, Say.Of($"{flap.Name} and the flap's edge")),
            Measured.AtLeast((width - held) / 2, LeastEdge),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of($"It would hang over the flap's edge or tear out of it: make {table}.width larger."));
    }

    /// <summary>A fastener under a pocket's mouth can neither be set nor opened.</summary>
    private static CheckResult Reach(MountedShape mounted, FlapPlace flap, FastenerSpec spec)
    {
        var rims = flap.CentresOnCarrier.Concat(flap.CentresOnTop)
            .Select(centre => Geometry.RoundedBox.Circle(centre, spec.Diameter.Millimeters / 2))
            .ToList();
        var nearest = mounted.Fastened.Pockets.Min(pocket => rims.Min(rim => Geometry.Witness.DistanceMm(pocket.Outline, rim)));
        return CheckResult.Judged(
            (CheckCodes.MountReach, Say.Of($"{flap.Name} and pockets")),
            Measured.AtLeast(Length.FromMillimeters(nearest), MountedFastenings.SeamClearance),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of($"The pocket covers a fastener: make mount.{Words.Table(flap.Kind)}.end_distance larger, shorten pocket.leg, or set pocket.over_zipper = false."));
    }

    private static (Length Most, string Source) MostPitch(MountKind kind) => kind switch
    {
        MountKind.Snaps => (Length.FromInches(6), Say.Of("4 to 6 in: from memory")),
        MountKind.Twist => (Length.FromInches(10), Say.Of("6 to 10 in: from memory")),
        _ => (Length.FromInches(16), Say.Of("12 to 16 in on good tarpaulins: a forum, single source")),
    };
}
