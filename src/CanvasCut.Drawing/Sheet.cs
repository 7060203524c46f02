using System.Collections.Immutable;

namespace CanvasCut.Drawing;

/// <summary>A sheet of paper with what is drawn on it; the origin is its lower left corner.</summary>
/// <param name="Name">A name fit for a file: lower-case letters, digits and hyphens.</param>
/// <param name="Title">What a reader calls it.</param>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height.</param>
/// <param name="Figures">What is drawn, the first lowest.</param>
public sealed record Sheet(string Name, string Title, double WidthMm, double HeightMm, ImmutableArray<Figure> Figures);
