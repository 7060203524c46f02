using System.Collections.Immutable;
using CanvasCut.Language;
using CanvasCut.Patterns;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Joins the widths of pieces that are too wide for the roll.</summary>
internal static class JoinSteps
{
    /// <summary>One step for all pieces of a part of the work that have widths to join; none when there are none.</summary>
    public static IEnumerable<WorkStep> Of(WorkSubject subject, IEnumerable<WholePiece> pieces, WorkStage stage)
    {
        WholePiece[] joined = [.. pieces.Where(piece => piece.IsJoined)];
        if (joined.Length == 0)
        {
            yield break;
        }

        ImmutableArray<StepPart> parts = [.. joined.Select(piece => new StepPart(piece.Name, string.Empty))];
        var how = Say.Of("Sew the widths together on the seam lines, lay the allowances to one side, tuck the raw edge in and sew it down: a felled seam.");
        yield return Step(new(stage == WorkStage.Carrier ? "join-carrier" : "join-top-pieces", stage, WorkKind.Machine), new(Say.Of("Join the widths"), count => Say.Of($"Join the widths of {count} pieces"), how, parts))
            .On(joined.SelectMany(piece => piece.Widths))
            .Using(joined.SelectMany(piece => piece.Widths).Select(WorkParts.Marked))
            .Making(joined.Select(piece => WorkParts.Joined(piece.Key)))
            .Needing(stage == WorkStage.Carrier ? [WorkAccess.CarrierUnderNeedle] : Array.Empty<WorkReach>())
            .Taking(WorkTimes.Sewing(WholePiece.RowsOf(joined) * 0.5))
            .With(Say.Of("machine, basting tape"))
            .Until(Say.Of($"The joined piece lies on its template within {subject.AtMost(2)}; no raw edge shows."))
            .Seen(WorkPicture.Of(joined[0].Widths[0], PieceLineKind.Stitch));
    }
}
