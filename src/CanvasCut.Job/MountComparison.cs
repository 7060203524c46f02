using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>A job with its edges held in every way there is, side by side.</summary>
/// <param name="Choices">The job as it is, then each kind at both edges.</param>
public sealed record MountComparison(ImmutableArray<MountChoice> Choices)
{
    /// <summary>Works out a job in every way.</summary>
    public static MountComparison Of(JobRun outcome)
    {
        var job = outcome.Job;
        var mount = job.Fastenings.Mount;
        return new(
        [
            new(mount, IsTheJobs: true, MountFiguresFound.Of(outcome)),
            .. Enum.GetValues<MountKind>().Select(mount.Both).Where(other => other != mount).Select(other => Choice(job, other)),
        ]);
    }

    private static MountChoice Choice(CarrierJob own, MountSpec mount)
    {
        var job = own with { Fastenings = own.Fastenings with { Mount = mount } };
        return new(mount, IsTheJobs: false, MountedFastenings.Fits(job) ? MountFiguresFound.Of(JobRun.Of(TopJob.Of(job), RunSettings.Usual)) : null);
    }
}

/// <summary>A job with its edges held in one way.</summary>
/// <param name="Mount">The way.</param>
/// <param name="IsTheJobs">Whether the job file asks for it.</param>
/// <param name="Figures">What comes of it; null when no such fastening fits the edge.</param>
public sealed record MountChoice(MountSpec Mount, bool IsTheJobs, MountFiguresFound? Figures)
{
    /// <summary>As in "snaps", or "zipper forward, lacing aft".</summary>
    public string Name => string.Join(", ", new[] { Ends, Held(Mount.Port, Side.Port), Held(Mount.Starboard, Side.Starboard) }.Where(part => part.Length > 0));

    private string Ends => Mount.Forward == Mount.Aft ? Words.Of(Mount.Forward) : Say.Of($"{Words.Of(Mount.Forward)} forward, {Words.Of(Mount.Aft)} aft");

    private static string Held(MountKind? kind, Side side) => kind is { } held ? Say.Of($"{Words.Of(held)} on the {Words.Of(side)} side") : string.Empty;
}
