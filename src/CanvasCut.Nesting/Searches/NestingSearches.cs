namespace CanvasCut.Nesting;

/// <summary>What every search can do.</summary>
public static class NestingSearches
{
    /// <summary>Finds a layout quickly; the same task gives the same layout every time.</summary>
    /// <returns>The layout; null when there are <see cref="NestingProblems"/>.</returns>
    public static NestingLayout? Find(this INestingSearch search, NestingTask task) => search.Find(task, NestingControl.Quick);
}
