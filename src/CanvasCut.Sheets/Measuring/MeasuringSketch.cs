using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>What is measured where: the top from above, and a bow from aft.</summary>
internal static class MeasuringSketch
{
    /// <summary>The sketch's width.</summary>
    public const double WidthMm = 84;

    /// <summary>Its height.</summary>
    public const double HeightMm = 74;

    private const double TextMm = 1.9;
    private const double LeftMm = 20;
    private const double RightMm = 64;
    private const double EdgeY = 70;
    private const double FirstY = 64;
    private const double MiddleY = 49;
    private const double LastY = 34;

    /// <summary>The figures, their lower left corner at the origin.</summary>
    public static ImmutableArray<Figure> Figures => [.. Plan(), .. Section()];

    private static IEnumerable<Figure> Plan()
    {
        double[] bows = [FirstY, MiddleY, LastY];
        foreach (var (i, y) in bows.Index())
        {
            yield return Stroke.Open(LineRole.Cut, new(LeftMm, y), new(RightMm, y));
            yield return new Lettering($"P{i + 1}", new(LeftMm - 1, y - 0.9), TextMm, TextAnchor.Right);
            yield return new Lettering($"S{i + 1}", new(RightMm + 1, y - 0.9), TextMm);
            yield return new Lettering(Say.Of($"bow {i + 1}"), new(RightMm + 8, y - 0.9), TextMm);
        }

        yield return Stroke.Open(LineRole.Fold, new(42, LastY - 1.8), new(42, EdgeY + 1.5));
        yield return new Lettering(Say.Of("centreline"), new(43, EdgeY + 1.8), TextMm);
        yield return Stroke.Open(LineRole.Note, new(LeftMm, EdgeY), new(RightMm, EdgeY));
        yield return new Lettering(Say.Of("forward edge"), new(RightMm + 1, EdgeY - 0.9), TextMm);
        yield return new Lettering(Say.Of("station 1"), new(47, ((EdgeY + FirstY) / 2) - 0.9), TextMm);
        yield return Stroke.Open(LineRole.Mark, new(LeftMm, FirstY), new(LeftMm, LastY));
        yield return Stroke.Open(LineRole.Mark, new(RightMm, FirstY), new(RightMm, LastY));
        foreach (var (from, to) in new[] { (FirstY, MiddleY), (MiddleY, LastY) })
        {
            yield return Stroke.Open(LineRole.Stitch, new(LeftMm, from), new(RightMm, to));
            yield return Stroke.Open(LineRole.Stitch, new(RightMm, from), new(LeftMm, to));
        }

        foreach (var figure in Dimension.Upright(MiddleY, FirstY, 13, string.Empty).Concat(Dimension.Upright(LastY, FirstY, 7, string.Empty)).Concat(Dimension.Upright(FirstY, EdgeY, 45, string.Empty)))
        {
            yield return figure;
        }

        yield return new Lettering(Say.Of("port stations"), new(5, MiddleY), TextMm, TextAnchor.Middle, 90);
        yield return new Lettering(Say.Of("starboard"), new(RightMm + 2, 57.5), TextMm);
        yield return new Lettering(Say.Of("stations alike"), new(RightMm + 2, 54.5), TextMm);
        yield return new Lettering(Say.Of("P1-S2, S1-P2: diagonals of the bay"), new(RightMm, 29.5), TextMm, TextAnchor.Right);
        yield return new Lettering(Say.Of("P1-S3, S1-P3: overall, bow 1 to the last"), new(RightMm, 26.5), TextMm, TextAnchor.Right);
    }

    private static IEnumerable<Figure> Section()
    {
        const double BaseY = 8;
        var arc = CircularArc.FromChordAndRise(RightMm - LeftMm, 9);
        yield return new Stroke(LineRole.Cut, [.. Enumerable.Range(0, 41).Select(i => On(arc, (i / 20.0) - 1, BaseY))], IsClosed: false);
        yield return Stroke.Open(LineRole.Fold, new(LeftMm, BaseY), new(RightMm, BaseY));
        yield return Stroke.Open(LineRole.Mark, new(42, BaseY), new(42, BaseY + arc.RiseMm));
        yield return new Lettering(Say.Of("crown"), new(43.2, BaseY + 3), TextMm);
        yield return new Lettering(Say.Of("chord, a tight tape from P to S"), new(42, BaseY - 4), TextMm, TextAnchor.Middle);
        yield return new Lettering(Say.Of("girth, along the cloth from P to S"), new(42, BaseY + 11.5), TextMm, TextAnchor.Middle);
        yield return new Lettering("P", new(LeftMm - 3, BaseY - 0.9), TextMm);
        yield return new Lettering("S", new(RightMm + 1.5, BaseY - 0.9), TextMm);
        yield return new Lettering(Say.Of("a bow from aft"), new(0, 1), TextMm);
    }

    private static Point On(CircularArc arc, double part, double baseY)
    {
        var angle = part * Math.Asin(arc.ChordMm / 2 / arc.RadiusMm);
        return new(42 + (arc.RadiusMm * Math.Sin(angle)), baseY + arc.RiseMm - (arc.RadiusMm * (1 - Math.Cos(angle))));
    }
}
