using System.Collections.Immutable;
using CanvasCut.Drawing;

namespace CanvasCut.Sheets;

/// <summary>A page for each piece, as large as the piece, for a copy shop that prints on large paper.</summary>
public static class PlotPages
{
    /// <summary>PDF viewers show no page side longer than 14,400 units true to size (PDF Reference 1.6, appendix C).</summary>
    public const double LongestMm = 14400 / 72.0 * 25.4;

    private const double MarginMm = 10;
    private const double GapMm = 8;

    /// <summary>The pages in the order of the pieces, each with the test squares; empty when a piece is too long for a page.</summary>
    public static ImmutableArray<Sheet> Of(ImmutableArray<PieceDrawing> drawings, SheetContext context)
    {
        ImmutableArray<Sheet> pages = [.. drawings.Select(drawing => PageOf(drawing, context))];
        return pages.Any(page => Math.Max(page.WidthMm, page.HeightMm) > LongestMm) ? [] : pages;
    }

    private static Sheet PageOf(PieceDrawing drawing, SheetContext context)
    {
        var head = PlotHead.Of(drawing.Title, context, Math.Max(drawing.Size.WidthMm, PlotHead.LeastWidthMm));
        return new(
            drawing.Piece.Key.Id,
            drawing.Title,
            head.WidthMm + (2 * MarginMm),
            drawing.Size.HeightMm + GapMm + head.HeightMm + (2 * MarginMm),
            [
                .. Figures.Moved(drawing.Figures, new(MarginMm, MarginMm)),
                .. Figures.Moved(head.Figures, new(MarginMm, MarginMm + drawing.Size.HeightMm + GapMm)),
            ]);
    }
}
