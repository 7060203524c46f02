using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>Where the reader writes down what was measured: the squares of every page, the long scales of every joined piece.</summary>
internal static class ReadingTable
{
    private const double HeightMm = 2.2;
    private const double LineMm = 5.5;
    private const double BlankMm = 9;
    private const double CellMm = 32;
    private const double LabelMm = 11;
    private const double ScaleTitleMm = 62;

    /// <summary>So that the readings of a very large set leave room for the map.</summary>
    private const int MostRows = 8;

    /// <summary>With the long scales of many pieces the squares have fewer rows, so that there are so many in all.</summary>
    private const int MostRowsOfBoth = 12;

    private const int LeastRows = 3;

    private static string[] Heading =>
    [
        Say.Of("Readings in mm: x along the sheet's short side, y along its long side"),
        Say.Of("Square: 100 mm within 0.5 mm. Long scale, across the joins: within 1.5 mm in a metre (0.15 %). Beyond it: stop, do not cut."),
    ];

    /// <summary>The height it takes.</summary>
    public static double HeightOf(ImmutableArray<TileGrid> grids, double widthMm) =>
        LineMm * (Heading.Length + RowsOf(grids, widthMm) + Joined(grids).Count());

    /// <summary>The table, from the area's top.</summary>
    public static IEnumerable<Figure> Of(ImmutableArray<TileGrid> grids, Box area)
    {
        foreach (var (i, text) in Heading.Index())
        {
            yield return new Lettering(TextWidth.Shortened(text, area.WidthMm, HeightMm, i == 0), new(area.Left, area.Top - HeightMm - (i * (LineMm - 1.5))), HeightMm, IsBold: i == 0);
        }

        var labels = LabelsOf(grids).ToList();
        var columns = ColumnsFor(area.WidthMm);
        var (rows, top) = (RowsOf(grids, area.WidthMm), area.Top - (Heading.Length * LineMm));
        if (labels.Count > rows * columns)
        {
            labels[(rows * columns) - 1] = Say.Of("… and so on");
        }

        foreach (var figure in labels.Take(rows * columns).Index().SelectMany(label => Cell(label.Item, new(area.Left + (label.Index % columns * CellMm), top - ((label.Index / columns) + 1) * LineMm))))
        {
            yield return figure;
        }

        foreach (var figure in Joined(grids).Index().SelectMany(grid => Scales(grid.Item, new(area.Left, top - ((rows + grid.Index + 1) * LineMm)))))
        {
            yield return figure;
        }
    }

    private static int ColumnsFor(double widthMm) => Math.Max(1, (int)(widthMm / CellMm));

    private static IEnumerable<TileGrid> Joined(ImmutableArray<TileGrid> grids) => grids.Where(grid => grid.PageCount > 1);

    /// <summary>The rows of the squares.</summary>
    private static int RowsOf(ImmutableArray<TileGrid> grids, double widthMm)
    {
        var (pages, columns) = (1 + grids.Sum(grid => grid.PageCount), ColumnsFor(widthMm));
        return Math.Min(Math.Clamp(MostRowsOfBoth - Joined(grids).Count(), LeastRows, MostRows), (pages + columns - 1) / columns);
    }

    /// <summary>The page's number in the set and its label in the piece.</summary>
    private static IEnumerable<string> LabelsOf(ImmutableArray<TileGrid> grids) => grids
        .SelectMany(grid => grid.Pages.Select(page => grid.LabelOf(page.Row, page.Column)))
        .Prepend(Say.Of("map"))
        .Select((label, i) => FormattableString.Invariant($"{i + 1} {label}"));

    private static IEnumerable<Figure> Cell(string label, Point at) => label.StartsWith('…')
        ? [new Lettering(label, at, HeightMm)]
        : [new Lettering(label, at, HeightMm, IsBold: true), .. Blank("x", at + new Step(LabelMm, 0)), .. Blank("y", at + new Step(LabelMm + BlankMm + 1, 0))];

    private static IEnumerable<Figure> Scales(TileGrid grid, Point at)
    {
        yield return new Lettering(TextWidth.Shortened(grid.Piece.Title, ScaleTitleMm - 2, HeightMm, isBold: true), at, HeightMm, IsBold: true);
        var leftMm = ScaleTitleMm;
        foreach (var (ruler, _) in LongScale.Of(grid).OrderBy(scale => scale.Ruler.Name, StringComparer.Ordinal))
        {
            foreach (var figure in Blank(ruler.Name, at + new Step(leftMm, 0), 2 * BlankMm))
            {
                yield return figure;
            }

            var of = Say.Of($"of {ruler.LengthText}");
            yield return new Lettering(of, at + new Step(leftMm + (2 * BlankMm) + 1, 0), HeightMm);
            leftMm += (2 * BlankMm) + 6 + TextWidth.Of(of, HeightMm, isBold: false);
        }
    }

    private static IEnumerable<Figure> Blank(string name, Point at, double widthMm = BlankMm) =>
        [new Lettering(name, at, HeightMm), Stroke.Open(LineRole.Note, at + new Step(2, -0.4), at + new Step(widthMm, -0.4))];
}
