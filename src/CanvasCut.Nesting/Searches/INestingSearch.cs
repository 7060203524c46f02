namespace CanvasCut.Nesting;

/// <summary>A way to find a short layout.</summary>
public interface INestingSearch
{
    /// <summary>Finds a layout without faults.</summary>
    /// <param name="task">What to place.</param>
    /// <param name="control">How long to search, from which seed, and whom to tell.</param>
    /// <returns>The layout; null when there are <see cref="NestingProblems"/>.</returns>
    /// <exception cref="InvalidOperationException">The layout found has a fault, which is a mistake of the search.</exception>
    NestingLayout? Find(NestingTask task, NestingControl control);
}
