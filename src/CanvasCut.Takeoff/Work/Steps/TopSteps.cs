using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Marks the top from the carrier, takes it off, sews to it what lies under first, and puts it back.</summary>
internal static class TopSteps
{
    private const string Height = "Work at height: have a second person, and do not lean on the cloth or the tubes.";

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        TapeDown(subject),
        Mark(subject),
        TakeOff(subject),
        .. subject.TopParts.Select(part => Sew(subject, part)),
        PutBack(subject),
    ];

    private static WorkStep TapeDown(WorkSubject subject)
    {
        var laid = subject.IsBondFirst ? string.Empty : " Lay the panel on it, loose, while you do so.";
        return Step(new("tape-to-top", WorkStage.Mark, WorkKind.Mark, "Tape the zippers to the top", $"Zip the top's halves on. Lay the carrier on the stretched top at its marks, smooth it from the middle, and tape the halves down, both ends first.{laid}"))
            .Using(subject.IsBondFirst ? [BondSteps.Result(subject)] : subject.Zippers.Select(zipper => WorkParts.OnCarrier(zipper.Side)))
            .Making(WorkParts.TapedZippers)
            .Needing(WorkAccess.TopStretched)
            .Opening(WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(45))
            .With("tape measure, basting tape, a helper")
            .When($"In a calm; not on a cold day, for cold cloth is short: {subject.Degrees(BondSteps.LeastSurface)} or warmer. The top stretched as it is used.")
            .Until($"No wrinkle in carrier or top; the corners agree with the table of marks within {subject.Text(3)}; the diagonals are equal within {subject.Text(3)}.")
            .Minding(Height)
            .Seen(WorkPicture.OnTop([Outline.Of(subject.Patterns.Mounted.CarrierBox), .. subject.Zippers.Select(zipper => Outline.Of(zipper.Band))]));
    }

    private static WorkStep Mark(WorkSubject subject) =>
        Step(new("mark-pockets", WorkStage.Mark, WorkKind.Mark, "Mark pockets, strip and patches with the carrier in place", "Put each pocket over its corner with the carrier in it, and the strip over its zipper; mark their edges on the top. Mark the patches on its underside where the tubes touch. Then unzip the carrier."))
            .On(subject.TopPieces.SelectMany(piece => piece.Widths))
            .Using([WorkParts.TapedZippers, .. subject.TopPieces.Select(piece => WorkParts.Ready(piece.Id))])
            .Making(WorkParts.MarkedTop)
            .Needing(WorkAccess.TopStretched, WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(15 + (5 * subject.TopPieces.Count())))
            .With("chalk, tape measure")
            .Until($"Every mark of the table is on the cloth, port and starboard, within {subject.Text(3)}; each corner slides into its pocket without force.")
            .Minding(Height)
            .Seen(WorkPicture.OnTop(subject.TopParts.Where(part => part.Piece is not null).Select(part => part.Outline)));

    private static WorkStep TakeOff(WorkSubject subject) =>
        Step(new("take-top-off", WorkStage.Mark, WorkKind.Hand, "Take the top off its frame", "Secure the tubes, then take the top off with the zipper halves taped to it."))
            .Using(WorkParts.MarkedTop)
            .Making(WorkParts.LooseTop)
            .Opening(WorkAccess.TopUnderNeedle)
            .Closing(WorkAccess.TopStretched, WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(30))
            .With("a helper")
            .When("In a calm.")
            .Until("All marks are still to be seen; the taped halves have not moved.")
            .Minding("A frame without its top can fold: tie it up. " + Height)
            .Seen(WorkPicture.OnTop(Outline.Of(Plan.Of(subject.Job.Top))));

    private static WorkStep Sew(WorkSubject subject, TopPart part)
    {
        var rows = part.Piece?.Rows ?? subject.Zippers.Single(zipper => part.Name.StartsWith(Words.Of(zipper.Side), StringComparison.Ordinal)).Choice.Run * subject.Job.Workshop.Sewing.Rows;
        return Step(new($"sew-{part.Piece?.Id ?? part.Name.Replace(' ', '-')}-top", WorkStage.Top, WorkKind.Machine, $"Sew to the top: {part.Name}", HowToSew(part.Layer)))
            .On(part.Piece?.Widths ?? [])
            .Using([WorkParts.LooseTop, .. part.Piece is { } piece ? [WorkParts.Ready(piece.Id)] : Array.Empty<string>()])
            .Making(WorkParts.OnTop(part.Name))
            .Needing([WorkAccess.TopUnderNeedle, .. subject.TopParts.Where(part.IsUnder).Select(other => WorkAccess.Under(other.Name))])
            .Closing(WorkAccess.Under(part.Name))
            .Taking(WorkTimes.SewingOnTop(rows))
            .With(part.Layer == TopLayer.Zipper ? "machine with a zipper foot" : "machine")
            .When("The rest of the top rolled up beside the foot, nothing hanging.")
            .Until($"Within {subject.Text(2)} of its marks; each row begins and ends with {subject.Text(25)} of overstitching (US Army TM 10-8340).")
            .Minding("Support the cloth: its weight bends needles.")
            .Seen(WorkPicture.OnTop(part.Outline));
    }

    private static string HowToSew(TopLayer layer) => layer switch
    {
        TopLayer.Chafe => "Sew the patch to the underside, all round, before anything is sewn over it.",
        TopLayer.Zipper => "Sew the taped half, all rows, from end to end, ticks on their marks; the halves end level.",
        TopLayer.Pocket => "Sew both legs, all rows; the mouth stays open. Leave 5 to 10 mm (1/4 to 3/8 in) open at the lowest corner to drain.",
        _ => "Sew the turned edge, all rows; the strip falls over the closed zipper.",
    };

    private static WorkStep PutBack(WorkSubject subject) =>
        Step(new("put-top-back", WorkStage.Top, WorkKind.Hand, "Put the top back on its frame", "Seal the rows against rain if the cloth's maker says so, then stretch the top as before."))
            .Using([WorkParts.LooseTop, .. subject.TopParts.Select(part => WorkParts.OnTop(part.Name))])
            .Making(WorkParts.StretchedTop)
            .Opening(WorkAccess.TopStretched)
            .Closing(WorkAccess.TopUnderNeedle)
            .Taking(Duration.FromMinutes(40))
            .With("a helper, seam sealer")
            .When("In a calm.")
            .Until($"The top is as tight as before; the zippers' diagonals are equal within {subject.Text(5)}.")
            .Minding(Height)
            .Seen(WorkPicture.OnTop([Outline.Of(Plan.Of(subject.Job.Top)), .. subject.TopParts.Select(part => part.Outline)]));
}
