using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Bonds the panel to the sewn carrier and lets it cure; no machine sews on the carrier after that.</summary>
internal static class BondSteps
{
    public static IEnumerable<WorkStep> Of(WorkSubject subject)
    {
        yield return Lay(subject);
        yield return Cure(subject);
        yield return Prove(subject);
        if (subject.ExitPatch is not null)
        {
            yield return SetGrommet(subject);
        }
    }

    /// <summary>What the carrier with its panel is called when nothing more is done to it by itself.</summary>
    public static string Result(WorkSubject subject) => subject.ExitPatch is null ? WorkParts.ProvedCarrier : WorkParts.FinishedCarrier;

    private static WorkStep Lay(WorkSubject subject)
    {
        var (limits, units) = (subject.Job.Conditions.Bonding.Limits, subject.Job.Units);
        return Step(new("bond", WorkStage.Bond, WorkKind.Bond, Say.Of("Bond the panel to the carrier"), HowToLay(subject)))
            .Using([.. subject.CarrierSides, .. subject.IsBondFirst ? Array.Empty<string>() : [WorkParts.StretchedTop]])
            .Making(WorkParts.LaidPanel)
            .Closing(WorkAccess.CarrierUnderNeedle)
            .Taking(BondingTimes.Laying)
            .Waiting(BondingTimes.Dwell)
            .With(HasTape(subject) ? Say.Of("foam tape, alcohol wipes, roller") : Say.Of("alcohol wipes, roller"))
            .When(Say.Of($"Surfaces from {LimitWords.Least(limits.LeastSurface, units)} to {LimitWords.Most(limits.MostSurface, units)}, dry, and at least {LimitWords.Least(limits.DewMargin, units)} above the dew point."))
            .Until(Say.Of($"The panel lies within {subject.AtMost(2)} of its marks on every side; no bubble, no lifted edge."))
            .Minding(Say.Of("What the makers of panel and tape say goes before this. Solvents burn: no flame, fresh air, gloves. Do not bend the panel below its radius.") + Raw(subject))
            .Seen(PanelPicture(subject));
    }

    private static bool HasTape(WorkSubject subject) => !subject.Job.Panel.Limits.HasAdhesive;

    private static string HowToLay(WorkSubject subject)
    {
        var ground = subject.Bond.NeedsGround ? Say.Of("webbing") : Say.Of("carrier");
        var laid = HasTape(subject)
            ? Say.Of("Lay the tape, then the panel at its marks from one edge, and roll it down hard.")
            : Say.Of("Lay the panel at its marks from one edge, drawing the liner off its back a hand's width at a time, and roll it down hard.");
        return Say.Of($"Wipe {ground} and panel with alcohol and water, half and half, one way, and let them dry; the panel's maker must allow it. {laid} Leave it {WorkText.Span(BondingTimes.Dwell)} before you move it.");
    }

    /// <summary>An adhesive back on woven cloth; the checks say it too.</summary>
    private static string Raw(WorkSubject subject) => HasTape(subject) || subject.Job.Workshop.Supplies.Cloth.IsSmooth
        ? string.Empty
        : Say.Of(" An adhesive back peels from raw woven cloth: ask the panel's maker what to bond it to before you go on.");

    private static WorkStep Cure(WorkSubject subject)
    {
        var (limits, units) = (subject.Job.Conditions.Bonding.Limits, subject.Job.Units);
        return Step(new("cure", WorkStage.Bond, WorkKind.Bond, Say.Of("Let the bond cure"), Say.Of($"Lay it flat, face down on a blanket, weighted evenly, and leave it {WorkText.Span(subject.Job.Work.Cure)} in the warm. Nothing may pull on it.")))
            .Using(WorkParts.LaidPanel)
            .Making(WorkParts.CuredPanel)
            .Taking(BondingTimes.Weighting)
            .Waiting(subject.Job.Work.Cure)
            .With(Say.Of("blanket, flat board, books"))
            .When(Say.Of($"Dry, and {LimitWords.Least(limits.HardStop, units)} or warmer all that time, the warmer the better; if it was colder, warm it, roll it again and begin to count again."))
            .Until(Say.Of("Write down when it began and when it may be lifted."))
            .Seen(PanelPicture(subject));
    }

    private static WorkStep Prove(WorkSubject subject) =>
        Step(new("prove-bond", WorkStage.Bond, WorkKind.Look, Say.Of("Try the bond"), Say.Of("Pull on each edge and corner of the panel with two fingers, about as hard as you lift a full cup.")))
            .Using(WorkParts.CuredPanel)
            .Making(WorkParts.ProvedCarrier)
            .Taking(Duration.FromMinutes(10))
            .With(Say.Of("hands, a lamp"))
            .Until(Say.Of("Nothing lifts, no gap along the rim; a lifted place is pressed again and cures again."))
            .Seen(PanelPicture(subject));

    private static WorkStep SetGrommet(WorkSubject subject) =>
        Step(new("set-grommet", WorkStage.Bond, WorkKind.Hand, Say.Of("Cut the cable's hole and set its grommet"), Say.Of("Cut the hole through carrier and patch, seal its edge, set the grommet or gland.")))
            .Using(WorkParts.ProvedCarrier)
            .Making(WorkParts.FinishedCarrier)
            .Taking(Duration.FromMinutes(20))
            .With(Say.Of("punch or sharp scissors, grommet tool"))
            .Until(Say.Of("The edge of the hole is covered all round; the cable slides without scraping."))
            .Minding(Say.Of("Put a board between cloth and panel: no blade and no hammer on the panel."))
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, subject.ExitPatch!.Widths.Select(_ => ExitBox(subject))));

    private static Outline ExitBox(WorkSubject subject)
    {
        var size = subject.ExitPatch!.Widths[0].Shape.Finished.Bounds;
        return Outline.Of(Box.Around(CarrierSteps.Centred(subject).CableExit ?? new Point(0, 0), size.WidthMm, size.HeightMm));
    }

    private static WorkPicture PanelPicture(WorkSubject subject)
    {
        var mounted = CarrierSteps.Centred(subject);
        return WorkPicture.On(subject.Patterns.WholeCarrier, Outline.Of(mounted.PanelBox), Outline.Of(mounted.CellBox));
    }
}
