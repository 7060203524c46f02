using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Makes pockets, strips and patches ready to be sewn to the top; these may be done while the bond cures.</summary>
internal static class TopPieceSteps
{
    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        .. subject.TopPieces.SelectMany(piece => JoinSteps.Of(subject, piece, WorkStage.TopPieces)),
        .. subject.Pockets.Select(piece => Ready(subject, piece, (Say.Of("Hem the mouth"), Say.Of("Hem the mouth; it runs on the bias, so do not pull. Turn both legs under and press or tape them.")), WorkKind.Machine)),
        .. subject.Strips.Select(piece => Ready(subject, piece, (Say.Of("Hem three sides"), Say.Of("Hem the ends and the free edge; turn the seam edge under and tape it.")), WorkKind.Machine)),
        .. subject.MountStrips.Select(piece => Ready(subject, piece, HowTo(subject, piece), IsFlap(subject, piece) ? WorkKind.Machine : WorkKind.Hand)),
        .. subject.Chafe.Select(piece => Ready(subject, piece, (Say.Of("Turn the edges under"), Say.Of("Turn all edges under and tape or press them.")), WorkKind.Hand)),
    ];

    /// <summary>The flap on the top of a lacing or a sleeve has two plies; a strip under fasteners has one.</summary>
    private static bool IsFlap(WorkSubject subject, WholePiece piece) => KindOf(subject, piece) is MountKind.Lacing or MountKind.Sleeve;

    private static MountKind? KindOf(WorkSubject subject, WholePiece piece) => subject.TopParts.Single(part => part.Piece == piece).Edge?.Kind;

    private static (string Name, string Do) HowTo(WorkSubject subject, WholePiece piece) => KindOf(subject, piece) switch
    {
        MountKind.Lacing => (Say.Of("Fold and close"), FlapSteps.HowToFold),
        MountKind.Sleeve => (Say.Of("Fold and close"), SleeveSteps.HowToFold),
        _ => (Say.Of("Turn the edges under"), Say.Of("Turn all edges under and tape or press them.")),
    };

    private static WorkStep Ready(WorkSubject subject, WholePiece piece, (string Name, string Do) what, WorkKind kind) =>
        Step(new($"ready-{piece.Id}", WorkStage.TopPieces, kind, $"{what.Name}: {piece.Name}", what.Do))
            .On(piece.Widths)
            .Using(piece.Flat)
            .Making(WorkParts.Ready(piece.Key))
            .Taking(kind == WorkKind.Machine ? WorkTimes.Sewing(piece.Rows) : Duration.FromMinutes(15))
            .With(kind == WorkKind.Machine ? Say.Of("machine, basting tape") : Say.Of("basting tape, bone folder"))
            .Until(Say.Of($"It lies flat on its template, the finished edges within {subject.AtMost(2)}."))
            .Seen(WorkPicture.Of(piece.Widths[0], PieceLineKind.Fold, PieceLineKind.Stitch));
}
