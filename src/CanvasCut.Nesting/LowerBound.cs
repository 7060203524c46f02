namespace CanvasCut.Nesting;

/// <summary>A length that no layout can stay below.</summary>
public static class LowerBound
{
    /// <summary>
    /// The larger of the whole area divided by the strip's width and the longest that a single piece must reach
    /// along the strip, each in the best of its turns that fit across.
    /// </summary>
    /// <remarks>
    /// The continuous bound of strip packing: S. Martello, M. Monaci, D. Vigo, "An exact approach to the strip-packing
    /// problem", INFORMS Journal on Computing 15 (2003). It leaves the gaps out of account.
    /// </remarks>
    /// <exception cref="ArgumentException">An item fits across the strip in none of its turns.</exception>
    public static double LengthMm(NestingTask task)
    {
        if (!NestingFit.ItemsTooWide(task).IsEmpty)
        {
            throw new ArgumentException("An item is too wide for the strip.", nameof(task));
        }

        var longestMm = Enumerable.Range(0, task.Items.Length).Max(item => ShortestMm(task, item));
        return Math.Max(task.AreaMm2 / task.StripWidthMm, longestMm);
    }

    private static double ShortestMm(NestingTask task, int item) =>
        NestingFit.FittingPoses(task, item).Min(pose => pose.Of(task.Items[item].Shape).Bounds.WidthMm);
}
