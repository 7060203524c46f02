namespace CanvasCut.Nesting;

/// <summary>A way to find a short layout.</summary>
public interface INestingSearch
{
    /// <summary>Finds a layout without faults; the same task gives the same layout every time.</summary>
    /// <returns>The layout; null when an item fits across the strip in none of its turns.</returns>
    /// <exception cref="InvalidOperationException">The layout found has a fault, which is a mistake of the search.</exception>
    NestingLayout? Find(NestingTask task);
}
