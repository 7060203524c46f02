using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>A drawing to be printed true to size over as many pages as it takes.</summary>
/// <param name="Name">A name fit for a file: lower-case letters, digits and hyphens.</param>
/// <param name="Title">What a reader calls it.</param>
/// <param name="Figures">What is drawn, at full size, anywhere in the plane; at least one.</param>
public sealed record TilePiece(string Name, string Title, ImmutableArray<Figure> Figures)
{
    /// <summary>The box to be printed: round all figures, text included.</summary>
    public Box Bounds { get; } = Drawing.Figures.BoundsOf(Figures);
}
