using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>Writes at a piece's lines what they are, where there is room for it.</summary>
internal static class LineWords
{
    private const double HeightMm = 2;
    private const double AboveMm = 0.9;
    private const double BelowMm = 0.7;

    /// <summary>Where along a line its words are tried, the middle first.</summary>
    private static readonly double[] Parts = [0.5, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

    /// <summary>The words of every line; each takes its room. Words for which there is none are left out.</summary>
    public static IEnumerable<Figure> Of(PatternPiece piece, FreePlace free)
    {
        foreach (var line in piece.Lines.Where(line => line.Text.Length > 0))
        {
            if (Places(line).FirstOrDefault(words => free.IsFree(words)) is { } found)
            {
                free.Take(found);
                yield return found;
            }
        }
    }

    private static IEnumerable<Lettering> Places(PieceLine line)
    {
        var ends = line.IsClosed ? line.Points.Append(line.Points[0]) : line.Points;
        var edges = ends.Zip(ends.Skip(1)).OrderByDescending(edge => Math.Round(edge.First.DistanceMm(edge.Second), 6));
        var along = edges.Take(4).SelectMany(edge => Along(line.Text, edge.First, edge.Second));
        return line.Kind == PieceLineKind.Mark && !line.IsClosed
            ? AtTick(line.Text, line.Points[0], line.Points[1]).Concat(along)
            : along.Concat(Beside(line));
    }

    /// <summary>Above and below a straight line, never upside down.</summary>
    private static IEnumerable<Lettering> Along(string text, Point from, Point to)
    {
        if (from.DistanceMm(to) < TextWidth.Of(text, HeightMm, isBold: false))
        {
            yield break;
        }

        var isBackward = to.X < from.X - 1e-6 || (Math.Abs(to.X - from.X) <= 1e-6 && to.Y < from.Y);
        var (left, right) = isBackward ? (to, from) : (from, to);
        var along = (right - left).Unit();
        var degrees = Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        foreach (var part in Parts)
        {
            yield return new(text, left.Toward(right, part) + (along.Left * AboveMm), HeightMm, TextAnchor.Middle, degrees);
            yield return new(text, left.Toward(right, part) - (along.Left * (HeightMm + BelowMm)), HeightMm, TextAnchor.Middle, degrees);
        }
    }

    /// <summary>Beyond the inner end of a tick, along it, so that neighbours do not collide; else beside it.</summary>
    private static IEnumerable<Lettering> AtTick(string text, Point from, Point to)
    {
        const double GapMm = 1.5;
        var onward = (to - from).Unit();
        var isLevel = Math.Abs(onward.X) > Math.Abs(onward.Y);
        var anchor = (isLevel ? onward.X : onward.Y) > 0 ? TextAnchor.Left : TextAnchor.Right;
        var aside = isLevel ? new Step(0, -HeightMm / 2) : new Step(HeightMm / 2, 0);
        yield return new(text, to + (onward * GapMm) + aside, HeightMm, anchor, isLevel ? 0 : 90);
        yield return new(text, to + new Step(GapMm, -HeightMm / 2), HeightMm);
        yield return new(text, to + new Step(-GapMm, -HeightMm / 2), HeightMm, TextAnchor.Right);
    }

    /// <summary>To the right of a closed line too small to be written along.</summary>
    private static IEnumerable<Lettering> Beside(PieceLine line)
    {
        var bounds = Box.Holding(line.Points);
        yield return new(line.Text, new(bounds.Right + 1.5, bounds.Center.Y - (HeightMm / 2)), HeightMm);
        yield return new(line.Text, new(bounds.Left - 1.5, bounds.Center.Y - (HeightMm / 2)), HeightMm, TextAnchor.Right);
    }
}
