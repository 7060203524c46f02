using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Bonds the panel to the sewn carrier and lets it cure; no machine sews on the carrier after that.</summary>
internal static class BondSteps
{
    /// <summary>Before a pressed bond may be handled, about half of full strength; from memory, widely printed.</summary>
    public static readonly Duration Dwell = Duration.FromMinutes(20);

    /// <summary>The least the surface should have; a tape seller's figure, others say 4 to 10 °C.</summary>
    public static readonly Temperature LeastSurface = Temperature.FromDegreesCelsius(15);

    /// <summary>Above the dew point; quoted by coating makers.</summary>
    private static readonly TemperatureDelta OverDew = TemperatureDelta.FromDegreesCelsius(3);

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
    public static WorkPart Result(WorkSubject subject) => subject.ExitPatch is null ? WorkParts.ProvedCarrier : WorkParts.FinishedCarrier;

    private static WorkStep Lay(WorkSubject subject) =>
        Step(new("bond", WorkStage.Bond, WorkKind.Bond, Say.Of("Bond the panel to the carrier"), Say.Of("Wipe webbing and panel with alcohol and water, half and half, one way, and let them dry. Lay the tape, then the panel at its marks from one edge, and roll it down hard. Leave it 20 minutes before you move it.")))
            .Using([.. subject.CarrierSides, .. subject.IsBondFirst ? Array.Empty<WorkPart>() : [WorkParts.StretchedTop]])
            .Making(WorkParts.LaidPanel)
            .Closing(WorkAccess.CarrierUnderNeedle)
            .Taking(Duration.FromMinutes(60))
            .Waiting(Dwell)
            .With(Say.Of("foam tape, alcohol wipes, roller"))
            .When(Say.Of($"Surfaces {LimitWords.Least(LeastSurface, subject.Job.Units)} or warmer, best 21 to 38 °C (70 to 100 °F), dry, and at least {LimitWords.Least(OverDew, subject.Job.Units)} above the dew point."))
            .Until(Say.Of($"The panel lies within {subject.AtMost(2)} of its marks on every side; no bubble, no lifted edge."))
            .Minding(Say.Of("What the makers of panel and tape say goes before this. Solvents burn: no flame, fresh air, gloves. Do not bend the panel below its radius."))
            .Seen(PanelPicture(subject));

    private static WorkStep Cure(WorkSubject subject) =>
        Step(new("cure", WorkStage.Bond, WorkKind.Bond, Say.Of("Let the bond cure"), Say.Of($"Lay it flat, face down on a blanket, weighted evenly, and leave it {subject.Job.Work.Cure.Hours:0.#} h in the warm. Nothing may pull on it.")))
            .Using(WorkParts.LaidPanel)
            .Making(WorkParts.CuredPanel)
            .Taking(Duration.FromMinutes(10))
            .Waiting(subject.Job.Work.Cure)
            .With(Say.Of("blanket, flat board, books"))
            .When(Say.Of($"All that time {LimitWords.Least(LeastSurface, subject.Job.Units)} or warmer and dry; if it was colder, warm it, roll it again and begin to count again."))
            .Until(Say.Of("Write down when it began and when it may be lifted."))
            .Seen(PanelPicture(subject));

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
