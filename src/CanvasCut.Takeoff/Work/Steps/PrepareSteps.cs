using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Measures, templates, cutting and marking.</summary>
internal static class PrepareSteps
{
    private static string Height => Say.Of("Work on a top is work at height: have a second person, and do not lean on the cloth or the tubes.");

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        Measure(subject),
        Print(subject),
        TryOn(subject),
        .. subject.Patterns.Pieces.Select(piece => Cut(subject, piece)),
        Mark(subject, "mark-carrier", Say.Of("Mark the carrier"), subject.Carrier.Widths),
        .. MarkTopPieces(subject),
        Mark(subject, "mark-small-pieces", Say.Of("Mark the small pieces"), subject.Patterns.NotionPieces),
    ];

    /// <summary>On a top whose half is sewn there are none.</summary>
    private static WorkStep[] MarkTopPieces(WorkSubject subject) => subject.Patterns.IsRefit
        ? []
        : [Mark(subject, "mark-top-pieces", Say.Of("Mark the pieces for the top"), [.. subject.TopPieces.SelectMany(piece => piece.Widths)])];

    private static WorkStep Measure(WorkSubject subject) =>
        Step(new("measure", WorkStage.Prepare, WorkKind.Look, Say.Of("Measure again"), Say.Of("Measure the stretched top, its bows and keep-outs, and the panel with its box, each length twice, and hold them against the job file.")))
            .Making(WorkParts.Measures)
            .Needing(WorkAccess.TopStretched)
            .Taking(Duration.FromMinutes(45))
            .With(Say.Of("soft tape, straightedge, a helper"))
            .Until(Say.Of($"Both readings of a length agree within {subject.AtMost(3)}; the top's diagonals within {subject.AtMost(5)}."))
            .Minding(Height)
            .Seen(WorkPicture.OnTop(Outline.Of(Plan.Of(subject.Job.Top))));

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

    private static WorkStep Cut(WorkSubject subject, PatternPiece piece) =>
        Step(new($"cut-{piece.Key.Id}", WorkStage.Cut, WorkKind.Cut, Say.Of($"Cut: {piece.Title.Name}"), CutText(piece)))
            .On(piece)
            .Using(WorkParts.TriedTemplates)
            .Making(WorkParts.Cut(piece))
            .Taking(WorkTimes.Cutting(piece))
            .With(Say.Of("weights; shears, or a hot knife where an edge stays raw"))
            .Until(Say.Of($"Within {subject.AtMost(2)} of the template all round; the label is on the outer face."))
            .Minding(Say.Of("A hot knife burns and its smoke is unhealthy: work in moving air."))
            .Seen(WorkPicture.OfCut(piece));

    private static string CutText(PatternPiece piece)
    {
        var copies = piece.Title.Quantity == 1 ? Say.Of("Cut one") : Say.Of($"Cut {piece.Title.Quantity} alike");
        return Say.Of($"{copies}, {piece.Title.Face}, warp {Words.Of(piece.Warp)} as the arrow shows, where the cut plan puts it. Label it at once.");
    }

    private static WorkStep Mark(WorkSubject subject, string id, string name, IReadOnlyCollection<PatternPiece> pieces) =>
        Step(new(id, WorkStage.Cut, WorkKind.Mark, name, Say.Of("Transfer folds, rows, ticks, centre lines and holes from the template to the cloth. Cut no hole yet.")))
            .On(pieces)
            .Using(pieces.Select(WorkParts.Cut))
            .Making(pieces.Select(WorkParts.Marked))
            .Taking(WorkTimes.Marking(pieces))
            .With(Say.Of("chalk or a pencil that washes out, straightedge"))
            .Until(Say.Of($"Every tick and fold of the template is on the cloth, within {subject.AtMost(1)}."))
            .Seen(WorkPicture.Of(pieces.First(), PieceLineKind.Fold, PieceLineKind.Mark, PieceLineKind.Hole));
}
