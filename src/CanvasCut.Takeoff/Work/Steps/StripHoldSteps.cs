using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>
/// Sets what holds the weather strips' free edges: on the carrier's side at the marks of the template, before the bond; on the top's where that
/// came to lie.
/// </summary>
internal static class StripHoldSteps
{
    /// <summary>Cut, cap and draw in a rod, and sew its hem shut; from memory.</summary>
    private static readonly Duration ARod = Duration.FromMinutes(15);

    /// <summary>What is told when the top is marked; nothing where nothing is set on it.</summary>
    public static string MarkThrough(WorkSubject subject) => subject.HeldOnTop.Any(strip => strip.Holding!.Kind != StripHold.Rod)
        ? Say.Of(" Lay each strip as it will lie, and mark what holds it through from the carrier's side.")
        : string.Empty;

    /// <summary>What is done with it when the strips are laid; nothing where they only lie.</summary>
    public static string Closed(WorkSubject subject) => subject.HeldOnTop.FirstOrDefault()?.Holding!.Kind switch
    {
        StripHold.Snaps => Say.Of(" and close its snaps"),
        StripHold.HookAndLoop => Say.Of(" and press it down"),
        _ => string.Empty,
    };

    public static IEnumerable<WorkStep> OnCarrier(WorkSubject subject)
    {
        ImmutableArray<StripPlace> strips = [.. subject.HeldOnCarrier];
        if (!strips.IsEmpty)
        {
            yield return Set(subject, strips, ("hold-strips-carrier", WorkStage.Carrier), HowOnCarrier(strips[0].Holding!.Kind))
                .Using([.. subject.Edges.Select(WorkParts.OnCarrier), .. strips.Where(strip => strip.IsOnCarrier).Select(strip => WorkParts.OnCarrier(subject.KeyOf(strip)))])
                .Making(strips.Select(strip => WorkParts.HoldOnCarrier(subject.KeyOf(strip))))
                .Needing(IsSewn(strips) ? [WorkAccess.CarrierUnderNeedle] : Array.Empty<WorkReach>())
                .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, CarrierSteps.Centred(subject).Fastened.Strips.SelectMany(Outlines)));
        }
    }

    public static IEnumerable<WorkStep> OnTop(WorkSubject subject)
    {
        ImmutableArray<StripPlace> strips = [.. subject.HeldOnTop];
        if (!strips.IsEmpty)
        {
            yield return Set(subject, strips, ("hold-strips-top", WorkStage.Top), HowOnTop(strips[0].Holding!.Kind))
                .Using([WorkParts.LooseTop, .. strips.Where(strip => !strip.IsOnCarrier).Select(strip => WorkParts.OnTop(subject.TopParts.Single(part => part.Piece?.Key == subject.KeyOf(strip))))])
                .Making(strips.Select(strip => WorkParts.HoldOnTop(subject.KeyOf(strip))))
                .Needing(IsSewn(strips) ? [WorkAccess.TopUnderNeedle] : Array.Empty<WorkReach>())
                .Seen(WorkPicture.OnTop(strips.SelectMany(Outlines)));
        }
    }

    private static bool IsSewn(ImmutableArray<StripPlace> strips) => strips[0].Holding!.Kind == StripHold.HookAndLoop;

    private static WorkStep Set(WorkSubject subject, ImmutableArray<StripPlace> strips, (string Id, WorkStage Stage) which, string how)
    {
        var kind = strips[0].Holding!.Kind;
        ImmutableArray<StepPart> parts = [.. strips.Select(strip => new StepPart(subject.Patterns.Whole(PieceKind.WeatherStrip, strip.Side)!.Title.Name, NoteOf(subject, strip)))];
        return Step(
                new(which.Id, which.Stage, kind == StripHold.HookAndLoop ? WorkKind.Machine : WorkKind.Hand),
                new(Say.Of("Set what holds the free edge"), count => Say.Of($"Set what holds {count} free edges"), how, parts))
            .On(subject.Strips.Concat(subject.CarrierStrips).Where(piece => strips.Any(strip => strip.Side == piece.Key.Side)).SelectMany(piece => piece.Widths))
            .Taking(TimeOf(strips))
            .With(kind switch
            {
                StripHold.Snaps => Say.Of("punch or awl, setting tool, block"),
                StripHold.Rod => Say.Of("fine saw, sandpaper, needle and thread"),
                _ => Say.Of("machine, basting tape"),
            })
            .Until(kind == StripHold.Rod
                ? Say.Of("The rod slides freely, its caps are on, and the hem is shut at both ends.")
                : Say.Of($"All are set, each within {subject.AtMost(1)} of its mark; none turns or lifts when you pull at it."))
            .Minding(kind switch { StripHold.Snaps => FlapSteps.Hammer, StripHold.Rod => SleeveSteps.Splinters, _ => string.Empty });
    }

    private static Duration TimeOf(ImmutableArray<StripPlace> strips) => strips[0].Holding!.Kind switch
    {
        StripHold.Snaps => FlapSteps.TimeToSet(strips.Select(strip => strip.Holding!.Centres.Length)),
        StripHold.Rod => ARod * strips.Length,
        _ => WorkTimes.Sewing(strips.Aggregate(Length.Zero, (sum, strip) => sum + (strip.Holding!.Size * (4 * strip.Holding.Centres.Length)))),
    };

    private static string NoteOf(WorkSubject subject, StripPlace strip) => strip.Holding!.Kind == StripHold.Rod
        ? Say.Of($"rod {LengthText.Of(StripHoldOrder.RodOf(strip), subject.Job.Units)} long")
        : Say.Of($"{strip.Holding.Centres.Length}, {LengthText.OfMating(strip.Holding.Pitch, subject.Job.Units)} apart");

    private static string HowOnCarrier(StripHold kind) => kind switch
    {
        StripHold.Snaps => Say.Of("Set one at each marked centre: the lower half through the carrier's face, under a strip that is sewn to the top; the upper half in the free edge of a strip that is sewn to the carrier. Try one on a scrap of as many plies first."),
        StripHold.HookAndLoop => Say.Of("Sew a square of hook tape on at each mark, all round: on the carrier's face under a strip that is sewn to the top; under the free edge of a strip that is sewn to the carrier. Round its corners first."),
        _ => HowToRod,
    };

    private static string HowOnTop(StripHold kind) => kind switch
    {
        StripHold.Snaps => Say.Of("Set one at each mark: the upper half in the free edge of a strip that is sewn to the top; the lower half in the top under a strip that is sewn to the carrier, a scrap of cloth behind it. Close each before you set the next."),
        StripHold.HookAndLoop => Say.Of("Sew a square of loop tape on at each mark, all round: under the free edge of a strip that is sewn to the top; on the top under a strip that is sewn to the carrier. Round its corners first."),
        _ => HowToRod,
    };

    private static string HowToRod => Say.Of("Cut the rod to its length, round and cap its ends, slide it into the free edge's hem, and sew the hem shut at both ends by hand.");

    private static IEnumerable<Outline> Outlines(StripPlace strip) => [Outline.Of(strip.Finished), .. strip.Holding?.Squares.Select(Outline.Of) ?? []];
}
