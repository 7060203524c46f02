using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Makes pockets, strips and patches ready to be sewn to the top; these may be done while the bond cures.</summary>
internal static class TopPieceSteps
{
    /// <summary>To turn the edges of a patch or strip under; from memory.</summary>
    private static readonly Duration Turning = Duration.FromMinutes(15);

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        .. JoinSteps.Of(subject, subject.TopPieces, WorkStage.TopPieces),
        .. Ready(subject, "pockets", subject.Pockets, new(Say.Of("Hem the mouth"), count => Say.Of($"Hem the mouths of {count} pockets"), Say.Of("Hem the mouth; it runs on the bias, so do not pull. Turn both legs under and press or tape them."), WorkKind.Machine)),
        .. Ready(subject, "strips", subject.Strips, new(Say.Of("Hem three sides"), count => Say.Of($"Hem three sides of {count} strips"), Say.Of("Hem the ends and the free edge; turn the seam edge under and tape it."), WorkKind.Machine)),
        .. subject.MountStrips.GroupBy(piece => KindOf(subject, piece)).SelectMany(alike => Ready(subject, $"{FlapSteps.Id(alike.Key)}-strips", [.. alike], HowTo(alike.Key))),
        .. Ready(subject, "chafe-patches", subject.Chafe, new(Say.Of("Turn the edges under"), count => Say.Of($"Turn the edges of {count} chafe patches under"), TurnUnder, WorkKind.Hand)),
    ];

    private static string TurnUnder => Say.Of("Turn all edges under and tape or press them.");

    private static MountKind KindOf(WorkSubject subject, WholePiece piece) => subject.TopParts.Single(part => part.Piece == piece).Edge!.Kind;

    /// <summary>The flap on the top of a lacing or a sleeve has two plies; a strip under fasteners has one.</summary>
    private static Finishing HowTo(MountKind kind)
    {
        var fold = Say.Of("Fold and close");
        static string All(int count) => Say.Of($"Fold and close {count} flaps for the top");
        return kind switch
        {
            MountKind.Lacing => new(fold, All, FlapSteps.HowToFold, WorkKind.Machine),
            MountKind.Sleeve => new(fold, All, SleeveSteps.HowToFold, WorkKind.Machine),
            _ => new(Say.Of("Turn the edges under"), count => Say.Of($"Turn the edges of {count} strips under"), TurnUnder, WorkKind.Hand),
        };
    }

    /// <summary>One step for all that are made ready in the same way; none when there are none.</summary>
    private static IEnumerable<WorkStep> Ready(WorkSubject subject, string id, IReadOnlyList<WholePiece> pieces, Finishing how)
    {
        if (pieces.Count == 0)
        {
            yield break;
        }

        ImmutableArray<StepPart> parts = [.. pieces.Select(piece => new StepPart(piece.Name, string.Empty))];
        yield return Step(new($"ready-{id}", WorkStage.TopPieces, how.Kind), new(how.Name, how.All, how.Do, parts))
            .On(pieces.SelectMany(piece => piece.Widths))
            .Using(pieces.SelectMany(piece => piece.Flat))
            .Making(pieces.Select(piece => WorkParts.Ready(piece.Key)))
            .Taking(how.Kind == WorkKind.Machine ? WorkTimes.Sewing(WholePiece.RowsOf(pieces)) : Turning * pieces.Count)
            .With(how.Kind == WorkKind.Machine ? Say.Of("machine, basting tape") : Say.Of("basting tape, bone folder"))
            .Until(Say.Of($"It lies flat on its template, the finished edges within {subject.AtMost(2)}."))
            .Seen(WorkPicture.Of(pieces[0].Widths[0], PieceLineKind.Fold, PieceLineKind.Stitch));
    }

    /// <summary>How pieces are finished by themselves.</summary>
    /// <param name="Name">What is done to one.</param>
    /// <param name="All">What is done to so many.</param>
    /// <param name="Do">How.</param>
    /// <param name="Kind">With the machine or by hand.</param>
    private sealed record Finishing(string Name, Func<int, string> All, string Do, WorkKind Kind);
}
