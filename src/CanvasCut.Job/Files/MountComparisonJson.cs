namespace CanvasCut.Job;

/// <summary>The comparison of fastenings for programs, as <c>compare-mounts --json</c> prints it; docs/mounts.md tells the form.</summary>
public static class MountComparisonJson
{
    /// <summary>The value of "format".</summary>
    public const string Format = "canvascut-mounts-1";

    /// <summary>The whole text.</summary>
    public static string Of(JobRun outcome, MountComparison comparison) => JsonText.Of(
        new(Format, outcome.Context.Version, outcome.Context.JobName, [.. comparison.Choices.Select(Choice)]), ResultsContext.Default.MountsDocument);

    private static MountChoicePart Choice(MountChoice choice) => new(
        MountJson.Word(choice.Mount.Forward),
        MountJson.Word(choice.Mount.Aft),
        choice.Mount.HoldsSides ? WordOrNone(choice.Mount.Port) : null,
        choice.Mount.HoldsSides ? WordOrNone(choice.Mount.Starboard) : null,
        choice.IsTheJobs,
        choice.Figures is not null,
        choice.Figures is { } found ? Figures(found) : null);

    private static string WordOrNone(Design.MountKind? kind) => kind is { } held ? MountJson.Word(held) : "none";

    private static MountFiguresPart Figures(MountFiguresFound found) => new(
        found.Pieces,
        JsonText.Mm(found.Seam.Millimeters),
        Math.Round(found.Work.Bench.Hours, JsonText.Digits),
        found.Work.Days,
        found.Cost?.List.Money.Currency,
        found.Cost?.Total,
        found.Cost?.Unpriced,
        found.RemovalActions,
        found.Wear.Months,
        found.Wear.What,
        found.Wind.KnowsPull ? Math.Round(found.Wind.OffAt.Knots, JsonText.Digits) : null,
        found.Wind.KnowsEdges,
        found.Wind.KnowsEdges && found.Wind.EdgesHoldTo is { } hold ? Math.Round(hold.Knots, JsonText.Digits) : null,
        found.Wind.Holds.IsEmpty ? null : found.Wind.Weakest.Subject,
        found.FailedChecks);
}
