using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

/// <summary>A piece that leaves a corner of its box free may leave pages out; NetTopologySuite counts how many it must have.</summary>
public sealed class FewestPagesTests
{
    private const double MarginMm = 10;

    private const double OverlapMm = 12;

    /// <summary>What is printed beyond the piece's points, as the pages take it: half the widest line on either side of a join.</summary>
    private const double LineMm = 0.25;

    private static readonly TileJob Words = new("Templates", "a job", "a footer");

    /// <summary>Triangles and L-shapes of two to four A4 pages a side.</summary>
    private static readonly Gen<Outline> AnyShape = Gen.Select(Gen.Int[350, 800], Gen.Int[350, 800], Gen.Int[0, 3], Gen.Double[0.1, 0.6]).Select((widthMm, heightMm, turns, part) =>
        Shape(widthMm, heightMm, part).Turned(turns));

    [Fact]
    public void No_place_and_no_way_round_takes_fewer_pages() => AnyShape.Sample(
        shape =>
        {
            var piece = new TilePiece("piece", "a piece", [Stroke.Closed(LineRole.Cut, shape)]);
            var pages = TilePages.Of([piece], Words, PaperSize.A4, MarginMm, OverlapMm).Length - 1;

            Assert.Equal(Counted(shape), pages);
        },
        iter: 25);

    /// <summary>By hand: on A4 a window of 190 mm by 265 mm moves on by 178 and 253 mm; the triangle's box takes 3 by 2 pages, the corner under the slope none.</summary>
    [Fact]
    public void A_page_with_nothing_on_it_is_neither_printed_nor_spoken_of()
    {
        var triangle = new TilePiece("piece", "a piece", [Stroke.Closed(LineRole.Cut, new([new(0, 0), new(500, 0), new(0, 500)]))]);
        var pages = TilePages.Of([triangle], Words, PaperSize.A4, MarginMm, OverlapMm);
        var names = pages.Skip(1).Select(page => page.Name).ToList();
        var words = pages.SelectMany(page => page.Figures.OfType<Lettering>()).Select(text => text.Text).ToList();

        Assert.Equal(5, names.Count);
        Assert.DoesNotContain("piece-a3", names);
        Assert.DoesNotContain("cut here, lay on A3", words);
        Assert.Contains("cut here, lay on B3", words);
    }

    /// <summary>Pages that only touch at a corner cannot be joined, so none is left out.</summary>
    [Fact]
    public void Pages_hang_together()
    {
        var bar = new TilePiece("bar", "a bar", [Stroke.Closed(LineRole.Cut, new([new(0, 0), new(10, 0), new(360, 490), new(360, 500), new(350, 500), new(0, 10)]))]);
        var pages = TilePages.Of([bar], Words, PaperSize.A4, MarginMm, OverlapMm).Skip(1).Select(page => page.Name).ToList();

        Assert.All(pages, page => Assert.Contains(pages, other => AreNeighbours(page, other)));
    }

    private static Outline Shape(double widthMm, double heightMm, double part) => part > 0.35
        ? new([new(0, 0), new(widthMm, 0), new(widthMm, heightMm * part), new(widthMm * part, heightMm * part), new(widthMm * part, heightMm), new(0, heightMm)])
        : new([new(0, 0), new(widthMm, 0), new(0, heightMm)]);

    private static bool AreNeighbours(string one, string other)
    {
        var (down, right) = (one[^2] - other[^2], one[^1] - other[^1]);
        return Math.Abs(down) + Math.Abs(right) == 1;
    }

    /// <summary>Lays pages over the shape at every place, 5 mm apart or a twentieth of the room, for all four ways round, and counts those that hold some of it.</summary>
    private static int Counted(Outline shape) => (
        from isLandscape in new[] { false, true }
        from turns in new[] { 0, 1 }
        select CountedOn(new PageLayout(PaperSize.A4, MarginMm, OverlapMm, 12).WindowSizeMm(isLandscape), shape.Turned(turns))).Min();

    private static int CountedOn(PageExtent window, Outline shape)
    {
        var polygon = Witness.ToPolygon(shape);
        var box = shape.Bounds.Grown(LineMm);
        var (columns, spareXMm) = Along(box.WidthMm, window.WidthMm);
        var (rows, spareYMm) = Along(box.HeightMm, window.HeightMm);
        return (
            from right in Places(spareXMm)
            from up in Places(spareYMm)
            select (
                from column in Enumerable.Range(0, columns)
                from row in Enumerable.Range(0, rows)
                where polygon.Intersects(Body(new(box.Left - right, box.Top + up), window, (column, columns), (row, rows)))
                select 1).Count()).Min();
    }

    /// <summary>What is left of a page in the joined sheet, with half a line's width beyond it.</summary>
    private static NetTopologySuite.Geometries.Polygon Body(Point upperLeft, PageExtent window, (int Index, int Count) column, (int Index, int Count) row)
    {
        var (left, top) = (upperLeft.X + (column.Index * (window.WidthMm - OverlapMm)), upperLeft.Y - (row.Index * (window.HeightMm - OverlapMm)));
        return Witness.ToPolygon(Outline.Of(new Box(
            left + (column.Index > 0 ? OverlapMm / 2 : 0),
            top - window.HeightMm + (row.Index + 1 < row.Count ? OverlapMm / 2 : 0),
            left + window.WidthMm - (column.Index + 1 < column.Count ? OverlapMm / 2 : 0),
            top - (row.Index > 0 ? OverlapMm / 2 : 0)).Grown(LineMm)));
    }

    private static (int Pages, double SpareMm) Along(double lengthMm, double windowMm)
    {
        var (pages, coveredMm) = (1, windowMm);
        for (; coveredMm < lengthMm - 1e-6; coveredMm += windowMm - OverlapMm)
        {
            pages++;
        }

        return (pages, coveredMm - lengthMm);
    }

    /// <summary>The usual place at the edge, and every 5 mm, or a twentieth of more than 100 mm.</summary>
    private static IEnumerable<double> Places(double spareMm)
    {
        var stepMm = Math.Max(5, spareMm / 20);
        return Enumerable.Range(0, 1 + (int)(spareMm / stepMm)).Select(i => i * stepMm).Append(Math.Min(5, spareMm / 2));
    }
}
