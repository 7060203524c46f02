using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>What comes of holding the edges in one way.</summary>
/// <param name="Pieces">How many pieces of cloth are cut, copies counted.</param>
/// <param name="Seam">All rows of stitches.</param>
/// <param name="Work">The order of work.</param>
/// <param name="Cost">What it costs; null without a price file.</param>
/// <param name="RemovalActions">Movements of the hand to take it off.</param>
/// <param name="Wear">What fails first of age.</param>
/// <param name="Wind">What it holds to.</param>
/// <param name="FailedChecks">How many checks fail.</param>
public sealed record MountFiguresFound(
    int Pieces, Length Seam, WorkSchedule Work, OrderCost? Cost, int RemovalActions, MountWear Wear, HoldDown Wind, int FailedChecks)
{
    /// <summary>Those of a job; the cut plan takes longest and is asked for only when something has a price.</summary>
    internal static MountFiguresFound Of(JobRun run) => new(
        run.Pieces.Pieces.Sum(piece => piece.Title.Quantity),
        Length.FromMillimeters(JobSeams.Of(run.Pieces).Sum(seam => seam.Sewn.Millimeters)),
        run.Work,
        run.Job.Workshop.Buying.Prices is null ? null : run.Purchase.Cost,
        Patterns.RemovalActions.Of(run.Pieces.Mounted.Fastened),
        MountWear.Of(run.Job),
        HoldDown.Of(run.Job, run.Pieces.Mounted),
        run.Checks.Count(check => check.Verdict == Verdict.Fail));
}

/// <summary>What of the fastening fails first of age.</summary>
/// <param name="Months">After how many months it is due; null when no figure is known.</param>
/// <param name="What">The task of the care calendar that renews it; empty for none.</param>
public sealed record MountWear(int? Months, string What)
{
    /// <summary>The tasks that renew what holds.</summary>
    private static readonly string[] Renewing = ["restitch", "hook-and-loop-new", "lacing-line"];

    internal static MountWear Of(CarrierJob job) =>
        CarePlan.Of(job).Tasks.Where(task => Renewing.Contains(task.Id)).MinBy(task => (task.Due.FirstMonths, task.Id == "restitch")) is { } first
            ? new(first.Due.FirstMonths, first.Name)
            : new(null, string.Empty);
}
