using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>The first page of a set: what is in it, how to print it and how to join it.</summary>
internal static class MapPage
{
    private const double TitleHeightMm = 5;

    private const double HeaderHeightMm = 2.6;

    private const double TextHeightMm = 2.2;

    private const double LineMm = 4;

    private const double GapMm = 5;

    /// <summary>Narrower text beside the squares would be a column of single words.</summary>
    private const double NarrowestTextMm = 60;

    /// <summary>How high a thumbnail is for its width, about.</summary>
    private const double CellShape = 0.75;

    /// <summary>On paper of a copy shop the map stays as small as a desk's.</summary>
    private static readonly PageExtent Largest = new(300, 400);

    /// <summary>The map page.</summary>
    public static Sheet Of(ImmutableArray<TileGrid> grids, TileJob job, PageLayout layout)
    {
        var body = BodyOf(layout);
        var pageCount = 1 + grids.Sum(grid => grid.PageCount);
        var squares = new Point(body.Right - TestSquares.InchSideMm - 0.5, body.Bottom + 2);
        var top = body.Top - TitleHeightMm - (2 * LineMm);
        var table = body with { Bottom = squares.Y + TestSquares.InchSideMm + GapMm, Top = squares.Y + TestSquares.InchSideMm + GapMm + ReadingTable.HeightOf(grids, body.WidthMm) };
        return layout.SheetOf(("map", job.Title), isLandscape: false,
        [
            .. Heading(body, job, pageCount, layout),
            .. Thumbnails(grids, body with { Top = top, Bottom = table.Top + GapMm }),
            .. ReadingTable.Of(grids, table),
            .. Rules(new(body.Left, squares.Y, squares.X - GapMm, squares.Y + TestSquares.InchSideMm), layout),
            .. TestSquares.At(squares),
            .. PageFooter.Of(layout.FooterOf(isLandscape: false), job, string.Empty, Say.Of("Map of the pages"), Say.Of($"page 1 of {pageCount}")),
        ]);
    }

    /// <summary>The upper left part of the page above its footer, no larger than can be looked at in one.</summary>
    private static Box BodyOf(PageLayout layout)
    {
        var printable = layout.PrintableOf(isLandscape: false);
        return printable with
        {
            Bottom = Math.Max(printable.Bottom + layout.FooterMm, printable.Top - Largest.HeightMm),
            Right = Math.Min(printable.Right, printable.Left + Largest.WidthMm),
        };
    }

    private static IEnumerable<Figure> Heading(Box body, TileJob job, int pageCount, PageLayout layout)
    {
        var count = Say.Of($"{pageCount} pages {layout.Paper.Name}");
        var countRoomMm = TextWidth.Of(count, HeaderHeightMm, isBold: true) + GapMm;
        var title = TextWidth.Shortened(job.Title, body.WidthMm - countRoomMm, TitleHeightMm, isBold: true);
        yield return new Lettering(title, new(body.Left, body.Top - TitleHeightMm), TitleHeightMm, IsBold: true);
        yield return new Lettering(count, new(body.Right, body.Top - TitleHeightMm), HeaderHeightMm, TextAnchor.Right, IsBold: true);
        var header = TextWidth.Shortened(job.Header, body.WidthMm, HeaderHeightMm, isBold: false);
        yield return new Lettering(header, new(body.Left, body.Top - TitleHeightMm - LineMm - 1), HeaderHeightMm);
    }

    private static IEnumerable<Figure> Rules(Box area, PageLayout layout)
    {
        var widthMm = Math.Max(area.WidthMm, NarrowestTextMm);
        var yMm = area.Top;
        foreach (var (text, isBold) in PrintingRules.Of(layout))
        {
            yMm -= isBold ? LineMm / 2 : 0;
            foreach (var line in TextWrap.Lines(text, widthMm, TextHeightMm, isBold))
            {
                yMm -= LineMm;
                yield return new Lettering(line, new(area.Left, yMm), TextHeightMm, IsBold: isBold);
            }
        }
    }

    private static IEnumerable<Figure> Thumbnails(ImmutableArray<TileGrid> grids, Box area)
    {
        var columns = ColumnsFor(grids.Length, area);
        var rows = (grids.Length + columns - 1) / columns;
        var (widthMm, heightMm) = ((area.WidthMm + GapMm) / columns, (area.HeightMm + GapMm) / rows);
        var firstPage = 2;
        for (var i = 0; i < grids.Length; i++)
        {
            var corner = new Point(area.Left + (i % columns * widthMm), area.Top - (((i / columns) + 1) * heightMm) + GapMm);
            foreach (var figure in Thumbnail.Of(grids[i], firstPage, new(corner.X, corner.Y, corner.X + widthMm - GapMm, corner.Y + heightMm - GapMm)))
            {
                yield return figure;
            }

            firstPage += grids[i].PageCount;
        }
    }

    /// <summary>The number of columns with the largest thumbnails.</summary>
    private static int ColumnsFor(int count, Box area) =>
        Enumerable.Range(1, Math.Max(1, count)).MaxBy(columns =>
            Math.Min(area.WidthMm / columns * CellShape, area.HeightMm / ((count + columns - 1) / columns)));
}
