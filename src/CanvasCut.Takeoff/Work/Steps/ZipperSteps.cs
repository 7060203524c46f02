using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Trims the zippers, caps their ends and sews the carrier's halves on.</summary>
internal static class ZipperSteps
{
    public static IEnumerable<WorkStep> OnCarrier(WorkSubject subject) =>
    [
        .. subject.Zippers.GroupBy(zipper => zipper.Choice.Kind).Select(alike => Trim(subject, alike.Key, [.. alike])),
        .. subject.EndCap is { } caps ? [Cap(subject, caps)] : Array.Empty<WorkStep>(),
        .. subject.Zippers.IsEmpty ? [] : new[] { Sew(subject) },
    ];

    private static WorkStep Trim(WorkSubject subject, ZipperKind kind, IReadOnlyList<ZipperPlace> zippers)
    {
        var isSeparating = kind == ZipperKind.Separating;
        ImmutableArray<StepPart> parts = [.. zippers.Select(zipper => new StepPart(Words.Of(zipper.Side), Say.Of($"to a run of {LengthText.OfMating(zipper.Choice.Run, subject.Job.Units)}")))];
        var how = isSeparating
            ? Say.Of("Close the zipper, measure it, and trim it at the stop end, never at the pin, to its run; put a new stop on each half there.")
            : Say.Of($"Cut the length to its run with {LengthText.Of(ZipperChoice.Tail, subject.Job.Units)} of tail at each end; put on the slider, and a stop at each end of the top's half only: so the carrier's half comes out of the slider.");
        var what = Say.Of($"{how} Tick both halves in the middle and every {LengthText.Of(ZipperChoice.TickSpacing, subject.Job.Units)} from it.");
        return Step(new(isSeparating ? "trim-zippers" : "trim-chain", WorkStage.Carrier, WorkKind.Hand), new(Say.Of("Trim and tick the zipper"), count => Say.Of($"Trim and tick {count} zippers"), what, parts))
            .Using(subject.Carrier.Widths.Take(1).Select(WorkParts.Marked))
            .Making(zippers.Select(zipper => WorkParts.Trimmed(zipper.Side)))
            .Taking(Duration.FromMinutes((isSeparating ? 15 : 25) * zippers.Count))
            .With(Say.Of("snips, pliers for stops, chalk"))
            .Until(Say.Of($"The closed run is right within {subject.AtMost(3)}; every tick is on both halves."))
            .Minding(Say.Of("Cut teeth fly: wear glasses."))
            .Seen(Picture(subject, zippers));
    }

    private static WorkStep Cap(WorkSubject subject, WholePiece caps) =>
        Step(new("cap-zippers", WorkStage.Carrier, WorkKind.Machine, Say.Of("Cap the zippers' cut ends"), Say.Of($"Fold a cap over each cut end of each half, {(IsTurned(subject) ? Say.Of("its edges turned under") : Say.Of("its edges sealed with a hot knife"))}, and sew it two or three times across, clear of the teeth that close.")))
            .On(caps.Widths)
            .Using([.. caps.Flat, .. subject.Zippers.Select(zipper => WorkParts.Trimmed(zipper.Side))])
            .Making(WorkParts.CappedZippers)
            .Needing(WorkAccess.TapeEnds)
            .Taking(WorkTimes.RoundedUp(WorkTimes.SetUp + Duration.FromMinutes(5 * caps.Widths.Sum(piece => piece.Title.Quantity))))
            .With(Say.Of("machine or needle and palm"))
            .Until(Say.Of("No raw end shows; the slider runs from end to end."))
            .Minding(IsTurned(subject) ? string.Empty : SleeveSteps.HotKnife)
            .Seen(WorkPicture.Of(caps.Widths[0], PieceLineKind.Fold, PieceLineKind.Stitch));

    private static string Half(WorkSubject subject) => subject.Patterns.Job.Fastenings.Zipper.Kind == ZipperKind.Separating
        ? Say.Of("The half with the pin goes on the carrier, the pull facing up; box and slider are for the top.")
        : Say.Of("The half without stops goes on the carrier, the pull facing up; the slider is for the top.");

    private static string Start(ZipperPlace zipper) => zipper.Choice.Kind == ZipperKind.Separating
        ? Say.Of($"the pin at the {zipper.StartName} end")
        : Say.Of($"closes from the {zipper.StartName} end");

    private static bool IsTurned(WorkSubject subject) => subject.Patterns.Job.Fastenings.Zipper.CapTurn > Length.Zero;

    private static WorkStep Sew(WorkSubject subject)
    {
        ImmutableArray<StepPart> parts = [.. subject.Zippers.Select(zipper => new StepPart(Words.Of(zipper.Side), Start(zipper)))];
        var rows = subject.Zippers.Aggregate(Length.Zero, (sum, zipper) => sum + zipper.Choice.Run) * subject.Job.Workshop.Sewing.Rows;
        var how = Say.Of($"{Half(subject)} Tape it down with the zipper closed, ticks on ticks, from the middle outward; open it and sew all rows from end to end without stretching the tape.");
        return Step(new("sew-zippers-carrier", WorkStage.Carrier, WorkKind.Machine), new(Say.Of("Sew the zipper to the carrier"), count => Say.Of($"Sew {count} zippers to the carrier"), how, parts))
            .On(subject.Carrier.Widths)
            .Using(WorkParts.HemmedCarrier, WorkParts.CappedZippers)
            .Making(subject.Zippers.Select(WorkParts.OnCarrier))
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Closing(WorkAccess.TapeEnds)
            .Taking(WorkTimes.Sewing(rows))
            .With(Say.Of("machine with a zipper foot, basting tape 1/4 in (6 mm)"))
            .Until(Say.Of($"Both halves match within {LimitWords.Most(Length.FromInches(1 / 16.0), subject.Job.Units)} when closed; the edge is flat; the slider runs from end to end."))
            .Minding(CarrierSteps.Layers)
            .Seen(Picture(subject, subject.Zippers));
    }

    private static WorkPicture Picture(WorkSubject subject, IReadOnlyList<ZipperPlace> zippers)
    {
        var sides = zippers.Select(zipper => zipper.Side).ToHashSet();
        return WorkPicture.On(subject.Patterns.WholeCarrier, CarrierSteps.Centred(subject).Fastened.Zippers.Where(zipper => sides.Contains(zipper.Side)).Select(zipper => Outline.Of(zipper.Band)));
    }
}
