using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Electrics;
using CanvasCut.JobFiles;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>All that comes of a job, in stages: each is worked out once, when it is first asked for.</summary>
/// <remarks>
/// Placed, pieces and checks lead to each other; the cut plan, the purchase, the work and the sheets hang on the pieces and
/// wait for nothing else, so that checks and previews are there before the plan. Any thread may ask; who comes second waits
/// for the first. Every stage speaks the language in which the run was begun, whoever asks. Once the run is cancelled, asking
/// for what is not there yet throws <see cref="OperationCanceledException"/>; a plan broken off is no plan.
/// </remarks>
public sealed class JobRun
{
    private readonly RunSettings _settings;
    private readonly Lazy<FitChoice> _placed;
    private readonly Lazy<PatternSet> _pieces;
    private readonly Lazy<WiringPlan?> _wiring;
    private readonly Lazy<ImmutableArray<CheckResult>> _checks;
    private readonly Lazy<CutPlan> _plan;
    private readonly Lazy<Purchase> _purchase;
    private readonly Lazy<WorkSchedule> _work;
    private readonly Lazy<ImmutableArray<PieceDrawing>> _drawings;
    private readonly Lazy<Sheet> _placement;
    private readonly Lazy<Sheet?> _shape;

    private JobRun(TopJob top, RunSettings settings, Func<FitChoice> place, Func<FitChoice, PatternSet> cut)
    {
        (Top, _settings, Language) = (top, settings, Languages.Code);
        _placed = Stage(RunStage.Placed, place);
        _pieces = Stage(RunStage.Pieces, () => cut(Placed));
        _wiring = new(() => Wirings.Of(Top, [Pieces]));
        _checks = Stage<ImmutableArray<CheckResult>>(RunStage.Checks, () => [.. JobChecks.Of(Pieces), .. ElectricChecks.Of(Wiring)]);
        _plan = Stage(RunStage.Plan, () => CutPlan.Of(Pieces, PlanSearch.For(Job), Tell, settings.Cancellation));
        _purchase = Stage(RunStage.Purchase, () => Purchase.Of(Pieces, Plan, Wiring));
        _work = Stage(RunStage.Work, () => WorkOrder.Of(Pieces));
        _drawings = Stage(RunStage.Drawings, () => PieceDrawing.All(Pieces, Context));
        _placement = Stage(RunStage.Placement, () => PlacementSheet.Of(Pieces, Context));
        _shape = Stage(RunStage.Shape, () => ShapeSheet.Of(Pieces, Context));
    }

    /// <summary>The program's version.</summary>
    public static string Version { get; } =
        typeof(JobRun).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";

    /// <summary>The top and all that is mounted on it.</summary>
    public TopJob Top { get; }

    /// <summary>The first carrier's job, whose shared parts are those of all.</summary>
    public CarrierJob Job => Top.First;

    /// <summary>The code of the language in which everything is worded.</summary>
    public string Language { get; }

    /// <summary>Where the carrier goes.</summary>
    public FitChoice Placed => _placed.Value;

    /// <summary>The pieces and what is mounted.</summary>
    public PatternSet Pieces => _pieces.Value;

    /// <summary>How the panel is wired; null when the job does not tell, or where it is a matter of all mountings of a top.</summary>
    public WiringPlan? Wiring => _wiring.Value;

    /// <summary>The results of the checks.</summary>
    public ImmutableArray<CheckResult> Checks => _checks.Value;

    /// <summary>Whether a check failed.</summary>
    public bool HasFailed => Checks.Any(check => check.Verdict == Verdict.Fail);

    /// <summary>What must be read before the verdicts; usually nothing.</summary>
    public ImmutableArray<string> Notices => Spoken(() => JobNotices.Of(Pieces));

    /// <summary>What every sheet says.</summary>
    public SheetContext Context => Spoken(() => new SheetContext(Job.Name, Version, Job.Units, Warning()));

    /// <summary>How the pieces lie on the roll.</summary>
    public CutPlan Plan => _plan.Value;

    /// <summary>What to buy, and what it costs.</summary>
    public Purchase Purchase => _purchase.Value;

    /// <summary>The order of work.</summary>
    public WorkSchedule Work => _work.Value;

    /// <summary>The drawing of every piece.</summary>
    public ImmutableArray<PieceDrawing> Drawings => _drawings.Value;

    /// <summary>The top from above with all that lies on it.</summary>
    public Sheet Placement => _placement.Value;

    /// <summary>The top in space; null when its shape is not known.</summary>
    public Sheet? Shape => _shape.Value;

    /// <summary>What concerns the carrier alone.</summary>
    public CarrierContent Carrier => new(Pieces, Placed, Checks);

    /// <summary>All that a report tells; whatever of it is not there yet is worked out at the same time.</summary>
    public ReportContent Content
    {
        get
        {
            var checks = Task.Run(() => Checks);
            var work = Task.Run(() => Work);
            var purchase = Purchase;
            return new(Pieces, Placed, checks.GetAwaiter().GetResult(), purchase, work.GetAwaiter().GetResult()) { Wiring = Wiring };
        }
    }

    /// <summary>Ends the run; see <see cref="RunSettings.Cancellation"/>.</summary>
    internal CancellationToken Cancellation => _settings.Cancellation;

    /// <summary>Begins with a job file.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <returns>The run, or every problem of the file.</returns>
    public static Checked<JobRun> Of(string text, string fileName) => Of(text, fileName, RunSettings.Usual);

    /// <summary>The same with what else is to be known.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <param name="settings">What else.</param>
    public static Checked<JobRun> Of(string text, string fileName, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return JobFile.Read(text, fileName, settings.Side).Then(job => Of(job, settings));
    }

    /// <summary>Begins with a job that is read.</summary>
    /// <param name="top">The job.</param>
    /// <param name="settings">What else is to be known.</param>
    public static JobRun Of(TopJob top, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(top);
        ArgumentNullException.ThrowIfNull(settings);
        var printed = settings.Readings is { } readings ? top.With(job => PrintedOn(job, readings)) : top;
        return new(printed, settings, () => FitChoice.For(printed.First), placed => PatternSet.Of(printed.First, placed.Mounted));
    }

    /// <summary>What comes of pieces that are settled.</summary>
    internal static JobRun Settled(FitChoice placed, PatternSet pieces) => Settled(placed, pieces, RunSettings.Usual);

    /// <summary>What comes of one of several mountings, whose place is settled by all of them together.</summary>
    internal static JobRun Settled(FitChoice placed, PatternSet pieces, RunSettings settings) => new(TopJob.Of(pieces.Job), settings, () => placed, _ => pieces);

    /// <summary>Lays the pieces on every roll on sale, which takes a few seconds.</summary>
    /// <param name="report">Told how it gets on, from any thread; null when nobody listens.</param>
    public ImmutableArray<ClothChoice> ClothChoices(Action<PlanProgress>? report = null) =>
        Spoken(() => Takeoff.ClothChoices.Of(MadeTogether.Of(Pieces), Plan, PlanSearch.For(Job), report, Cancellation));

    /// <summary>Words something in the run's language.</summary>
    internal T Spoken<T>(Func<T> make)
    {
        using (Languages.Speak(Language))
        {
            return make();
        }
    }

    internal static CarrierJob PrintedOn(CarrierJob job, PrintReadings readings) =>
        job with { Workshop = job.Workshop with { Paper = job.Workshop.Paper with { Readings = readings } } };

    /// <summary>Worked out by whoever asks first; what was cancelled stays so, for the run is over then.</summary>
    /// <remarks>The compiler ahead of time asks for a constructor that <see cref="Lazy{T}"/> would take without a function; none is ever called.</remarks>
    private Lazy<T> Stage<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicParameterlessConstructor)] T>(RunStage stage, Func<T> make) => new(() =>
    {
        Cancellation.ThrowIfCancellationRequested();
        _settings.Watch?.Begins(stage);
        try
        {
            return Spoken(make);
        }
        finally
        {
            _settings.Watch?.Ends(stage);
        }
    });

    private void Tell(PlanProgress progress) => _settings.Watch?.Plans(progress);

    private string Warning() => WarningOf(Checks);

    /// <summary>How many checks failed, as every sheet says; empty for none.</summary>
    internal static string WarningOf(ImmutableArray<CheckResult> checks) => checks.Count(check => check.Verdict == Verdict.Fail) switch
    {
        0 => string.Empty,
        1 => Say.Of("1 CHECK FAILED, see report.pdf"),
        var several => Say.Of($"{several} CHECKS FAILED, see report.pdf"),
    };
}
