using System.Collections.Immutable;
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

/// <summary>All that comes of a top: one run for each of its mountings, and what they have in common.</summary>
/// <remarks>
/// A top with one mounting is its run and nothing more. Of several each keeps its own pieces and checks, placed so that all lie well
/// together; the distances between them, the picture of the top, the cut plan of all pieces, the order, its cost and the order of work are common to them.
/// </remarks>
public sealed class TopRun
{
    private readonly RunSettings _settings;
    private readonly string _language = Languages.Code;
    private readonly Lazy<PlacedTop> _placed;
    private readonly Lazy<ImmutableArray<JobRun>> _mountings;
    private readonly Lazy<CutPlan> _plan;
    private readonly Lazy<WiringPlan?> _wiring;
    private readonly Lazy<Purchase> _purchase;
    private readonly Lazy<WorkSchedule> _work;

    private TopRun(TopJob top, RunSettings settings, JobRun? only = null)
    {
        (Top, _settings) = (settings.Readings is { } readings ? top.With(job => JobRun.PrintedOn(job, readings)) : top, settings);
        _placed = new(() => Spoken(() => PlacedTop.Of(Top, settings.Cancellation)));
        _mountings = new(() => Top.HasSeveral ? [.. Placed.Mountings.Select(RunOf)] : [only ?? JobRun.Of(Top, settings)]);
        _wiring = new(() => Top.HasSeveral ? Spoken(() => Wirings.Of(Top, [.. Mountings.Select(run => run.Pieces)])) : Mountings[0].Wiring);
        _plan = new(() => Spoken(() => CutPlan.Of(Made.PiecesOfAllSets, Top.First.Workshop, PlanSearch.For(Top.First), progress => settings.Watch?.Plans(progress), settings.Cancellation)));
        _purchase = new(() => Spoken(() => Purchase.Of(Made, Plan, Wiring)));
        _work = new(() => Spoken(() => WorkOrder.Of(Made)));
    }

    /// <summary>The top and what is mounted on it.</summary>
    public TopJob Top { get; }

    /// <summary>Where everything lies.</summary>
    public PlacedTop Placed => _placed.Value;

    /// <summary>A run for each mounting, those of twins after what they mirror.</summary>
    public ImmutableArray<JobRun> Mountings => _mountings.Value;

    /// <summary>The distances between the carriers; none where there is one.</summary>
    public ImmutableArray<CheckResult> Between => Top.HasSeveral ? Spoken(() => JobChecks.Of(Placed)) : [];

    /// <summary>How the panels of all mountings are wired; null when the job does not tell.</summary>
    public WiringPlan? Wiring => _wiring.Value;

    /// <summary>The checks on the wiring of several mountings; none where there is one, whose own they are.</summary>
    public ImmutableArray<CheckResult> Electric => Top.HasSeveral ? Spoken(() => ElectricChecks.Of(Wiring)) : [];

    /// <summary>Whether a check of any mounting, or between two of them, failed.</summary>
    public bool HasFailed => Mountings.Any(run => run.HasFailed) || Between.Concat(Electric).Any(check => check.Verdict == Verdict.Fail);

    /// <summary>How all pieces of all mountings, and of all sets, lie on one roll.</summary>
    public CutPlan Plan => IsOnlyOne ? Mountings[0].Plan : _plan.Value;

    /// <summary>All that is made: the pieces of every mounting, and how many sets.</summary>
    public MadeTogether Made => new([.. Mountings.Select(run => run.Pieces)], Top.Copies);

    /// <summary>What to buy for all of it, and what it costs.</summary>
    public Purchase Purchase => IsOnlyOne ? Mountings[0].Purchase : _purchase.Value;

    /// <summary>The order of work on one set of all of it.</summary>
    public WorkSchedule Work => Top.HasSeveral ? _work.Value : Mountings[0].Work;

    /// <summary>The top from above with everything on it.</summary>
    public Sheet Placement => Top.HasSeveral ? Spoken(() => PlacementSheet.Of([.. Mountings.Select(run => run.Pieces)], Context)) : Mountings[0].Placement;

    /// <summary>What every sheet says that is common to all mountings.</summary>
    public SheetContext Context => Top.HasSeveral
        ? Spoken(() => new SheetContext(Top.First.Name, JobRun.Version, Top.First.Units, JobRun.WarningOf([.. Mountings.SelectMany(run => run.Checks), .. Between, .. Electric])))
        : Mountings[0].Context;

    /// <summary>Whether it is one carrier, made once: then there is nothing in common to tell.</summary>
    public bool IsOnlyOne => !Top.HasSeveral && Top.Copies == 1;

    /// <summary>What the report of all of it tells.</summary>
    internal TopContent Content => new([.. Mountings.Select(run => run.Carrier)], [.. Between, .. Electric], Purchase, Work);

    /// <summary>Begins with a job file.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <param name="settings">What else is to be known.</param>
    /// <returns>The run, or every problem of the file.</returns>
    public static Checked<TopRun> Of(string text, string fileName, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return JobFile.Read(text, fileName, settings.Side).Then(top => new TopRun(top, settings));
    }

    /// <summary>One of several mountings by itself, as if there were no other.</summary>
    /// <param name="only">Its run.</param>
    public static TopRun Of(JobRun only)
    {
        ArgumentNullException.ThrowIfNull(only);
        return new(only.Top, RunSettings.Usual, only);
    }

    /// <summary>Lays the pieces of all mountings and sets on every roll on sale, which takes a few seconds.</summary>
    /// <param name="report">Told how it gets on, from any thread; null when nobody listens.</param>
    public ImmutableArray<ClothChoice> ClothChoices(Action<PlanProgress>? report = null) => Spoken(() =>
        Takeoff.ClothChoices.Of(Made, Plan, PlanSearch.For(Top.First), report, _settings.Cancellation));

    /// <summary>Words something in the language in which the run was begun.</summary>
    internal T Spoken<T>(Func<T> make)
    {
        using (Languages.Speak(_language))
        {
            return make();
        }
    }

    private JobRun RunOf(PlacedMounting placed)
    {
        var job = placed.Job with { Name = $"{placed.Job.Name}, {placed.Job.Mounting}" };
        return Spoken(() => JobRun.Settled(placed.Fit, PatternSet.Of(job, placed.Fit.Mounted), _settings));
    }
}
