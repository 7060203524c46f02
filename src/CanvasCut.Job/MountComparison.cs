using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>A job with its edges held in every way there is, side by side.</summary>
/// <param name="Choices">The job as it is, then each kind at both edges.</param>
public sealed record MountComparison(ImmutableArray<MountChoice> Choices)
{
    /// <summary>Works out a job in every way.</summary>
    public static MountComparison Of(JobOutcome outcome)
    {
        var mount = outcome.Content.Patterns.Job.Fastenings.Mount;
        return new(
        [
            MountChoice.Of(mount, outcome, isTheJobs: true),
            .. Enum.GetValues<MountKind>().Select(mount.Both).Where(other => other != mount).Select(other => MountChoice.Of(other, outcome.With(other), isTheJobs: false)),
        ]);
    }
}

/// <summary>A job with its edges held in one way.</summary>
/// <param name="Mount">The way.</param>
/// <param name="IsTheJobs">Whether the job file asks for it.</param>
/// <param name="Figures">What comes of it; null when no such fastening fits the edge.</param>
public sealed record MountChoice(MountSpec Mount, bool IsTheJobs, MountFiguresFound? Figures)
{
    /// <summary>As in "snaps", or "zipper forward, lacing aft".</summary>
    public string Name => Mount.Forward == Mount.Aft ? Words.Of(Mount.Forward) : $"{Words.Of(Mount.Forward)} forward, {Words.Of(Mount.Aft)} aft";

    /// <summary>Draws the figures together.</summary>
    internal static MountChoice Of(MountSpec mount, JobOutcome? outcome, bool isTheJobs) =>
        new(mount, isTheJobs, outcome is null ? null : MountFiguresFound.Of(outcome));
}
