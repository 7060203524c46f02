using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>Where something of a drawing is: on its lines and words, and inside its cut lines.</summary>
internal sealed class MarkedPlaces(ImmutableArray<Figure> figures)
{
    private readonly ImmutableArray<Outline> _cuts =
        [.. figures.OfType<Stroke>().Where(stroke => stroke is { Role: LineRole.Cut, IsClosed: true }).Select(stroke => new Outline(stroke.Points))];

    /// <summary>Whether some of it is in a box.</summary>
    /// <remarks>A box that no cut line enters lies inside the cut line or outside as a whole, so its middle tells.</remarks>
    public bool Reach(Box box) => figures.Any(figure => Reaches(figure, box)) || _cuts.Any(cut => cut.Surrounds(box.Center));

    private static bool Reaches(Figure figure, Box box) => figure is Stroke stroke
        ? Enumerable.Range(0, stroke.IsClosed ? stroke.Points.Length : stroke.Points.Length - 1).Any(i => box.Meets(stroke.Points[i], stroke.Points[(i + 1) % stroke.Points.Length]))
        : !box.Shared(Figures.BoundsOf(figure)).IsEmpty;
}
