using CanvasCut.Language;
using CanvasCut.Patterns;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Joins the widths of pieces that are too wide for the roll.</summary>
internal static class JoinSteps
{
    public static IEnumerable<WorkStep> Of(WorkSubject subject, WholePiece piece, WorkStage stage)
    {
        if (piece.IsJoined)
        {
            yield return Step(new($"join-{piece.Id}", stage, WorkKind.Machine, Say.Of($"Join the widths: {piece.Name}"), Say.Of("Sew the widths together on the seam lines, lay the allowances to one side, tuck the raw edge in and sew it down: a felled seam.")))
                .On(piece.Widths)
                .Using(piece.Widths.Select(WorkParts.Marked))
                .Making(WorkParts.Joined(piece.Key))
                .Needing(stage == WorkStage.Carrier ? [WorkAccess.CarrierUnderNeedle] : Array.Empty<WorkReach>())
                .Taking(WorkTimes.Sewing(piece.Rows * 0.5))
                .With(Say.Of("machine, basting tape"))
                .Until(Say.Of($"The joined piece lies on its template within {subject.AtMost(2)}; no raw edge shows."))
                .Seen(WorkPicture.Of(piece.Widths[0], PieceLineKind.Stitch));
        }
    }
}
