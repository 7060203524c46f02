using System.Collections.Immutable;

namespace CanvasCut.Nesting;

/// <summary>Tells what is too wide for the strip.</summary>
public static class NestingFit
{
    /// <summary>How much wider than the strip a piece may be by round-off; far below what can be measured.</summary>
    internal const double RoundOffMm = 1e-9;

    /// <summary>The items, by their place in the task, that lie across the strip in none of their turns.</summary>
    public static ImmutableArray<int> ItemsTooWide(NestingTask task) =>
        [.. Enumerable.Range(0, task.Items.Length).Where(item => FittingQuarters(task, item).IsEmpty)];

    /// <summary>The allowed turns of an item in which it lies across the strip.</summary>
    internal static ImmutableArray<int> FittingQuarters(NestingTask task, int item) =>
        [.. task.Items[item].Quarters.Where(quarters => AcrossMm(task.Items[item], quarters) <= task.StripWidthMm + RoundOffMm)];

    /// <summary>How far a turned item reaches along the strip.</summary>
    internal static double AlongMm(NestingItem item, int quarters) =>
        quarters % 2 == 0 ? item.Shape.Bounds.WidthMm : item.Shape.Bounds.HeightMm;

    private static double AcrossMm(NestingItem item, int quarters) => AlongMm(item, quarters + 1);
}
