using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>How a piece lies under its pages, and which pages are printed: those on which there is something of it.</summary>
/// <param name="Windows">The pages.</param>
/// <param name="Figures">The piece's figures as they lie.</param>
/// <param name="Printed">For each page, row by row, whether it is printed.</param>
internal sealed record TilePlacing(TileWindows Windows, ImmutableArray<Figure> Figures, ImmutableArray<bool> Printed)
{
    /// <summary>Half the widest line, so that a line on the edge of the piece is printed whole.</summary>
    public const double EdgeMm = 0.25;

    /// <summary>How far from the page's edge the piece begins where there is room to spare.</summary>
    private const double LargestInsetMm = 5;

    /// <summary>Between the places that are tried for a piece which leaves a corner of its box free.</summary>
    private const double ShiftMm = 5;

    /// <summary>So many places are tried each way at most.</summary>
    private const int MostShifts = 20;

    /// <summary>A piece that fills so much of its box leaves no page free wherever it lies.</summary>
    private const double FullPart = 0.9;

    /// <summary>How many pages are printed.</summary>
    public int PageCount => Printed.Count(isPrinted => isPrinted);

    /// <summary>The placing with the fewest pages over both ways of the paper, both ways of the piece, and where it lies on them.</summary>
    public static TilePlacing For(TilePiece piece, PageLayout layout)
    {
        var placings = LeavesCornersFree(piece)
            ? TilePlan.Ways(Extent(piece.Bounds), layout).SelectMany(way => Shifts(way).Select(spare => Of(piece, way, spare)))
            : [Full(piece, TileGrid.PlanOf(piece.Bounds, layout))];
        return placings.MinBy(placing => placing.PageCount)!;
    }

    /// <summary>The placing that prints every page, whether or not there is something on it.</summary>
    public static TilePlacing Full(TilePiece piece, TilePlan plan)
    {
        var (windows, figures) = Laid(piece, plan, UsualSpare(plan));
        return new(windows, figures, [.. Enumerable.Repeat(true, plan.PageCount)]);
    }

    /// <summary>The room that a piece needs, line widths included.</summary>
    public static PageExtent Extent(Box piece) => new(piece.WidthMm + (2 * EdgeMm), piece.HeightMm + (2 * EdgeMm));

    private static TilePlacing Of(TilePiece piece, TilePlan plan, PageExtent spare)
    {
        var (windows, figures) = Laid(piece, plan, spare);
        var marked = new MarkedPlaces(figures);
        ImmutableArray<bool> printed = [.. Enumerable.Range(0, plan.PageCount).Select(i => marked.Reach(windows.BodyOf(i / plan.Columns, i % plan.Columns).Grown(EdgeMm)))];
        return HoldsTogether(printed, plan.Columns) ? new(windows, figures, printed) : Full(piece, plan);
    }

    private static (TileWindows Windows, ImmutableArray<Figure> Figures) Laid(TilePiece piece, TilePlan plan, PageExtent spare)
    {
        var figures = plan.IsTurned ? Drawing.Figures.Turned(piece.Figures, 1) : piece.Figures;
        var bounds = Drawing.Figures.BoundsOf(figures).Grown(EdgeMm);
        return (new(plan, new(bounds.Left - spare.WidthMm, bounds.Top + spare.HeightMm)), figures);
    }

    private static bool LeavesCornersFree(TilePiece piece)
    {
        var cuts = piece.Figures.OfType<Stroke>().Where(stroke => stroke is { Role: LineRole.Cut, IsClosed: true });
        return cuts.Sum(cut => new Outline(cut.Points).AreaMm2) < FullPart * piece.Bounds.WidthMm * piece.Bounds.HeightMm;
    }

    /// <summary>The usual place first, then others within the room to spare.</summary>
    private static IEnumerable<PageExtent> Shifts(TilePlan plan) => plan is { Rows: > 1, Columns: > 1 }
        ? [UsualSpare(plan), .. from down in Places(plan.Covered.HeightMm - plan.Content.HeightMm) from right in Places(plan.Covered.WidthMm - plan.Content.WidthMm) select new PageExtent(right, down)]
        : [UsualSpare(plan)];

    private static IEnumerable<double> Places(double spareMm)
    {
        var stepMm = Math.Max(ShiftMm, spareMm / MostShifts);
        return Enumerable.Range(0, 1 + (int)(Math.Max(0, spareMm) / stepMm)).Select(i => i * stepMm);
    }

    private static PageExtent UsualSpare(TilePlan plan) => new(
        Spare(plan.Covered.WidthMm - plan.Content.WidthMm, plan.PageCount),
        Spare(plan.Covered.HeightMm - plan.Content.HeightMm, plan.PageCount));

    /// <summary>
    /// A piece on one page stands in its middle; a larger one begins near the edge, also of a row or column of pages, so that
    /// the spare room is in one place and the squares need not lie across a strip.
    /// </summary>
    private static double Spare(double spareMm, int pages) => pages == 1 ? spareMm / 2 : Math.Min(spareMm / 2, LargestInsetMm);

    /// <summary>Whether every page can be joined to the others along an edge.</summary>
    private static bool HoldsTogether(ImmutableArray<bool> printed, int columns)
    {
        var reached = new HashSet<int>();
        Reach(printed.IndexOf(true));
        return reached.Count == printed.Count(isPrinted => isPrinted);

        void Reach(int page)
        {
            if (page < 0 || page >= printed.Length || !printed[page] || !reached.Add(page))
            {
                return;
            }

            Reach(page - columns);
            Reach(page + columns);
            Reach(page % columns > 0 ? page - 1 : -1);
            Reach((page + 1) % columns > 0 ? page + 1 : -1);
        }
    }
}
