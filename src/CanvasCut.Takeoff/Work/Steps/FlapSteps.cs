using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Makes the flaps that hold the carrier's edges in the place of zippers, and sets what they carry.</summary>
internal static class FlapSteps
{
    private static string Hammer => Say.Of("A setting tool is struck hard: wear glasses, mind your fingers, and work on something that does not spring.");

    /// <summary>How a flap is made of its strip.</summary>
    public static string HowToFold => Say.Of("Turn all raw edges in, fold the flap in half and close its ends.");

    /// <summary>The flap made ready, sewn to the carrier, and its fasteners set; all before the bond.</summary>
    public static IEnumerable<WorkStep> OnCarrier(WorkSubject subject, FlapPlace flap)
    {
        var piece = subject.FlapOf(flap);
        foreach (var step in JoinSteps.Of(subject, piece, WorkStage.Carrier))
        {
            yield return step;
        }

        yield return Ready(subject, flap, piece);
        yield return Sew(subject, flap, piece);
        if (flap.Fasteners is not null)
        {
            yield return Set(subject, flap);
        }

        if (flap.Kind == MountKind.Sleeve)
        {
            yield return SleeveSteps.CutRod(subject, flap);
        }
    }

    /// <summary>Sets what belongs on the top, where it was marked from the carrier.</summary>
    public static IEnumerable<WorkStep> OnTop(WorkSubject subject, FlapPlace flap)
    {
        if (flap.Fasteners is not { } row)
        {
            yield break;
        }

        var isLacing = flap.Kind == MountKind.Lacing;
        yield return Step(new(
                $"set-{Words.Id(flap.Side)}-{Words.Table(flap.Kind)}-top",
                WorkStage.Top,
                WorkKind.Hand,
                Say.Of($"Set on the top: {flap.Name}"),
                isLacing
                    ? Say.Of("Set the eyelets at their marks in the flap on the top.")
                    : Say.Of("Set the top's parts at their marks, through the cloth and the strip under it, from the middle outward. Close the carrier's on each before you set the next.")))
            .Using(WorkParts.LooseTop, WorkParts.OnTop(subject.TopPartOf(flap)))
            .Making(WorkParts.SetOnTop(flap))
            .Taking(Setting(row))
            .With(Say.Of("punch or awl, setting tool, block"))
            .Until(Say.Of($"{row.Count} are set, each within {subject.AtMost(1)} of its mark; none turns or lifts when you pull at it."))
            .Minding(Hammer)
            .Seen(WorkPicture.OnTop([Outline.Of(flap.OnTop), .. Rims(flap, flap.CentresOnTop)]));
    }

    private static WorkStep Ready(WorkSubject subject, FlapPlace flap, WholePiece piece) =>
        Step(new(
                $"ready-{piece.Id}",
                WorkStage.Carrier,
                WorkKind.Machine,
                Say.Of($"Fold and close: {piece.Name}"),
                flap.Kind switch
                {
                    MountKind.HookAndLoop => Say.Of("Turn all raw edges in, fold the flap in half and close its ends. Then sew the hook tape on its underside, hooks outward, both edges and both ends."),
                    MountKind.Sleeve => SleeveSteps.HowToFold,
                    _ => HowToFold,
                }))
            .On(piece.Widths)
            .Using(piece.Flat)
            .Making(WorkParts.Ready(piece.Key))
            .Taking(WorkTimes.Sewing(piece.Rows))
            .With(Say.Of("machine, basting tape, bone folder"))
            .Until(flap.Kind == MountKind.Sleeve ? SleeveSteps.Folded(subject) : Say.Of($"It lies flat, the finished edges within {subject.AtMost(2)}; every centre is still to be seen."))
            .Minding(flap.Kind == MountKind.Sleeve ? SleeveSteps.HotKnife : string.Empty)
            .Seen(WorkPicture.Of(piece.Widths[0], PieceLineKind.Fold, PieceLineKind.Stitch));

    private static WorkStep Sew(WorkSubject subject, FlapPlace flap, WholePiece piece) =>
        Step(new(
                $"sew-{piece.Id}-carrier",
                WorkStage.Carrier,
                WorkKind.Machine,
                Say.Of($"Sew to the carrier: {piece.Name}"),
                Say.Of($"Lay the flap's raw edges {subject.Text(FlapPlace.Lap.Millimeters)} under the carrier's edge, end on end mark, and sew all rows through the hem.")))
            .On([.. subject.Carrier.Widths, .. piece.Widths])
            .Using(WorkParts.HemmedCarrier, WorkParts.Ready(piece.Key))
            .Making(WorkParts.OnCarrier(flap))
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Taking(WorkTimes.Sewing(flap.Run * subject.Job.Workshop.Sewing.Rows))
            .With(Say.Of("machine, basting tape 1/4 in (6 mm)"))
            .Until(Say.Of($"The flap stands {subject.Text(flap.AsEnd.Flap.HeightMm - FlapPlace.Lap.Millimeters)} beyond the edge all along, within {subject.AtMost(2)}."))
            .Minding(CarrierSteps.Layers)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, Outline.Of(Centred(subject, flap).Flap)));

    private static WorkStep Set(WorkSubject subject, FlapPlace flap)
    {
        var (row, centred) = (flap.Fasteners!, Centred(subject, flap));
        return Step(new(
                $"set-{Words.Id(flap.Side)}-{Words.Table(flap.Kind)}-carrier",
                WorkStage.Carrier,
                WorkKind.Hand,
                Say.Of($"Set in the carrier's flap: {flap.Name}"),
                Say.Of($"Set {row.Count} at the marked centres, {LengthText.OfMating(row.Pitch, subject.Job.Units)} apart. Try one on a scrap of as many plies first.")))
            .Using(WorkParts.OnCarrier(flap))
            .Making(WorkParts.SetInCarrier(flap))
            .Taking(Setting(row))
            .With(Say.Of("punch or awl, setting tool, block"))
            .Until(Say.Of($"{row.Count} are set; each space within {subject.AtMost(1)}; none turns or lifts when you pull at it."))
            .Minding(Hammer)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, [Outline.Of(centred.Flap), .. Rims(centred, centred.CentresOnCarrier)]));
    }

    /// <summary>Five minutes to begin and three each; from memory.</summary>
    private static Duration Setting(FastenerRow row) => WorkTimes.RoundedUp(Duration.FromMinutes(5 + (3 * row.Count)));

    private static IEnumerable<Outline> Rims(FlapPlace flap, IEnumerable<Point> centres)
    {
        var rim = flap.Parts.Spec!.Diameter.Millimeters;
        return centres.Select(centre => Outline.Of(Box.Around(centre, rim, rim)));
    }

    /// <summary>The flap as it lies on the carrier's own piece.</summary>
    public static FlapPlace Centred(WorkSubject subject, FlapPlace flap) =>
        CarrierSteps.Centred(subject).Fastened.Flaps.Single(each => each.Side == flap.Side);
}
