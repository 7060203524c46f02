using CanvasCut.Geometry;

namespace CanvasCut.Drawing;

/// <summary>Stretches figures from the origin, from left to right and from bottom to top each by its own factor.</summary>
internal readonly record struct Stretch(double Across, double Up)
{
    public Figure Of(Figure figure) => figure switch
    {
        Stroke stroke => stroke with { Points = [.. stroke.Points.Select(Of)] },
        Tint tint => tint with { Outline = tint.Outline.Mapped(Of) },
        Lettering lettering => lettering with { At = Of(lettering.At), HeightMm = lettering.HeightMm * Math.Min(Across, Up) },
        Inset inset => inset with { Figures = [.. inset.Figures.Select(Of)], Window = Of(inset.Window), At = Of(inset.At) },
        _ => throw Figures.Unknown(figure),
    };

    private Point Of(Point point) => new(point.X * Across, point.Y * Up);

    private Box Of(Box box) => new(box.Left * Across, box.Bottom * Up, box.Right * Across, box.Top * Up);
}
