using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>What is sewn to the top in the same way: no two of a sort lie on each other.</summary>
/// <param name="Layer">What it lies on and under.</param>
/// <param name="Kind">What holds the edge that it is a part of; null for others.</param>
/// <param name="IsFlap">Whether it stands for a flap of the carrier.</param>
internal sealed record TopSort(TopLayer Layer, MountKind? Kind, bool IsFlap);

/// <summary>Sews to the top, a sort at a time.</summary>
internal static class TopSewing
{
    public static WorkStep Of(WorkSubject subject, TopSort sort, ImmutableArray<TopPart> parts)
    {
        ImmutableArray<StepPart> ticked = [.. parts.Select(part => new StepPart(part.Name, NoteOf(subject, part)))];
        return Step(new($"sew-{Id(sort)}-top", WorkStage.Top, WorkKind.Machine), new(Say.Of("Sew to the top"), count => NameOf(sort, count), HowToSew(subject, sort), ticked))
            .On(parts.SelectMany(part => part.Piece?.Widths ?? []))
            .Using([WorkParts.LooseTop, .. parts.Where(part => part.Piece is not null).Select(part => WorkParts.Ready(part.Piece!.Key))])
            .Making(parts.Select(part => WorkParts.OnTop(part)))
            .Needing([WorkAccess.TopUnderNeedle, .. subject.TopParts.Where(other => parts.Any(part => part.IsUnder(other))).Select(other => WorkAccess.Under(other))])
            .Closing(parts.Select(part => WorkAccess.Under(part)))
            .Taking(WorkTimes.SewingOnTop(parts.Aggregate(Length.Zero, (sum, part) => sum + RowsOf(subject, part))))
            .With(sort is { Kind: not null, IsFlap: false } ? Say.Of("machine with a zipper foot") : Say.Of("machine"))
            .When(Say.Of("The rest of the top rolled up beside the foot, nothing hanging."))
            .Until(Say.Of($"Within {subject.AtMost(2)} of its marks; each row begins and ends with {subject.Text(25)} of overstitching (US Army TM 10-8340)."))
            .Minding(Say.Of("Support the cloth: its weight bends needles."))
            .Seen(WorkPicture.OnTop(parts.Select(part => part.Outline)));
    }

    private static Length RowsOf(WorkSubject subject, TopPart part) =>
        part.Piece?.Rows ?? part.Edge!.Run * (part.Edge is ZipperPlace ? subject.Job.Workshop.Sewing.Rows : 2);

    private static string Id(TopSort sort) => sort switch
    {
        { IsFlap: true, Kind: { } kind } => $"{FlapSteps.Id(kind)}-strips",
        { Layer: TopLayer.Zipper } => "zippers",
        { Layer: TopLayer.Chafe } => "chafe-patches",
        { Layer: TopLayer.Pocket } => "pockets",
        _ => "weather-strips",
    };

    private static string NameOf(TopSort sort, int count) => sort switch
    {
        { IsFlap: true, Kind: { } kind } => Say.Of($"Sew to the top: what holds {count} edges ({Words.Of(kind)})"),
        { Layer: TopLayer.Zipper } => Say.Of($"Sew to the top: {count} zipper halves"),
        { Layer: TopLayer.Chafe } => Say.Of($"Sew to the top: {count} chafe patches"),
        { Layer: TopLayer.Pocket } => Say.Of($"Sew to the top: {count} pockets"),
        _ => Say.Of($"Sew to the top: {count} weather strips"),
    };

    /// <summary>Of a pocket, where its water must run out.</summary>
    private static string NoteOf(WorkSubject subject, TopPart part)
    {
        if (part.Layer != TopLayer.Pocket)
        {
            return string.Empty;
        }

        var pocket = subject.Patterns.Mounted.Fastened.Pockets[subject.Pockets.IndexOf(part.Piece!)];
        return PocketDrain.LowestOf(subject.Patterns, pocket) is { } lowest ? Say.Of($"lowest at {lowest}") : string.Empty;
    }

    private static string HowToSew(WorkSubject subject, TopSort sort) => sort switch
    {
        { IsFlap: true, Kind: MountKind.HookAndLoop } => Say.Of("Sew the taped loop tape, both edges and both ends."),
        { IsFlap: true, Kind: MountKind.Sleeve } => SleeveSteps.HowToSew,
        { IsFlap: true, Kind: MountKind.Lacing } => Say.Of("Sew the flap down along its outer edge, all rows; its folded edge stays loose, toward the carrier."),
        { IsFlap: true } => Say.Of("Sew the strip to the underside of the top, all round, under the marks."),
        { Layer: TopLayer.Chafe } => Say.Of("Sew the patch to the underside, all round, before anything is sewn over it."),
        { Layer: TopLayer.Zipper } => Say.Of("Sew the taped half, all rows, from end to end, ticks on their marks; the halves end level."),
        { Layer: TopLayer.Pocket } => Say.Of("Sew both legs, all rows; the mouth stays open. Leave 5 to 10 mm (1/4 to 3/8 in) open at the lowest corner to drain.") + (subject.Patterns.Surface.IsKnown ? string.Empty : " " + PocketDrain.Unknown),
        _ => Say.Of($"Sew the turned edge, all rows; the strip falls over the closed {(subject.HasZippersOnly ? Say.Of("zipper") : Say.Of("edge"))}."),
    };
}
