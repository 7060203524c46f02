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
        .. JoinSteps.Of(subject, [subject.Carrier, .. subject.Flaps, .. subject.CarrierStrips], WorkStage.Carrier),
        .. HasFlatWork(subject) ? [Flat(subject)] : Array.Empty<WorkStep>(),
        Hem(subject),
        .. ZipperSteps.OnCarrier(subject),
        .. subject.Patterns.Mounted.Fastened.Flaps.GroupBy(flap => flap.Kind).SelectMany(alike => FlapSteps.OnCarrier(subject, [.. alike])),
        .. StripSteps.OnCarrier(subject),
        .. StripHoldSteps.OnCarrier(subject),
    ];

    /// <summary>Whether anything is sewn on the carrier while it is flat: the bond's ground where it is ordered, or the cable's patch.</summary>
    private static bool HasFlatWork(WorkSubject subject) => subject.Bond.Ground != BondGround.Cloth || !subject.ExitPatches.IsEmpty;

    private static WorkStep Flat(WorkSubject subject)
    {
        var (patches, bond) = (subject.ExitPatches, subject.Bond);
        var ground = Length.FromMillimeters(bond.Rows.Sum(row => row.From.DistanceMm(row.To)));
        return Step(new("flat-work", WorkStage.Carrier, WorkKind.Machine, FlatName(subject), FlatText(subject)))
            .On([.. patches.SelectMany(patch => patch.Widths)])
            .Using([.. subject.Carrier.Flat, .. patches.SelectMany(patch => patch.Flat)])
            .Making(WorkParts.FlatCarrier)
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Taking(WorkTimes.Sewing(ground + WholePiece.RowsOf(patches)))
            .With(Say.Of("machine, basting tape"))
            .Until(Say.Of($"All of it lies flat, within {subject.AtMost(2)} of its marks."))
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, RimOf(subject)));
    }

    private static string FlatName(WorkSubject subject) =>
        subject.Job.Row is not null ? Say.Of("Sew on what lies under the panels")
        : subject.Bond.Ground == BondGround.Cloth ? Say.Of("Sew on the cable's patch")
        : subject.ExitPatches.IsEmpty ? Say.Of("Sew on what the panel is bonded to")
        : Say.Of("Sew on what the panel is bonded to, and the cable's patch");

    private static string FlatText(WorkSubject subject)
    {
        var ground = subject.Bond.Ground switch
        {
            BondGround.Webbing => Say.Of("Sew the webbing on at its marks, a row inside each long edge: foam tape does not hold on raw woven cloth."),
            BondGround.Patch => Say.Of("Sew the coated patch on at its marks, smooth face up, one row round its edge: adhesive does not hold on raw woven cloth."),
            _ => string.Empty,
        };
        var patch = subject.ExitPatches.IsEmpty ? string.Empty
            : subject.ExitPatches.Length > 1 ? Say.Of("Turn each cable exit patch under and sew it round its hole; cut no hole yet.")
            : Say.Of("Turn the cable exit patch under and sew it round its hole; cut no hole yet.");
        return $"{ground} {patch}".Trim();
    }

    private static IEnumerable<Outline> RimOf(WorkSubject subject)
    {
        var mounted = Centred(subject);
        var bond = BondPlan.Joined(BondPlan.All(subject.Job, mounted));
        foreach (var box in bond.Patches.Concat(bond.Webbing.Select(strip => strip.Box)))
        {
            yield return Outline.Of(box);
        }

        foreach (var hole in CableHole.All(subject.Job, mounted))
        {
            yield return Outline.Of(hole.Patch);
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
            .Using(HasFlatWork(subject) ? [WorkParts.FlatCarrier] : subject.Carrier.Flat)
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

    /// <summary>The mounting in the carrier's own plane.</summary>
    public static MountedShape Centred(WorkSubject subject)
    {
        var mounted = subject.Patterns.Mounted;
        return mounted.MovedBy(new Point(0, 0) - mounted.CarrierBox.Center);
    }
}
