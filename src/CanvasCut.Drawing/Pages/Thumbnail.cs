using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>A small picture of a piece with the pages it is printed on.</summary>
internal static class Thumbnail
{
    private const double DotMm = 0.05;
    private const double TitleHeightMm = 2.4;

    private const double LineMm = 4;

    private const double TitleRoomMm = (2 * LineMm) + 1;

    /// <summary>The titles of a page of several pieces take more lines, smaller ones.</summary>
    private const double WrappedHeightMm = 1.7;

    private const double WrappedLineMm = 2.7;

    private const int MostTitleLines = 6;

    /// <summary>One line would leave port and starboard out.</summary>
    private const int LeastTitleLines = 2;

    private const double LargestLabelHeightMm = 3;

    private const double SmallestLabelHeightMm = 1.2;

    private const double LabelPartOfPage = 0.3;

    private const double Darkness = 0.15;

    /// <summary>Larger would not look like a map.</summary>
    private const double LargestScale = 0.35;

    /// <summary>The picture, as large as the cell allows.</summary>
    /// <param name="grid">The piece and its pages.</param>
    /// <param name="firstPage">The number of its first page in the set.</param>
    /// <param name="cell">Where on the map page.</param>
    public static ImmutableArray<Figure> Of(TileGrid grid, int firstPage, Box cell)
    {
        var covered = Bodies(grid).Select(page => page.Body).Aggregate((first, second) => first.Joined(second));
        var heading = Heading(grid, firstPage, cell).ToList();
        var room = cell with { Top = heading.Min(line => line.At.Y) - (TitleRoomMm - LineMm - TitleHeightMm) };
        var scale = Math.Min(LargestScale, Math.Min(room.WidthMm / covered.WidthMm, room.HeightMm / covered.HeightMm));
        var at = new Point(cell.Left, room.Top - (covered.HeightMm * scale));
        Point OnMap(Point point) => at + ((point - covered.LowerLeft) * scale);

        return
        [
            .. heading,
            .. Shape(grid.PieceFigures, OnMap),
            .. Bodies(grid).SelectMany(page => Page(page.Label, page.Body, OnMap)),
        ];
    }

    private static IEnumerable<Lettering> Heading(TileGrid grid, int firstPage, Box cell)
    {
        var lastPage = firstPage + grid.PageCount - 1;
        var pages = grid.PageCount == 1 ? Say.Of($"page {firstPage}") : Say.Of($"pages {firstPage}–{lastPage}");
        var title = grid.Piece.Title;
        if (TextWidth.Of(title, TitleHeightMm, isBold: true) <= cell.WidthMm)
        {
            yield return new(title, new(cell.Left, cell.Top - TitleHeightMm), TitleHeightMm, IsBold: true);
            yield return new(pages, new(cell.Left, cell.Top - TitleHeightMm - LineMm), TitleHeightMm - 0.4);
            yield break;
        }

        var y = cell.Top - TitleHeightMm;
        foreach (var line in TitleLines(title, cell))
        {
            yield return new(line, new(cell.Left, y), WrappedHeightMm, IsBold: true);
            y -= WrappedLineMm;
        }

        yield return new(pages, new(cell.Left, y - (LineMm - WrappedLineMm)), TitleHeightMm - 0.4);
    }

    /// <summary>The title over several lines, but no more than leave half of the cell to the picture.</summary>
    private static ImmutableArray<string> TitleLines(string title, Box cell)
    {
        var most = (int)Math.Clamp(((cell.HeightMm / 2) - TitleRoomMm + LineMm) / WrappedLineMm, LeastTitleLines, MostTitleLines);
        var lines = TextWrap.Lines(title, cell.WidthMm, WrappedHeightMm, isBold: true);
        return lines.Length <= most
            ? lines
            : [.. lines.Take(most - 1), TextWidth.Shortened(string.Join(' ', lines.Skip(most - 1)), cell.WidthMm, WrappedHeightMm, isBold: true)];
    }

    /// <summary>What is to be cut, in grey so that page labels can be read on it; every line where nothing is to be cut.</summary>
    private static IEnumerable<Figure> Shape(ImmutableArray<Figure> figures, Func<Point, Point> onMap)
    {
        var strokes = figures.OfType<Stroke>().ToList();
        var cuts = strokes.Where(stroke => stroke is { Role: LineRole.Cut, IsClosed: true }).ToList();
        foreach (var stroke in cuts.Count > 0 ? cuts : strokes)
        {
            var line = new Stroke(LineRole.Mark, [.. stroke.Points.Select(onMap)], stroke.IsClosed);
            // Beside a very large piece a very small one shrinks to a dot, which has no inside to be grey.
            var extent = Box.Holding(line.Points);
            if (stroke.IsClosed && Math.Min(extent.WidthMm, extent.HeightMm) > DotMm)
            {
                yield return new Tint(new(line.Points), Darkness);
            }

            yield return line;
        }
    }

    private static IEnumerable<(string Label, Box Body)> Bodies(TileGrid grid) =>
        grid.Pages.Select(page => (grid.LabelOf(page.Row, page.Column)!, grid.BodyOf(page.Row, page.Column)));

    private static IEnumerable<Figure> Page(string label, Box body, Func<Point, Point> onMap)
    {
        var outline = Outline.Of(body).Mapped(onMap);
        var heightMm = Math.Clamp(outline.Bounds.HeightMm * LabelPartOfPage, SmallestLabelHeightMm, LargestLabelHeightMm);
        yield return Stroke.Closed(LineRole.Note, outline);
        if (outline.Bounds.HeightMm < heightMm || outline.Bounds.WidthMm < TextWidth.Of(label, heightMm, isBold: false))
        {
            yield break;
        }

        yield return new Lettering(label, outline.Bounds.Center - new Step(0, heightMm / 2), heightMm, TextAnchor.Middle);
    }
}
