using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Bonds the panel to the sewn carrier and lets it cure; no machine sews on the carrier after that.</summary>
internal static class BondSteps
{
    public static IEnumerable<WorkStep> Of(WorkSubject subject)
    {
        ImmutableArray<CableHole> under = [.. Holes(subject).Where(hole => hole.IsUnderPanel)], beside = [.. Holes(subject).Where(hole => !hole.IsUnderPanel)];
        if (!under.IsEmpty)
        {
            yield return BushHoles(subject, under);
        }

        yield return Lay(subject, hasBushed: !under.IsEmpty);
        yield return Cure(subject);
        yield return Prove(subject);
        if (!beside.IsEmpty)
        {
            yield return SetGrommets(subject, beside);
        }
    }

    private static ImmutableArray<CableHole> Holes(WorkSubject subject) => CableHole.All(subject.Job, CarrierSteps.Centred(subject));

    /// <summary>A hole that the panel will lie over is cut and bushed while it can be reached.</summary>
    private static WorkStep BushHoles(WorkSubject subject, ImmutableArray<CableHole> holes) =>
        Step(new("bush-hole", WorkStage.Bond, WorkKind.Hand, holes.Length > 1 ? Say.Of("Cut the cables' holes and bush them flat") : Say.Of("Cut the cable's hole and bush it flat"), Say.Of("Cut the hole through carrier and patch, seal its edge and bush it so that nothing stands above the tape: the panel comes over it, and nobody reaches it then.")))
            .Using(subject.CarrierSides)
            .Making(WorkParts.BushedCarrier)
            .Taking(Duration.FromMinutes(20) * holes.Length)
            .With(Say.Of("punch or sharp scissors, flat bushing"))
            .Until(Say.Of("The edge of the hole is covered all round; the cable slides without scraping."))
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, [.. holes.Select(hole => Outline.Of(hole.Patch))]));

    /// <summary>What the carrier with its panel is called when nothing more is done to it by itself.</summary>
    public static WorkPart Result(WorkSubject subject) =>
        Holes(subject).Any(hole => !hole.IsUnderPanel) ? WorkParts.FinishedCarrier : WorkParts.ProvedCarrier;

    private static WorkStep Lay(WorkSubject subject, bool hasBushed)
    {
        var (limits, units) = (subject.Job.Conditions.Bonding.Limits, subject.Job.Units);
        return Step(new("bond", WorkStage.Bond, WorkKind.Bond, subject.Job.Row is null ? Say.Of("Bond the panel to the carrier") : Say.Of("Bond the panels to the carrier"), HowToLay(subject)))
            .Using([.. subject.CarrierSides, .. hasBushed ? [WorkParts.BushedCarrier] : Array.Empty<WorkPart>(), .. subject.IsBondFirst ? Array.Empty<WorkPart>() : [WorkParts.StretchedTop]])
            .Making(WorkParts.LaidPanel)
            .Closing(WorkAccess.CarrierUnderNeedle)
            .Taking(BondingTimes.Laying * subject.Patterns.Bonds.Length)
            .Waiting(BondingTimes.Dwell)
            .With(subject.Patterns.Bond.HasTape ? Say.Of("foam tape, alcohol wipes, roller") : Say.Of("alcohol wipes, roller"))
            .When(Say.Of($"Surfaces from {LimitWords.Least(limits.LeastSurface, units)} to {LimitWords.Most(limits.MostSurface, units)}, dry, and at least {LimitWords.Least(limits.DewMargin, units)} above the dew point."))
            .Until(subject.Job.Row is null
                ? Say.Of($"The panel lies within {subject.AtMost(2)} of its marks on every side; no bubble, no lifted edge.")
                : Say.Of($"Each panel lies within {subject.AtMost(2)} of its marks on every side, the gaps are as drawn; no bubble, no lifted edge."))
            .Minding(Say.Of("What the makers of panel and tape say goes before this. Solvents burn: no flame, fresh air, gloves. Do not bend the panel below its radius.") + Raw(subject))
            .Seen(PanelPicture(subject));
    }

    private static string HowToLay(WorkSubject subject)
    {
        var bond = subject.Patterns.Bond;
        var ground = bond.Ground switch
        {
            BondGround.Webbing => Say.Of("webbing"),
            BondGround.Patch => Say.Of("coated patch"),
            _ => Say.Of("carrier"),
        };
        var laid = subject.Job.Row is not null ? string.Join(' ', subject.Patterns.EachPanel.Select(LayInRow))
            : bond.HasTape ? Say.Of($"Lay the {bond.Tape.Length} strips of tape at their marks, then the panel at its marks from one edge, and roll it down hard, but not over the junction box.")
            : Say.Of("Lay the panel at its marks from one edge, drawing the liner off its back a hand's width at a time, and roll it down hard, but not over the junction box.");
        return subject.Job.Row is not null
            ? Say.Of($"Wipe {ground} and panels with alcohol and water, half and half, one way, and let them dry; the panels' maker must allow it. One after the other: {laid} Leave them {WorkText.Span(BondingTimes.Dwell)} before you move anything.")
            : Say.Of($"Wipe {ground} and panel with alcohol and water, half and half, one way, and let them dry; the panel's maker must allow it. {laid} Leave it {WorkText.Span(BondingTimes.Dwell)} before you move it.");
    }

    /// <summary>How one panel of several is laid.</summary>
    private static string LayInRow(PatternSet panel) => panel.Bond.HasTape
        ? Say.Of($"Panel \"{panel.Job.PanelName}\": lay its {panel.Bond.Tape.Length} strips of tape at their marks, then the panel at its marks from one edge, and roll it down hard, but not over its junction box.")
        : Say.Of($"Panel \"{panel.Job.PanelName}\": lay it at its marks from one edge, drawing the liner off its back a hand's width at a time, and roll it down hard, but not over its junction box.");

    /// <summary>An adhesive back on woven cloth; the checks say it too.</summary>
    private static string Raw(WorkSubject subject) => subject.Patterns.Bonds.Any(bond => bond is { HasTape: false, Ground: BondGround.Cloth }) && !subject.Job.Workshop.Supplies.Cloth.IsSmooth
        ? Say.Of(" An adhesive back peels from raw woven cloth: ask the panel's maker what to bond it to before you go on.")
        : string.Empty;

    private static WorkStep Cure(WorkSubject subject)
    {
        var (limits, units) = (subject.Job.Conditions.Bonding.Limits, subject.Job.Units);
        return Step(new("cure", WorkStage.Bond, WorkKind.Bond, Say.Of("Let the bond cure"), CureText(subject)))
            .Using(WorkParts.LaidPanel)
            .Making(WorkParts.CuredPanel)
            .Taking(BondingTimes.Weighting)
            .Waiting(subject.Job.Work.Cure)
            .With(Support(subject) is null ? Say.Of("blanket, flat board, books") : Say.Of("foam board or folded blankets, flat board, books"))
            .When(Say.Of($"Dry, and {LimitWords.Least(limits.HardStop, units)} or warmer all that time, the warmer the better; if it was colder, warm it, roll it again and begin to count again."))
            .Until(Say.Of("Write down when it began and when it may be lifted."))
            .Seen(PanelPicture(subject));
    }

    /// <summary>A box on the face hangs free in a gap of the support, which is thicker than the box is high.</summary>
    private static string CureText(WorkSubject subject)
    {
        var how = Boxes(subject).Any(box => box.IsAtBack) ? Say.Of("Lay it flat, face up, the box at its back free in a gap of what it lies on, weighted evenly beside the box,")
            : Support(subject) is { } support ? Say.Of($"Lay it flat, face down on foam board or folded blankets at least {support} thick with a gap for the junction box, so that the box hangs free; weight it evenly all round the gap, nothing over the box,")
            : Say.Of("Lay it flat, face down on a blanket, the junction box free in a gap of what it lies on, weighted evenly, nothing over the box,");
        return Say.Of($"{how} and leave it {WorkText.Span(subject.Job.Work.Cure)} in the warm. Nothing may pull on it.");
    }

    private static IEnumerable<JunctionBox> Boxes(WorkSubject subject) => subject.Patterns.Mounted.Panels.Select(panel => panel.Lies.Fittings.JunctionBox).OfType<JunctionBox>();

    /// <summary>Between a hanging box and the table; common practice, no source.</summary>
    private static readonly Length FreeUnderBox = Length.FromMillimeters(5);

    /// <summary>
    /// How thick the support must be at least under a panel that lies on its face; null when there is no box on it, or its place is not known.
    /// </summary>
    private static string? Support(WorkSubject subject) =>
        Boxes(subject).Where(box => !box.IsAtBack).OrderByDescending(box => box.Height).FirstOrDefault() is { } box ? LimitWords.Least(box.Height + FreeUnderBox, subject.Job.Units) : null;

    private static WorkStep Prove(WorkSubject subject) =>
        Step(new("prove-bond", WorkStage.Bond, WorkKind.Look, Say.Of("Try the bond"), Say.Of("Pull on each edge and corner of the panel with two fingers, about as hard as you lift a full cup.")))
            .Using(WorkParts.CuredPanel)
            .Making(WorkParts.ProvedCarrier)
            .Taking(Duration.FromMinutes(10))
            .With(Say.Of("hands, a lamp"))
            .Until(Say.Of("Nothing lifts, no gap along the rim; a lifted place is pressed again and cures again."))
            .Seen(PanelPicture(subject));

    private static WorkStep SetGrommets(WorkSubject subject, ImmutableArray<CableHole> holes) =>
        Step(new("set-grommet", WorkStage.Bond, WorkKind.Hand, holes.Length > 1 ? Say.Of("Cut the cables' holes and set their grommets") : Say.Of("Cut the cable's hole and set its grommet"), Say.Of("Cut the hole through carrier and patch, seal its edge, set the grommet or gland.")))
            .Using(WorkParts.ProvedCarrier)
            .Making(WorkParts.FinishedCarrier)
            .Taking(Duration.FromMinutes(20) * holes.Length)
            .With(Say.Of("punch or sharp scissors, grommet tool"))
            .Until(Say.Of("The edge of the hole is covered all round; the cable slides without scraping."))
            .Minding(Say.Of("Put a board between cloth and panel: no blade and no hammer on the panel."))
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, [.. holes.Select(hole => Outline.Of(hole.Patch))]));

    private static WorkPicture PanelPicture(WorkSubject subject)
    {
        var mounted = CarrierSteps.Centred(subject);
        return WorkPicture.On(subject.Patterns.WholeCarrier, [.. mounted.Panels.SelectMany(panel => new[] { Outline.Of(panel.Box), Outline.Of(panel.Cells) })]);
    }
}
