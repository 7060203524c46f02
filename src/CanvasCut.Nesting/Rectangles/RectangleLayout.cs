namespace CanvasCut.Nesting.Rectangles;

/// <summary>Rectangles laid without overlap.</summary>
/// <param name="Length">How far along the strip they reach.</param>
/// <param name="Order">The order from which they were laid.</param>
/// <param name="Way">In which way each piece lies.</param>
/// <param name="Along">Where each starts along the strip.</param>
/// <param name="Across">Where each starts across it.</param>
internal sealed record RectangleLayout(long Length, int[] Order, int[] Way, long[] Along, long[] Across);
