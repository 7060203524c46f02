using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>What a page says along its edges: where to cut it, where to glue it, and which page comes next.</summary>
/// <remarks>A page is cut at its right and lower join and laid on the uncut edge of the next one. Drawn on the paper, not in the piece's plane.</remarks>
internal sealed class TileEdges(TileGrid grid, int row, int column, Box onPage)
{
    private const double TextHeightMm = 2;

    /// <summary>A join strip at least so wide on either side of the line has room for the words.</summary>
    private const double RoomForTextMm = 3.5;

    private const double DashMm = 4;

    private const double GapMm = 3;

    private readonly double _halfMm = grid.Plan.Layout.OverlapMm / 2;

    /// <summary>The lines and words of all four edges that have a neighbour.</summary>
    public ImmutableArray<Figure> Figures =>
    [
        .. Cut(new(onPage.Right - _halfMm, onPage.Bottom), new(onPage.Right - _halfMm, onPage.Top), grid.LabelOf(row, column + 1)),
        .. Cut(new(onPage.Left, onPage.Bottom + _halfMm), new(onPage.Right, onPage.Bottom + _halfMm), grid.LabelOf(row + 1, column)),
        .. Glue(new(onPage.Left + _halfMm, onPage.Top), new(onPage.Left + _halfMm, onPage.Bottom), grid.LabelOf(row, column - 1)),
        .. Glue(new(onPage.Left, onPage.Top - _halfMm), new(onPage.Right, onPage.Top - _halfMm), grid.LabelOf(row - 1, column)),
    ];

    private IEnumerable<Figure> Cut(Point from, Point to, string? neighbour)
    {
        if (neighbour is null)
        {
            return [];
        }

        // What is beyond the cut is thrown away, so the words stand there when they fit.
        var outward = from.X == to.X ? new Step(1, 0) : new Step(0, -1);
        return [Stroke.Open(LineRole.Note, from, to), Words(Say.Of($"cut here, lay on {neighbour}"), from.Toward(to, 0.5), outward)];
    }

    private IEnumerable<Figure> Glue(Point from, Point to, string? neighbour)
    {
        if (neighbour is null)
        {
            return [];
        }

        // What is beyond the line is covered by the neighbour.
        var outward = from.X == to.X ? new Step(-1, 0) : new Step(0, 1);
        return [.. Dashes(from, to), Words(Say.Of($"glue: {neighbour} lies up to this line"), from.Toward(to, 0.5), outward)];
    }

    private Lettering Words(string text, Point middle, Step outward)
    {
        var away = outward * (_halfMm >= RoomForTextMm ? _halfMm / 2 : -RoomForTextMm / 2);
        var isUpright = outward.Y != 0;
        var toBaseLine = isUpright ? new Step(0, -TextHeightMm / 2) : new Step(TextHeightMm / 2, 0);
        return new(text, middle + away + toBaseLine, TextHeightMm, TextAnchor.Middle, isUpright ? 0 : 90);
    }

    private static IEnumerable<Figure> Dashes(Point from, Point to)
    {
        var (lengthMm, along) = (from.DistanceMm(to), (to - from).Unit());
        for (var startMm = 0.0; startMm < lengthMm; startMm += DashMm + GapMm)
        {
            yield return Stroke.Open(LineRole.Note, from + (along * startMm), from + (along * Math.Min(startMm + DashMm, lengthMm)));
        }
    }
}
