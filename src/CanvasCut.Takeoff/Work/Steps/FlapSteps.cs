using System.Collections.Immutable;
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
    public static string Hammer => Say.Of("A setting tool is struck hard: wear glasses, mind your fingers, and work on something that does not spring.");

    /// <summary>How a flap is made of its strip.</summary>
    public static string HowToFold => Say.Of("Fold the corners in, turn all raw edges in, fold the flap in half and close its ends.");

    /// <summary>A kind of fastening in the ids of steps.</summary>
    public static string Id(MountKind kind) => kind == MountKind.HookAndLoop ? "hook-and-loop" : Words.Table(kind);

    /// <summary>Flaps of one kind made ready, sewn to the carrier, and their fasteners set; all before the bond.</summary>
    public static IEnumerable<WorkStep> OnCarrier(WorkSubject subject, ImmutableArray<FlapPlace> flaps)
    {
        yield return Ready(subject, flaps);
        yield return Sew(subject, flaps);
        if (flaps[0].Fasteners is not null)
        {
            yield return Set(subject, flaps);
        }

        if (flaps[0].Kind == MountKind.Sleeve)
        {
            yield return SleeveSteps.CutRods(subject, flaps);
        }
    }

    /// <summary>Sets what belongs on the top, where it was marked from the carrier, on edges held alike.</summary>
    public static IEnumerable<WorkStep> OnTop(WorkSubject subject, ImmutableArray<FlapPlace> flaps)
    {
        if (flaps[0].Fasteners is null)
        {
            yield break;
        }

        var kind = flaps[0].Kind;
        ImmutableArray<StepPart> parts = [.. flaps.Select(flap => new StepPart(flap.Name, Say.Of($"{flap.Fasteners!.Count} of them")))];
        var how = kind == MountKind.Lacing
            ? Say.Of("Set the eyelets at their marks in the flap on the top.")
            : Say.Of("Set the top's parts at their marks, through the cloth and the strip under it, from the middle outward. Close the carrier's on each before you set the next.");
        yield return Step(new($"set-{Id(kind)}-top", WorkStage.Top, WorkKind.Hand), new(Say.Of("Set on the top"), count => Say.Of($"Set on the top: {Words.Of(kind)} of {count} edges"), how, parts))
            .Using([WorkParts.LooseTop, .. flaps.Select(flap => WorkParts.OnTop(subject.TopPartOf(flap)))])
            .Making(flaps.Select(WorkParts.SetOnTop))
            .Taking(Setting(flaps))
            .With(Say.Of("punch or awl, setting tool, block"))
            .Until(Say.Of($"All are set, each within {subject.AtMost(1)} of its mark; none turns or lifts when you pull at it."))
            .Minding(Hammer)
            .Seen(WorkPicture.OnTop(flaps.SelectMany(flap => Rims(flap, flap.CentresOnTop).Prepend(Outline.Of(flap.OnTop)))));
    }

    private static WorkStep Ready(WorkSubject subject, ImmutableArray<FlapPlace> flaps)
    {
        var kind = flaps[0].Kind;
        WholePiece[] pieces = [.. flaps.Select(subject.FlapOf)];
        ImmutableArray<StepPart> parts = [.. pieces.Select(piece => new StepPart(piece.Name, string.Empty))];
        var how = kind switch
        {
            MountKind.HookAndLoop => Say.Of("Fold the corners in, turn all raw edges in, fold the flap in half and close its ends. Then sew the hook tape on its underside, hooks outward, both edges and both ends."),
            MountKind.Sleeve => SleeveSteps.HowToFold,
            _ => HowToFold,
        };
        return Step(new($"ready-{Id(kind)}-flaps", WorkStage.Carrier, WorkKind.Machine), new(Say.Of("Fold and close"), count => Say.Of($"Fold and close {count} flaps for the carrier"), how, parts))
            .On(pieces.SelectMany(piece => piece.Widths))
            .Using(pieces.SelectMany(piece => piece.Flat))
            .Making(pieces.Select(piece => WorkParts.Ready(piece.Key)))
            .Taking(WorkTimes.Sewing(WholePiece.RowsOf(pieces)))
            .With(Say.Of("machine, basting tape, bone folder"))
            .Until(kind == MountKind.Sleeve ? SleeveSteps.Folded(subject) : Say.Of($"It lies flat, the finished edges within {subject.AtMost(2)}; every centre is still to be seen."))
            .Minding(kind == MountKind.Sleeve ? SleeveSteps.HotKnife : string.Empty)
            .Seen(WorkPicture.Of(pieces[0].Widths[0], PieceLineKind.Fold, PieceLineKind.Stitch));
    }

    private static WorkStep Sew(WorkSubject subject, ImmutableArray<FlapPlace> flaps)
    {
        WholePiece[] pieces = [.. flaps.Select(subject.FlapOf)];
        ImmutableArray<StepPart> parts = [.. flaps.Zip(pieces, (flap, piece) => new StepPart(piece.Name, Say.Of($"{subject.Text(flap.AsEnd.Flap.HeightMm - MountSpec.Lap.Millimeters)} beyond the edge")))];
        var how = Say.Of($"Lay the flap's raw edges {subject.Text(MountSpec.Lap.Millimeters)} under the carrier's edge, end on end mark, and sew all rows through the hem.");
        return Step(new($"sew-{Id(flaps[0].Kind)}-flaps-carrier", WorkStage.Carrier, WorkKind.Machine), new(Say.Of("Sew to the carrier"), count => Say.Of($"Sew {count} flaps to the carrier"), how, parts))
            .On([.. subject.Carrier.Widths, .. pieces.SelectMany(piece => piece.Widths)])
            .Using([WorkParts.HemmedCarrier, .. pieces.Select(piece => WorkParts.Ready(piece.Key))])
            .Making(flaps.Select(WorkParts.OnCarrier))
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Taking(WorkTimes.Sewing(flaps.Aggregate(Length.Zero, (sum, flap) => sum + flap.Run) * subject.Job.Workshop.Sewing.Rows))
            .With(Say.Of("machine, basting tape 1/4 in (6 mm)"))
            .Until(Say.Of($"The flap stands out as far as it should all along, within {subject.AtMost(2)}."))
            .Minding(CarrierSteps.Layers)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, flaps.Select(flap => Outline.Of(Centred(subject, flap).Flap))));
    }

    private static WorkStep Set(WorkSubject subject, ImmutableArray<FlapPlace> flaps)
    {
        var kind = flaps[0].Kind;
        FlapPlace[] centred = [.. flaps.Select(flap => Centred(subject, flap))];
        ImmutableArray<StepPart> parts = [.. flaps.Select(flap => new StepPart(flap.Name, Say.Of($"{flap.Fasteners!.Count}, {LengthText.OfMating(flap.Fasteners.Pitch, subject.Job.Units)} apart")))];
        return Step(new($"set-{Id(kind)}-carrier", WorkStage.Carrier, WorkKind.Hand), new(Say.Of("Set in the carrier's flap"), count => Say.Of($"Set in the carrier's flaps: {Words.Of(kind)} of {count} edges"), Say.Of("Set one at each marked centre. Try one on a scrap of as many plies first."), parts))
            .Using(flaps.Select(WorkParts.OnCarrier))
            .Making(flaps.Select(WorkParts.SetInCarrier))
            .Taking(Setting(flaps))
            .With(Say.Of("punch or awl, setting tool, block"))
            .Until(Say.Of($"All are set; each space within {subject.AtMost(1)}; none turns or lifts when you pull at it."))
            .Minding(Hammer)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, centred.SelectMany(flap => Rims(flap, flap.CentresOnCarrier).Prepend(Outline.Of(flap.Flap)))));
    }

    /// <summary>Five minutes to begin an edge and three each; from memory.</summary>
    public static Duration TimeToSet(IEnumerable<int> counts) => WorkTimes.RoundedUp(Duration.FromMinutes(counts.Sum(count => 5 + (3 * count))));

    private static Duration Setting(IEnumerable<FlapPlace> flaps) => TimeToSet(flaps.Select(flap => flap.Fasteners!.Count));

    private static IEnumerable<Outline> Rims(FlapPlace flap, IEnumerable<Point> centres)
    {
        var rim = flap.Parts.Spec!.Diameter.Millimeters;
        return centres.Select(centre => Outline.Of(Box.Around(centre, rim, rim)));
    }

    /// <summary>The flap as it lies on the carrier's own piece.</summary>
    public static FlapPlace Centred(WorkSubject subject, FlapPlace flap) =>
        CarrierSteps.Centred(subject).Fastened.Flaps.Single(each => each.Side == flap.Side);
}
