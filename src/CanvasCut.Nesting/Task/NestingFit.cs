using System.Collections.Immutable;

namespace CanvasCut.Nesting;

/// <summary>Tells what is too wide for the strip.</summary>
public static class NestingFit
{
    /// <summary>How much wider than the strip a piece may be by round-off; far below what can be measured.</summary>
    internal const double RoundOffMm = 1e-9;

    /// <summary>The items, by their place in the task, that lie across the strip in none of their poses.</summary>
    public static ImmutableArray<int> ItemsTooWide(NestingTask task) =>
        [.. Enumerable.Range(0, task.Items.Length).Where(item => FittingPoses(task, item).IsEmpty)];

    /// <summary>The allowed poses of an item in which it lies across the strip.</summary>
    internal static ImmutableArray<Pose> FittingPoses(NestingTask task, int item) =>
        [.. task.Items[item].Poses.Where(pose => pose.Of(task.Items[item].Shape).Bounds.HeightMm <= task.StripWidthMm + RoundOffMm)];
}
