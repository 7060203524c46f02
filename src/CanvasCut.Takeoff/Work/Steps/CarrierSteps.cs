using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>All sewing on the carrier; it is over before the panel is bonded.</summary>
internal static class CarrierSteps
{
    /// <summary>The caution of a needle at many layers.</summary>
    public static string Layers => Say.Of("Turn the wheel by hand over the corners: many layers break needles. Keep fingers from the foot and wear glasses.");

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        .. JoinSteps.Of(subject, subject.Carrier, WorkStage.Carrier),
        Flat(subject),
        Hem(subject),
        .. subject.Zippers.Select(zipper => Trim(subject, zipper)),
        .. subject.EndCap is { } caps ? [Cap(subject, caps)] : Array.Empty<WorkStep>(),
        .. subject.Zippers.Select(zipper => SewZipper(subject, zipper)),
        .. subject.Patterns.Mounted.Fastened.Flaps.SelectMany(flap => FlapSteps.OnCarrier(subject, flap)),
    ];

    private static WorkStep Flat(WorkSubject subject)
    {
        var patch = subject.ExitPatch;
        var perimeter = Length.FromMillimeters(Outline.Of(subject.Patterns.Mounted.PanelBox).PerimeterMm);
        return Step(new(
                "flat-work",
                WorkStage.Carrier,
                WorkKind.Machine,
                patch is null ? Say.Of("Sew on what the panel is bonded to") : Say.Of("Sew on what the panel is bonded to, and the cable's patch"),
                Say.Of("Sew smooth webbing or a coated patch where the panel's rim will lie: foam tape does not hold on raw woven cloth. Skip the webbing only if the panel's maker bonds to cloth.") + (patch is null ? string.Empty : Say.Of(" Turn the cable exit patch under and sew it round its hole; cut no hole yet."))))
            .On(patch?.Widths ?? [])
            .Using([.. subject.Carrier.Flat, .. patch?.Flat ?? []])
            .Making(WorkParts.FlatCarrier)
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Taking(WorkTimes.Sewing((perimeter * 2) + (patch?.Rows ?? Length.Zero)))
            .With(Say.Of("machine, basting tape"))
            .Until(Say.Of($"All of it lies flat, within {subject.AtMost(2)} of the panel's marked edge; no stitch inside the line of the cells."))
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, RimOf(subject)));
    }

    private static IEnumerable<Outline> RimOf(WorkSubject subject)
    {
        var mounted = Centred(subject);
        yield return Outline.Of(mounted.PanelBox);
        if (subject.ExitPatch is { } patch && mounted.CableExit is { } exit)
        {
            var size = patch.Widths[0].Shape.Finished.Bounds;
            yield return Outline.Of(Box.Around(exit, size.WidthMm, size.HeightMm));
        }
    }

    private static WorkStep Hem(WorkSubject subject)
    {
        var carrier = subject.Job.Carrier;
        var (hemmed, bound) = (Sides(carrier, EdgeFinish.Hem), Sides(carrier, EdgeFinish.Binding));
        var corner = carrier.Corner == CornerKind.Mitred ? Say.Of("fold the mitres first and trim only when the fold has been checked") : Say.Of("fold one hem over the other at the corners");
        var hem = hemmed.Length > 0 ? Say.Of($"Fold and sew the hem: {string.Join(", ", hemmed)}; {corner}.") : string.Empty;
        var binding = bound.Length > 0 ? Say.Of($"Bind: {string.Join(", ", bound)}.") : string.Empty;
        return Step(new("hem-carrier", WorkStage.Carrier, WorkKind.Machine, Say.Of("Finish the carrier's edges"), $"{hem} {binding}".Trim()))
            .On(subject.Carrier.Widths)
            .Using(WorkParts.FlatCarrier)
            .Making(WorkParts.HemmedCarrier)
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Taking(WorkTimes.Sewing(Length.FromMillimeters(2 * subject.Patterns.WholeCarrier.Shape.Finished.PerimeterMm)))
            .With(Say.Of("machine, basting tape, bone folder"))
            .Until(Say.Of($"Length and width within {subject.AtMost(3)} of the finished size; the diagonals equal within {subject.AtMost(3)}; rows end with {subject.Text(25)} of overstitching (US Army TM 10-8340)."))
            .Minding(Layers)
            .Seen(WorkPicture.Of(subject.Patterns.WholeCarrier, PieceLineKind.Fold, PieceLineKind.Stitch));
    }

    private static string[] Sides(CarrierSpec carrier, EdgeFinish finish) =>
        [.. Enum.GetValues<Side>().Where(side => carrier.Edges[side] == finish).Select(Words.Of)];

    private static WorkStep Trim(WorkSubject subject, ZipperPlace zipper)
    {
        var run = LengthText.OfMating(zipper.Choice.Run, subject.Job.Units);
        var how = zipper.Choice.Kind == ZipperKind.Separating
            ? Say.Of($"Close the zipper, measure it, and trim it at the stop end, never at the pin, to a run of {run}.")
            : Say.Of($"Cut the length to a run of {run} with {LengthText.Of(ZipperChoice.Tail, subject.Job.Units)} of tail at each end; put on the slider, and a stop at each end of the top's half only: so the carrier's half comes out of the slider.");
        return Step(new($"trim-zipper-{Words.Id(zipper.Side)}", WorkStage.Carrier, WorkKind.Hand, Say.Of($"Trim and tick the {Words.Of(zipper.Side)} zipper"), Say.Of($"{how} Tick both halves in the middle and every {LengthText.Of(ZipperChoice.TickSpacing, subject.Job.Units)} from it.")))
            .Using(WorkParts.Marked(subject.Carrier.Widths[0]))
            .Making(WorkParts.Trimmed(zipper.Side))
            .Taking(Duration.FromMinutes(zipper.Choice.Kind == ZipperKind.Separating ? 15 : 25))
            .With(Say.Of("snips, pliers for stops, chalk"))
            .Until(Say.Of($"The closed run is right within {subject.AtMost(3)}; every tick is on both halves."))
            .Minding(Say.Of("Cut teeth fly: wear glasses."))
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, Outline.Of(Band(subject, zipper))));
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

    private static bool IsTurned(WorkSubject subject) => subject.Patterns.Job.Fastenings.Zipper.CapTurn > Length.Zero;

    private static WorkStep SewZipper(WorkSubject subject, ZipperPlace zipper) =>
        Step(new($"sew-zipper-{Words.Id(zipper.Side)}-carrier", WorkStage.Carrier, WorkKind.Machine, Say.Of($"Sew the {Words.Of(zipper.Side)} zipper to the carrier"), Say.Of("Tape one half down with the zipper closed, ticks on ticks, from the middle outward; open it and sew all rows from end to end without stretching the tape.")))
            .On(subject.Carrier.Widths)
            .Using(WorkParts.HemmedCarrier, WorkParts.CappedZippers)
            .Making(WorkParts.OnCarrier(zipper))
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Closing(WorkAccess.TapeEnds)
            .Taking(WorkTimes.Sewing(zipper.Choice.Run * subject.Job.Workshop.Sewing.Rows))
            .With(Say.Of("machine with a zipper foot, basting tape 1/4 in (6 mm)"))
            .Until(Say.Of($"Both halves match within {LimitWords.Most(Length.FromInches(1 / 16.0), subject.Job.Units)} when closed; the edge is flat; the slider runs from end to end."))
            .Minding(Layers)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, Outline.Of(Band(subject, zipper))));

    /// <summary>The mounting in the carrier's own plane.</summary>
    public static MountedShape Centred(WorkSubject subject)
    {
        var mounted = subject.Patterns.Mounted;
        return mounted.MovedBy(new Point(0, 0) - mounted.CarrierBox.Center);
    }

    private static Box Band(WorkSubject subject, ZipperPlace zipper) =>
        Centred(subject).Fastened.Zippers.Single(each => each.Side == zipper.Side).Band;
}
