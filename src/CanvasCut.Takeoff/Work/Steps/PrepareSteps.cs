using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Measures, templates, cutting and marking.</summary>
internal static class PrepareSteps
{
    /// <summary>To measure another panel with its box; from memory.</summary>
    private static readonly Duration FurtherPanel = Duration.FromMinutes(10);

    private static string Height => Say.Of("Work on a top is work at height: have a second person, and do not lean on the cloth or the tubes.");

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        Measure(subject),
        Print(subject),
        TryOn(subject),
        Cut(subject),
        Mark(subject),
    ];

    private static WorkStep Measure(WorkSubject subject) =>
        Step(new("measure", WorkStage.Prepare, WorkKind.Look, Say.Of("Measure again"), Say.Of("Measure the stretched top, its bows and keep-outs, and the panel with its box, each length twice, and hold them against the job file.")))
            .OnceForAll(FurtherPanel)
            .Making(WorkParts.Measures)
            .Needing(WorkAccess.TopStretched)
            .Taking(Duration.FromMinutes(45))
            .With(Say.Of("soft tape, straightedge, a helper"))
            .Until(Say.Of($"Both readings of a length agree within {subject.AtMost(3)}; the top's diagonals within {subject.AtMost(5)}."))
            .Minding(Height)
            .Seen(WorkPicture.OnTop(Plan.OutlineOf(subject.Job.Top)));

    private static WorkStep Print(WorkSubject subject) =>
        Step(new("print", WorkStage.Prepare, WorkKind.Paper, Say.Of("Print the templates"), Say.Of("Print templates.pdf at 100 %, never \"fit to page\", and join the pages of each piece.")))
            .Using(WorkParts.Measures)
            .Making(WorkParts.Templates)
            .Taking(WorkTimes.RoundedUp(WorkTimes.Template * subject.Patterns.Pieces.Length))
            .With(Say.Of("printer, ruler, scissors, tape"))
            .Until(Say.Of($"The 100 mm and the 4 in square measure true on every page, within {subject.FineText(0.5)}."))
            .Seen(WorkPicture.Of(subject.Patterns.WholeCarrier, PieceLineKind.Mark));

    private static WorkStep TryOn(WorkSubject subject) =>
        Step(new("try-on", WorkStage.Prepare, WorkKind.Look, Say.Of("Try the templates on the top"), Say.Of("Lay the carrier's template on the stretched top at its marks and the pockets at its corners; tape round it.")))
            .Using(WorkParts.Templates)
            .Making(WorkParts.TriedTemplates)
            .Needing(WorkAccess.TopStretched)
            .Taking(Duration.FromMinutes(30))
            .With(Say.Of("tape measure, masking tape"))
            .When(Say.Of("In a calm, the top dry and stretched as it is used."))
            .Until(Say.Of($"Nothing lies on a tube, a seam or a keep-out; the corners agree with the table of marks within {subject.AtMost(5)}."))
            .Minding(Height)
            .Seen(WorkPicture.OnTop([Outline.Of(subject.Patterns.Mounted.CarrierBox), .. subject.Patterns.Mounted.Fastened.Pockets.Select(pocket => pocket.Outline)]));

    private static WorkStep Cut(WorkSubject subject)
    {
        var pieces = subject.Patterns.Pieces;
        WarpDirection[] warps = [.. pieces.Select(piece => piece.Warp).Distinct()];
        var warp = warps.Length == 1 ? Words.Of(warps[0]) : Say.Of("as told below");
        return Step(new("cut-pieces", WorkStage.Cut, WorkKind.Cut, Say.Of("Cut the pieces"), Say.Of($"Cut each where the cut plan puts it, {PieceTitle.OuterFaceUp}, its warp {warp} as the arrow shows. Label it at once.")))
            .Ticking([.. pieces.Select(piece => new StepPart(piece.Title.Name, CutText(piece, tellWarp: warps.Length > 1)))])
            .On(pieces)
            .Using(WorkParts.TriedTemplates)
            .Making(pieces.Select(WorkParts.Cut))
            .Taking(pieces.Aggregate(Duration.Zero, (sum, piece) => sum + WorkTimes.Cutting(piece)))
            .With(Say.Of("weights; shears, or a hot knife where an edge stays raw"))
            .Until(Say.Of($"Within {subject.AtMost(2)} of the template all round; the label is on the outer face."))
            .Minding(Say.Of("A hot knife burns and its smoke is unhealthy: work in moving air."))
            .Seen(WorkPicture.OfCut(subject.Patterns.WholeCarrier));
    }

    private static string CutText(PatternPiece piece, bool tellWarp)
    {
        var copies = piece.Title.Quantity == 1 ? Say.Of("one") : Say.Of($"{piece.Title.Quantity} alike");
        return tellWarp ? Say.Of($"{copies}, warp {Words.Of(piece.Warp)}") : copies;
    }

    private static WorkStep Mark(WorkSubject subject) =>
        Step(new("mark-pieces", WorkStage.Cut, WorkKind.Mark, Say.Of("Mark the pieces"), Say.Of("Transfer folds, rows, ticks, centre lines and holes from the template to the cloth. Cut no hole yet.")))
            .Ticking([.. subject.Patterns.Pieces.Select(piece => new StepPart(piece.Title.Name, string.Empty))])
            .On(subject.Patterns.Pieces)
            .Using(subject.Patterns.Pieces.Select(WorkParts.Cut))
            .Making(subject.Patterns.Pieces.Select(WorkParts.Marked))
            .Taking(WorkTimes.Marking(subject.Patterns.Pieces))
            .With(Say.Of("chalk or a pencil that washes out, straightedge"))
            .Until(Say.Of($"Every tick and fold of the template is on the cloth, within {subject.AtMost(1)}."))
            .Seen(WorkPicture.Of(subject.Patterns.WholeCarrier, PieceLineKind.Fold, PieceLineKind.Mark, PieceLineKind.Hole));
}
