using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>Writes at a piece's lines what they are.</summary>
internal static class LineWords
{
    private const double HeightMm = 2;
    private const double AboveMm = 0.8;

    public static IEnumerable<Figure> Of(PatternPiece piece) => piece.Lines.Where(line => line.Text.Length > 0).SelectMany(Of);

    private static IEnumerable<Figure> Of(PieceLine line)
    {
        var width = TextWidth.Of(line.Text, HeightMm, isBold: false);
        var (from, to) = (line.Points[0], line.Points[1]);
        if (line.IsClosed)
        {
            return InsideTop(line, width);
        }

        if (line.Kind == PieceLineKind.Mark)
        {
            return AtTick(line.Text, from, to);
        }

        return from.DistanceMm(to) > 1.2 * width ? Along(line.Text, from, to) : [];
    }

    /// <summary>Above the line's middle, never upside down.</summary>
    private static IEnumerable<Figure> Along(string text, Point from, Point to)
    {
        var (left, right) = to.X < from.X - 1e-6 || (Math.Abs(to.X - from.X) <= 1e-6 && to.Y < from.Y) ? (to, from) : (from, to);
        var along = (right - left).Unit();
        var degrees = Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        yield return new Lettering(text, left.Toward(right, 0.5) + (along.Left * AboveMm), HeightMm, TextAnchor.Middle, degrees);
    }

    /// <summary>Beyond the inner end of a tick, along it, so that neighbours do not collide.</summary>
    private static IEnumerable<Figure> AtTick(string text, Point from, Point to)
    {
        var onward = (to - from).Unit();
        var degrees = Math.Abs(onward.X) > Math.Abs(onward.Y) ? 0 : 90;
        var isTowardText = degrees == 90 ? onward.Y > 0 : onward.X > 0;
        var aside = degrees == 90 ? new Step(HeightMm / 2, 0) : new Step(0, -HeightMm / 2);
        yield return new Lettering(text, to + (onward * 1.5) + aside, HeightMm, isTowardText ? TextAnchor.Left : TextAnchor.Right, degrees);
    }

    /// <summary>Inside a closed line, under the left part of its top.</summary>
    private static IEnumerable<Figure> InsideTop(PieceLine line, double width)
    {
        var bounds = Box.Holding(line.Points);
        if (bounds.WidthMm > width + 4 && bounds.HeightMm > 3 * HeightMm)
        {
            yield return new Lettering(line.Text, new(bounds.Left + 2 + (bounds.WidthMm * 0.02), bounds.Top - HeightMm - 1.5), HeightMm);
        }
        else
        {
            yield return new Lettering(line.Text, new(bounds.Right + 1.5, bounds.Center.Y - (HeightMm / 2)), HeightMm);
        }
    }
}
