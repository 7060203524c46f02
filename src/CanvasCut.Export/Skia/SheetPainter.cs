using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using SkiaSharp;

namespace CanvasCut.Export.Skia;

/// <summary>Paints figures on a canvas whose unit is a millimetre and whose origin is the upper left corner.</summary>
internal sealed class SheetPainter(SKCanvas canvas)
{
    /// <summary>Paints a whole sheet.</summary>
    public void Paint(Sheet sheet) => Paint(sheet.Figures, new(0, 0, sheet.WidthMm, sheet.HeightMm));

    private void Paint(ImmutableArray<Figure> figures, Box view)
    {
        foreach (var figure in figures)
        {
            Paint(figure, view);
        }
    }

    private void Paint(Figure figure, Box view)
    {
        switch (figure)
        {
            case Stroke stroke:
                Paint(stroke, view);
                break;
            case Tint tint:
                Paint(tint, view);
                break;
            case Lettering lettering:
                Paint(lettering, view);
                break;
            case Inset inset:
                Paint(inset, view);
                break;
            default:
                throw new ArgumentException($"There is no way to paint a {figure.GetType().Name}.", nameof(figure));
        }
    }

    private void Paint(Stroke stroke, Box view)
    {
        var style = LineStyle.Of(stroke.Role);
        using var paint = new SKPaint
        {
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)style.WidthMm,
            StrokeJoin = SKStrokeJoin.Round,
        };
        using var dashes = style.DashesMm.IsEmpty ? null : SKPathEffect.CreateDash([.. style.DashesMm.Select(mm => (float)mm)], 0);
        paint.PathEffect = dashes;
        Draw(stroke.Points, stroke.IsClosed, view, paint);
    }

    private void Paint(Tint tint, Box view)
    {
        var level = (byte)Math.Round(255 * (1 - Math.Clamp(tint.Darkness, 0, 1)));
        using var paint = new SKPaint { IsAntialias = true, Color = new(level, level, level) };
        Draw(tint.Outline.Corners, isClosed: true, view, paint);
    }

    private void Paint(Lettering lettering, Box view)
    {
        var start = OnCanvas(Figures.StartOf(lettering), view);
        using var font = SheetFonts.Of(lettering.HeightMm, lettering.IsBold);
        using var paint = new SKPaint { IsAntialias = true };
        canvas.Save();
        canvas.Translate(start);
        canvas.RotateDegrees((float)-lettering.TurnDegrees);
        canvas.DrawText(SheetFonts.Printable(lettering.Text), 0, 0, SKTextAlign.Left, font, paint);
        canvas.Restore();
    }

    private void Paint(Inset inset, Box view)
    {
        var corner = OnCanvas(new(inset.At.X, inset.At.Y + (inset.Window.HeightMm * inset.Scale)), view);
        canvas.Save();
        canvas.Translate(corner);
        canvas.Scale((float)inset.Scale);
        canvas.ClipRect(new(0, 0, (float)inset.Window.WidthMm, (float)inset.Window.HeightMm), SKClipOperation.Intersect, antialias: true);
        Paint(inset.Figures, inset.Window);
        canvas.Restore();
    }

    private void Draw(ImmutableArray<Point> points, bool isClosed, Box view, SKPaint paint)
    {
        using var builder = new SKPathBuilder();
        builder.AddPoly([.. points.Select(point => OnCanvas(point, view))], isClosed);
        using var path = builder.Detach();
        canvas.DrawPath(path, paint);
    }

    private static SKPoint OnCanvas(Point point, Box view) => new((float)(point.X - view.Left), (float)(view.Top - point.Y));
}
