using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Marks the top from the carrier, takes it off, sews to it what lies under first, and puts it back.</summary>
internal static class TopSteps
{
    /// <summary>The caution of every step on the top.</summary>
    public static string Height => Say.Of("Work at height: have a second person, and do not lean on the cloth or the tubes.");

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        TapeDown(subject),
        Mark(subject),
        TakeOff(subject),
        .. subject.TopParts.GroupBy(SortOf).Select(alike => TopSewing.Of(subject, alike.Key, [.. alike])),
        .. subject.Patterns.Mounted.Fastened.Flaps.GroupBy(flap => flap.Kind).SelectMany(alike => FlapSteps.OnTop(subject, [.. alike])),
        .. StripHoldSteps.OnTop(subject),
        PutBack(subject),
    ];

    private static WorkStep TapeDown(WorkSubject subject)
    {
        var laid = subject.IsBondFirst ? string.Empty : Say.Of(" Lay the panel on it, loose, while you do so.");
        var (name, what) = subject.HasZippersOnly ? (Say.Of("Tape the zippers to the top"), Say.Of("the halves")) : (Say.Of("Tape the carrier to the top"), Say.Of("its edges, and what is sewn to the top beside them,"));
        return Step(new("tape-to-top", WorkStage.Mark, WorkKind.Mark, name, Say.Of($"{MountText.TapeDown(subject.Patterns.Mounted.Fastened)} Lay the carrier on the stretched top at its marks, smooth it from the middle, and tape {what} down, both ends first.{laid}")))
            .Using(subject.IsBondFirst ? [BondSteps.Result(subject)] : subject.CarrierSides)
            .Making(Taped(subject))
            .Needing(WorkAccess.TopStretched)
            .Opening(WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(45))
            .With(Say.Of("tape measure, basting tape, a helper"))
            .When(Say.Of("In a calm; not on a cold day, for cold cloth is short. The top stretched as it is used."))
            .Until(Say.Of($"No wrinkle in carrier or top; the corners agree with the table of marks within {subject.AtMost(3)}; the diagonals are equal within {subject.AtMost(3)}."))
            .Minding(Height)
            .Seen(WorkPicture.OnTop([Outline.Of(subject.Patterns.Mounted.CarrierBox), .. subject.Edges.Select(edge => Outline.Of(edge.Band))]));
    }

    private static WorkPart Taped(WorkSubject subject) => subject.HasZippersOnly ? WorkParts.TapedZippers : WorkParts.TapedCarrier;

    /// <summary>As in "Then unzip the carrier."; what was taped to the top stays there.</summary>
    private static string TakenOff(WorkSubject subject) => subject.HasZippersOnly ? Say.Of("Then unzip the carrier.") : Say.Of("Then open what is closed and take the carrier off.");

    private static WorkStep Mark(WorkSubject subject) =>
        Step(new("mark-pockets", WorkStage.Mark, WorkKind.Mark, subject.Strips.IsEmpty ? Say.Of("Mark pockets and patches with the carrier in place") : Say.Of("Mark pockets, strip and patches with the carrier in place"), HowToMark(subject)))
            .On(subject.TopPieces.SelectMany(piece => piece.Widths))
            .Using([Taped(subject), .. subject.TopPieces.Select(piece => WorkParts.Ready(piece.Key))])
            .Making(WorkParts.MarkedTop)
            .Needing(WorkAccess.TopStretched, WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(15 + (5 * subject.TopPieces.Count())))
            .With(Say.Of("chalk, tape measure"))
            .Until(Say.Of($"Every mark of the table is on the cloth, port and starboard, within {subject.AtMost(3)}; each corner slides into its pocket without force."))
            .Minding(Height)
            .Seen(WorkPicture.OnTop(subject.TopParts.Where(part => part.Piece is not null).Select(part => part.Outline)));

    private static string HowToMark(WorkSubject subject)
    {
        var put = subject.Strips.IsEmpty
            ? Say.Of("Put each pocket over its corner with the carrier in it")
            : Say.Of($"Put each pocket over its corner with the carrier in it, and the strip over its {(subject.HasZippersOnly ? Say.Of("zipper") : Say.Of("edge"))}");
        return Say.Of($"{put}; mark their edges on the top. Mark the patches on its underside where the tubes touch.{MountText.MarkThrough(subject.Patterns.Mounted.Fastened)}{StripHoldSteps.MarkThrough(subject)} {TakenOff(subject)}");
    }

    private static WorkStep TakeOff(WorkSubject subject) =>
        Step(new("take-top-off", WorkStage.Mark, WorkKind.Hand, Say.Of("Take the top off its frame"), subject.HasZippersOnly ? Say.Of("Secure the tubes, then take the top off with the zipper halves taped to it.") : Say.Of("Secure the tubes, then take the top off with whatever is taped to it.")))
            .OnceForAll()
            .Using(WorkParts.MarkedTop)
            .Making(WorkParts.LooseTop)
            .Opening(WorkAccess.TopUnderNeedle)
            .Closing(WorkAccess.TopStretched, WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(30))
            .With(Say.Of("a helper"))
            .When(Say.Of("In a calm."))
            .Until(subject.HasZippersOnly ? Say.Of("All marks are still to be seen; the taped halves have not moved.") : Say.Of("All marks are still to be seen; nothing that is taped has moved."))
            .Minding(Say.Of("A frame without its top can fold: tie it up. ") + Height)
            .Seen(WorkPicture.OnTop(Plan.OutlineOf(subject.Job.Top)));

    private static TopSort SortOf(TopPart part) => new(part.Layer, part.Edge?.Kind, part.Edge is FlapPlace);

    private static WorkStep PutBack(WorkSubject subject) =>
        Step(new("put-top-back", WorkStage.Top, WorkKind.Hand, Say.Of("Put the top back on its frame"), Say.Of("Seal the rows against rain if the cloth's maker says so, then stretch the top as before.")))
            .OnceForAll()
            .Using([WorkParts.LooseTop, .. subject.TopParts.Select(part => WorkParts.OnTop(part)), .. subject.Patterns.Mounted.Fastened.Flaps.Where(flap => flap.Fasteners is not null).Select(WorkParts.SetOnTop), .. subject.HeldOnTop.Select(strip => WorkParts.HoldOnTop(subject.KeyOf(strip)))])
            .Making(WorkParts.StretchedTop)
            .Opening(WorkAccess.TopStretched)
            .Closing(WorkAccess.TopUnderNeedle)
            .Taking(Duration.FromMinutes(40))
            .With(Say.Of("a helper, seam sealer"))
            .When(Say.Of("In a calm."))
            .Until(Say.Of($"The top is as tight as before; the {(subject.HasZippersOnly ? Say.Of("zippers'") : Say.Of("fastenings'"))} diagonals are equal within {subject.AtMost(5)}."))
            .Minding(Height)
            .Seen(WorkPicture.OnTop([Plan.OutlineOf(subject.Job.Top), .. subject.TopParts.Select(part => part.Outline)]));
}
