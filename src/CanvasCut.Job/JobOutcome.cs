using System.Collections.Immutable;
using System.Reflection;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.JobFiles;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>All that comes of a job, before anything is drawn or written.</summary>
/// <param name="Content">Pieces, checks, cut plan and order.</param>
/// <param name="Context">What every sheet says.</param>
public sealed record JobOutcome(ReportContent Content, SheetContext Context)
{
    /// <summary>The program's version.</summary>
    public static string Version { get; } =
        typeof(JobOutcome).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";

    /// <summary>How and in what weather the job's panel is bonded.</summary>
    public BondingSpec Bonding => Content.Patterns.Job.Conditions.Bonding;

    /// <summary>Whether a check failed.</summary>
    public bool HasFailed => Content.Checks.Any(check => check.Verdict == Verdict.Fail);

    /// <summary>What must be read before the verdicts; usually nothing.</summary>
    public ImmutableArray<string> Notices => JobNotices.Of(Content.Patterns);

    /// <summary>The order of work.</summary>
    public WorkSchedule Work => Content.Work;

    /// <summary>Lays the pieces on every roll on sale, which takes a few seconds.</summary>
    /// <param name="report">Told how it gets on, from any thread; null when nobody listens.</param>
    public ImmutableArray<ClothChoice> ClothChoices(Action<PlanProgress>? report = null) =>
        Takeoff.ClothChoices.Of(Content.Patterns, Content.Plan, PlanSearch.For(Content.Patterns.Job), report);

    /// <summary>Reads a job file and works everything out.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <returns>The outcome, or every problem of the file.</returns>
    public static Checked<JobOutcome> Of(string text, string fileName) => Of(text, fileName, readings: null);

    /// <summary>The same for a printer that is not true, whatever the file says of it.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <param name="readings">What the printer makes of the 100 mm square; null for what the file says.</param>
    public static Checked<JobOutcome> Of(string text, string fileName, PrintReadings? readings) => Of(text, fileName, readings, SideFiles.None);

    /// <summary>The same with the materials and prices that the job or the user names.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <param name="readings">What the printer makes of the 100 mm square; null for what the file says.</param>
    /// <param name="side">The other files.</param>
    /// <param name="report">Told how the cut plan gets on, from any thread; null when nobody listens.</param>
    public static Checked<JobOutcome> Of(
        string text, string fileName, PrintReadings? readings, SideFiles side, Action<PlanProgress>? report = null) =>
        JobFile.Read(text, fileName, side).Then(top => Of(readings is null ? top.First : PrintedOn(top.First, readings), report));

    private static CarrierJob PrintedOn(CarrierJob job, PrintReadings readings) =>
        job with { Workshop = job.Workshop with { Paper = job.Workshop.Paper with { Readings = readings } } };

    private static JobOutcome Of(CarrierJob job, Action<PlanProgress>? report)
    {
        var fit = FitChoice.For(job);
        return Of(fit, PatternSet.Of(job, fit.Mounted), report);
    }

    /// <summary>What comes of pieces that are settled.</summary>
    internal static JobOutcome Of(FitChoice fit, PatternSet patterns, Action<PlanProgress>? report = null)
    {
        var job = patterns.Job;

        // None of these needs another, and each takes a while.
        var checks = Task.Run(() => JobChecks.Of(patterns));
        var work = Task.Run(() => WorkOrder.Of(patterns));
        var plan = CutPlan.Of(patterns, PlanSearch.For(job), report);
        var purchase = Purchase.Of(patterns, plan);
        var results = checks.GetAwaiter().GetResult();
        return new(
            new(patterns, fit, results, purchase, work.GetAwaiter().GetResult()),
            new(job.Name, Version, job.Units, WarningOf(results)));
    }

    private static string WarningOf(ImmutableArray<CheckResult> checks) => checks.Count(check => check.Verdict == Verdict.Fail) switch
    {
        0 => string.Empty,
        1 => Say.Of("1 CHECK FAILED, see report.pdf"),
        var several => Say.Of($"{several} CHECKS FAILED, see report.pdf"),
    };
}
