using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Dxf;

/// <summary>Takes figures out of their insets, for a format that has no windows.</summary>
internal static class DxfFlat
{
    /// <summary>How far a figure may reach out of its window by rounding alone.</summary>
    private const double RoundingMm = 1e-6;

    /// <summary>The figures without insets.</summary>
    /// <exception cref="ArgumentException">A window hides part of its figures.</exception>
    public static IEnumerable<Figure> Of(ImmutableArray<Figure> figures) =>
        figures.SelectMany(figure => figure is Inset inset ? Of(inset) : [figure]);

    private static IEnumerable<Figure> Of(Inset inset)
    {
        if (inset.Figures.Any(figure => !inset.Window.Grown(RoundingMm).Holds(Figures.BoundsOf(figure))))
        {
            throw new ArgumentException("DXF cannot show a part of a figure: a window hides the rest.", nameof(inset));
        }

        return Of(inset.Figures).Select(figure => Placed(figure, inset));
    }

    private static Figure Placed(Figure figure, Inset inset) => figure switch
    {
        Stroke stroke => stroke with { Points = [.. stroke.Points.Select(point => Placed(point, inset))] },
        Tint tint => tint with { Outline = tint.Outline.Mapped(point => Placed(point, inset)) },
        Lettering lettering => lettering with { At = Placed(lettering.At, inset), HeightMm = lettering.HeightMm * inset.Scale },
        _ => throw new ArgumentException($"DXF has no way to draw a {figure.GetType().Name}.", nameof(figure)),
    };

    private static Point Placed(Point point, Inset inset) => inset.At + ((point - inset.Window.LowerLeft) * inset.Scale);
}
