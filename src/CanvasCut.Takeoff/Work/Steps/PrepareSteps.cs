using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Measures, templates, cutting and marking.</summary>
internal static class PrepareSteps
{
    private const string Height = "Work on a top is work at height: have a second person, and do not lean on the cloth or the tubes.";

    public static IEnumerable<WorkStep> Of(WorkSubject subject) =>
    [
        Measure(subject),
        Print(subject),
        TryOn(subject),
        .. subject.Patterns.Pieces.Select(piece => Cut(subject, piece)),
        Mark(subject, "mark-carrier", "Mark the carrier", subject.Carrier.Widths),
        .. MarkTopPieces(subject),
        Mark(subject, "mark-small-pieces", "Mark the small pieces", subject.Patterns.NotionPieces),
    ];

    /// <summary>On a top whose half is sewn there are none.</summary>
    private static WorkStep[] MarkTopPieces(WorkSubject subject) => subject.Patterns.IsRefit
        ? []
        : [Mark(subject, "mark-top-pieces", "Mark the pieces for the top", [.. subject.TopPieces.SelectMany(piece => piece.Widths)])];

    private static WorkStep Measure(WorkSubject subject) =>
        Step(new("measure", WorkStage.Prepare, WorkKind.Look, "Measure again", "Measure the stretched top, its bows and keep-outs, and the panel with its box, each length twice, and hold them against the job file."))
            .Making(WorkParts.Measures)
            .Needing(WorkAccess.TopStretched)
            .Taking(Duration.FromMinutes(45))
            .With("soft tape, straightedge, a helper")
            .Until($"Both readings of a length agree within {subject.Text(3)}; the top's diagonals within {subject.Text(5)}.")
            .Minding(Height)
            .Seen(WorkPicture.OnTop(Outline.Of(Plan.Of(subject.Job.Top))));

    private static WorkStep Print(WorkSubject subject) =>
        Step(new("print", WorkStage.Prepare, WorkKind.Paper, "Print the templates", "Print templates.pdf at 100 %, never \"fit to page\", and join the pages of each piece."))
            .Using(WorkParts.Measures)
            .Making(WorkParts.Templates)
            .Taking(WorkTimes.RoundedUp(WorkTimes.Template * subject.Patterns.Pieces.Length))
            .With("printer, ruler, scissors, tape")
            .Until($"The 100 mm and the 4 in square measure true on every page, within {subject.FineText(0.5)}.")
            .Seen(WorkPicture.Of(subject.Patterns.WholeCarrier, PieceLineKind.Mark));

    private static WorkStep TryOn(WorkSubject subject) =>
        Step(new("try-on", WorkStage.Prepare, WorkKind.Look, "Try the templates on the top", "Lay the carrier's template on the stretched top at its marks and the pockets at its corners; tape round it."))
            .Using(WorkParts.Templates)
            .Making(WorkParts.TriedTemplates)
            .Needing(WorkAccess.TopStretched)
            .Taking(Duration.FromMinutes(30))
            .With("tape measure, masking tape")
            .When("In a calm, the top dry and stretched as it is used.")
            .Until($"Nothing lies on a tube, a seam or a keep-out; the corners agree with the table of marks within {subject.Text(5)}.")
            .Minding(Height)
            .Seen(WorkPicture.OnTop([Outline.Of(subject.Patterns.Mounted.CarrierBox), .. subject.Patterns.Mounted.Fastened.Pockets.Select(pocket => pocket.Outline)]));

    private static WorkStep Cut(WorkSubject subject, PatternPiece piece) =>
        Step(new($"cut-{piece.Title.Id}", WorkStage.Cut, WorkKind.Cut, $"Cut: {piece.Title.Name}", CutText(piece)))
            .On(piece)
            .Using(WorkParts.TriedTemplates)
            .Making(WorkParts.Cut(piece))
            .Taking(WorkTimes.Cutting(piece))
            .With("weights; shears, or a hot knife where an edge stays raw")
            .Until($"Within {subject.Text(2)} of the template all round; the label is on the outer face.")
            .Minding("A hot knife burns and its smoke is unhealthy: work in moving air.")
            .Seen(WorkPicture.OfCut(piece));

    private static string CutText(PatternPiece piece)
    {
        var copies = piece.Title.Quantity == 1 ? "Cut one" : FormattableString.Invariant($"Cut {piece.Title.Quantity} alike");
        return $"{copies}, {piece.Title.Face}, warp {Words.Of(piece.Warp)} as the arrow shows, where the cut plan puts it. Label it at once.";
    }

    private static WorkStep Mark(WorkSubject subject, string id, string name, IReadOnlyCollection<PatternPiece> pieces) =>
        Step(new(id, WorkStage.Cut, WorkKind.Mark, name, "Transfer folds, rows, ticks, centre lines and holes from the template to the cloth. Cut no hole yet."))
            .On(pieces)
            .Using(pieces.Select(WorkParts.Cut))
            .Making(pieces.Select(WorkParts.Marked))
            .Taking(WorkTimes.Marking(pieces))
            .With("chalk or a pencil that washes out, straightedge")
            .Until($"Every tick and fold of the template is on the cloth, within {subject.Text(1)}.")
            .Seen(WorkPicture.Of(pieces.First(), PieceLineKind.Fold, PieceLineKind.Mark, PieceLineKind.Hole));
}
