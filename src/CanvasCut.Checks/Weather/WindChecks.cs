using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells to what wind each fastening holds, and at which the panel comes off.</summary>
internal static class WindChecks
{
    /// <summary>A panel that must come off in an ordinary breeze is not fit for use: below force 6 on the Beaufort scale.</summary>
    private static readonly Speed LeastUseful = Speed.FromKnots(22);

    private static string Source => Say.Of("q x wind.coefficient (EN 1991-1-4, table 7.6), wind.edge_factor and wind.safety_factor (rules of thumb, editable)");

    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted)
    {
        var (hold, keys) = (HoldDown.Of(job, mounted), new PartKeys(job));
        foreach (var part in hold.Holds)
        {
            var result = CheckResult.Judged((part.Code, part.Subject), part.Load, Verdict.Caution, SourceOf(part.Code, part.IsAdhesiveBack), AdviceOn(part));
            yield return part.Edge is { } edge ? result.On(keys.Fastening(edge)) : result;
        }

        if (!hold.KnowsPull)
        {
            yield return new(CheckCodes.WindSeam, Say.Of("pull of the cloth in the wind"), Verdict.NotChecked, Measured.Nothing, Source, Say.Of("How far the cloth stretches is not known, and so neither what pulls at zippers, fasteners, pockets and seams: hang 5 kg on a strip 50 mm wide and give what it stretches by as stretch in the materials file."));
        }

        foreach (var code in hold.KnowsZippers ? [] : new[] { CheckCodes.WindZipper, CheckCodes.WindZipperEnd })
        {
            yield return new(code, Say.Of("zippers in the wind"), Verdict.NotChecked, Measured.Nothing, Source, Say.Of($"No figure for class {job.Conditions.Strength.Zipper.Class} was found: give wind.zipper_strength and wind.zipper_end_strength."));
        }

        foreach (var flap in hold.UnknownFasteners)
        {
            yield return new CheckResult(CheckCodes.WindFastener, flap.Name, Verdict.NotChecked, Measured.Nothing, Source, Say.Of($"No public figure was found for what pulls one off: pull yours along the cloth with a luggage scale and give mount.{Words.Table(flap.Kind)}.strength.")).On(keys.Fastening(flap.Side));
        }

        foreach (var each in EachPanel.Of(job, mounted).Where(each => BondPlan.Of(each.Job, each.Mounted).Bears is null))
        {
            yield return new(CheckCodes.WindBond, PanelWords.Of(each.Job, Say.Of("adhesive under the panel")), Verdict.NotChecked, Measured.Nothing, SourceOf(CheckCodes.WindBond, isBack: true), Say.Of("Not checked because panel.adhesive_pull is missing: ask the panel's maker what its adhesive back bears for long, pulled straight off, on the surface that it is pressed to."));
        }

        yield return Off(job, hold);
    }

    private static CheckResult Off(CarrierJob job, HoldDown hold)
    {
        var (subject, source) = (Say.Of("wind, in gusts, at which it must be off"), Say.Of("lowest of panel.max_wind, wind.off_at and what the parts hold to; limit: Beaufort 6"));
        if (!hold.KnowsPull && hold.OffAt >= LeastUseful)
        {
            return new(CheckCodes.WindOff, subject, Verdict.NotChecked, Measured.Nothing, source, Say.Of($"Not worked out, for how far the cloth stretches is not known (stretch in the materials file); it may be far below the {LimitWords.Knots(hold.OffAt)} kn that the rest would stand. Flutter is not reckoned; if the cloth shakes, take it off at once."));
        }

        var verdict = hold.OffAt < LeastUseful ? Verdict.Fail : hold.OffAt < hold.Wanted || !hold.KnowsEdges || !hold.KnowsBond ? Verdict.Caution : Verdict.Pass;
        var reason = hold.OffAt < hold.Wanted ? Say.Of($"what gives first is {hold.Weakest.Subject}")
            : job.PanelsMaxWind is { } most && most <= job.Conditions.Wind.OffAt ? Say.Of("the panel's maker says so")
            : "wind.off_at";
        var maker = job.Panels.Any(each => each.Panel.Limits.MaxWind is null) ? Say.Of(" Ask the panel's maker for a limit and give it as panel.max_wind.") : string.Empty;
        return new(
            CheckCodes.WindOff,
            subject,
            verdict,
            Measured.AtLeast(hold.OffAt, LeastUseful),
            source,
            Say.Of($"Take it off before gusts of {LimitWords.Knots(hold.OffAt)} kn, that is a mean wind of about {LimitWords.Knots(hold.MeanAtOff)} kn, force {hold.ForceAtOff}: {reason}. Flutter is not reckoned; if the cloth shakes, take it off at once.{maker}"));
    }

    private static string SourceOf(string code, bool isBack) => code switch
    {
        CheckCodes.WindBond when isBack => Say.Of("panel.adhesive_pull, from the panel's maker, with no safety added"),
        CheckCodes.WindBond => Say.Of("0.25 psi for long-time load: a foam tape maker's answer, with its own safety in it"),
        CheckCodes.WindFastener => Say.Of($"{Source}; mount.*.strength is yours, hook-and-loop's peel from memory"),
        CheckCodes.WindZipper or CheckCodes.WindZipperEnd => Say.Of($"{Source}; EN 16732 and BS 3084, class C"),
        _ => Say.Of($"{Source}; seam type 301: stitches an inch x thread x 1.5"),
    };

    private static string AdviceOn(WindHold part)
    {
        var remedy = part.Code switch
        {
            CheckCodes.WindBond when part.IsAdhesiveBack => Say.Of("Its back alone does not hold it: ask its maker for a stronger one, or take it off earlier (wind.off_at)."),
            CheckCodes.WindBond => Say.Of("Lay more strips, or wider tape, under the panel (bonding.tape_length, bonding.tape_width)."),
            CheckCodes.WindZipperEnd => Say.Of("Bring the zipper's ends nearer the corners (zipper.setback), widen carrier.border so that the cloth may give, or choose a heavier class and give its strength (wind.zipper_end_strength)."),
            CheckCodes.WindFastener when part.Load.Reading?.Value is ForcePerLength => Say.Of("Hook-and-loop peels off from its inner edge: hold this edge by a zipper or by fasteners, or give the peel of a stronger tape (mount.hook_and_loop.peel)."),
            CheckCodes.WindFastener => Say.Of("Set the fasteners closer (mount.*.pitch), or hold this edge by a zipper."),
            CheckCodes.WindSleeve => Say.Of("Make the lugs longer against their gaps (mount.sleeve.segment), or choose a stronger thread (wind.thread_strength) or a shorter stitch."),
            CheckCodes.WindZipper => Say.Of("Choose a heavier class of zipper (wind.zipper_class)."),
            _ => Say.Of("Choose a stronger thread (wind.thread_strength) or a shorter stitch."),
        };
        return Say.Of($"It holds to gusts of {LimitWords.Knots(part.HoldsTo)} kn. {BoundsOf(part)}{remedy}");
    }

    private static string BoundsOf(WindHold part) => part.Bounds switch
    {
        { Limp: { } limp } bounds => Say.Of($"With a stiff panel it bears {QuantityWords.Of(bounds.Stiff)}, with a limp one {QuantityWords.Of(limp)}; the worse counts. "),
        _ => string.Empty,
    };
}
