namespace CanvasCut.Job;

/// <summary>The comparison of fastenings for programs, as <c>compare-mounts --json</c> prints it; docs/mounts.md tells the form.</summary>
public static class MountComparisonJson
{
    /// <summary>The value of "format".</summary>
    public const string Format = "canvascut-mounts-1";

    /// <summary>The whole text.</summary>
    public static string Of(JobRun outcome, MountComparison comparison) => JsonText.Of(new Dictionary<string, object?>
    {
        ["format"] = Format,
        ["version"] = outcome.Context.Version,
        ["job"] = outcome.Context.JobName,
        ["choices"] = comparison.Choices.Select(Choice),
    });

    private static Dictionary<string, object?> Choice(MountChoice choice)
    {
        var entry = new Dictionary<string, object?> { ["forward"] = MountJson.Word(choice.Mount.Forward), ["aft"] = MountJson.Word(choice.Mount.Aft) };
        if (choice.Mount.HoldsSides)
        {
            entry["port"] = WordOrNone(choice.Mount.Port);
            entry["starboard"] = WordOrNone(choice.Mount.Starboard);
        }

        entry["is_the_jobs"] = choice.IsTheJobs;
        entry["fits"] = choice.Figures is not null;
        entry["figures"] = choice.Figures is { } found ? Figures(found) : null;
        return entry;
    }

    private static string WordOrNone(Design.MountKind? kind) => kind is { } held ? MountJson.Word(held) : "none";

    private static object Figures(MountFiguresFound found) => new
    {
        pieces = found.Pieces,
        seam_mm = JsonText.Mm(found.Seam.Millimeters),
        bench_hours = Math.Round(found.Work.Bench.Hours, JsonText.Digits),
        days = found.Work.Days,
        currency = found.Cost?.List.Money.Currency,
        cost = found.Cost?.Total,
        unpriced_lines = found.Cost?.Unpriced,
        removal_actions = found.RemovalActions,
        life_months = found.Wear.Months,
        life_of = found.Wear.What,
        off_at_kn = found.Wind.KnowsPull ? Math.Round(found.Wind.OffAt.Knots, JsonText.Digits) : (double?)null,
        off_at_known = found.Wind.KnowsEdges,
        edges_hold_to_kn = found.Wind.KnowsEdges && found.Wind.EdgesHoldTo is { } hold ? Math.Round(hold.Knots, JsonText.Digits) : (double?)null,
        weakest = found.Wind.Holds.IsEmpty ? null : found.Wind.Weakest.Subject,
        failed_checks = found.FailedChecks,
    };
}
