using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Nesting;

namespace CanvasCut.Sheets;

/// <summary>All pieces true size, close together on the paper roll of a plotter, each as often as it is drawn.</summary>
/// <remarks>
/// A sheet is as wide as the roll. Pieces are turned by quarters, which paper allows and cloth would not. What would be
/// longer than a PDF page can be goes on several sheets, in the order of the pieces.
/// </remarks>
public static class RollSheets
{
    private const double BetweenMm = 10;

    /// <summary>No shorter than any title, so that the head is no higher than reckoned with.</summary>
    private static string LongestTitle => Say.Of("Pieces true size, sheet 100 of 100");

    /// <summary>Fewer orders than for cloth: paper is cheap.</summary>
    private const int OrdersTried = 400;

    /// <summary>The sheets; empty when a piece is wider than the roll in every turn, or too long for a sheet.</summary>
    /// <param name="drawings">The pieces; at least one.</param>
    /// <param name="workshop">The roll and the margins; must have a roll.</param>
    /// <param name="context">The job.</param>
    /// <exception cref="ArgumentException">There is no roll.</exception>
    public static ImmutableArray<Sheet> Of(ImmutableArray<PieceDrawing> drawings, Workshop workshop, SheetContext context)
    {
        if (workshop.Plot.RollWidth is not { } roll)
        {
            throw new ArgumentException("There is no roll.", nameof(workshop));
        }

        var marginMm = workshop.Paper.Margin.Millimeters;
        var paper = new RollPaperSize(roll.Millimeters, marginMm, PlotHead.Of(LongestTitle, context, roll.Millimeters - (2 * marginMm)).HeightMm);
        var parts = PartsOf(drawings, paper).ToList();
        if (parts.Exists(part => part.Layout is null))
        {
            return [];
        }

        var sheets = parts.Select((part, i) => SheetOf(part, paper, context, parts.Count == 1 ? string.Empty : Say.Of($", sheet {i + 1} of {parts.Count}")));
        return [.. sheets.Select(sheet => workshop.Plot.SingleStroke ? sheet with { Figures = StrokeLetters.In(sheet.Figures) } : sheet)];
    }

    /// <summary>Halves the pieces until each part fits a sheet.</summary>
    private static IEnumerable<Part> PartsOf(ImmutableArray<PieceDrawing> drawings, RollPaperSize paper)
    {
        var task = new NestingTask(
            [.. drawings.Select(drawing => new NestingItem(drawing.Title, HullOf(drawing), 1, AllowedTurns.Quarter))], paper.UsableMm, BetweenMm);
        var layout = new BottomLeftSearch(OrdersTried).Find(task);
        if (layout is not null && layout.LengthMm + paper.BeyondMm <= PlotPages.LongestMm)
        {
            return [new(drawings, layout)];
        }

        return layout is null || drawings.Length == 1
            ? [new(drawings, null)]
            : PartsOf(drawings[..(drawings.Length / 2)], paper).Concat(PartsOf(drawings[(drawings.Length / 2)..], paper));
    }

    private static Sheet SheetOf(Part part, RollPaperSize paper, SheetContext context, string which)
    {
        var layout = part.Layout!;
        var figures = layout.Placements.OrderBy(placement => placement.Item).SelectMany(placement => OnPaper(part.Drawings[placement.Item], placement, paper));
        var title = Say.Of("Pieces true size") + which;
        var head = PlotHead.Of(title, context, paper.UsableMm);
        var headAt = new Step(paper.MarginMm, layout.LengthMm + paper.MarginMm + BetweenMm);
        return new("roll", $"{title}, {context.JobName}", paper.WidthMm, headAt.Y + head.HeightMm + paper.MarginMm, [.. figures, .. Figures.Moved(head.Figures, headAt)]);
    }

    /// <summary>The strip runs to the right and the paper upward, so the whole layout is turned by a quarter.</summary>
    private static ImmutableArray<Figure> OnPaper(PieceDrawing drawing, NestingPlacement placement, RollPaperSize paper)
    {
        var onStrip = Figures.Moved(Figures.Turned(drawing.Figures, placement.Quarters), placement.Offset);
        return Figures.Moved(Figures.Turned(onStrip, 1), new(paper.WidthMm - paper.MarginMm, paper.MarginMm));
    }

    private static Outline HullOf(PieceDrawing drawing) => ConvexHull.Of(drawing.Figures.SelectMany(figure => figure switch
    {
        Stroke stroke => stroke.Points,
        Lettering lettering => Figures.CornersOf(lettering),
        _ => Outline.Of(Figures.BoundsOf(figure)).Corners,
    }));

    /// <summary>Pieces with their layout; null when they cannot be laid out.</summary>
    private sealed record Part(ImmutableArray<PieceDrawing> Drawings, NestingLayout? Layout);

    private sealed record RollPaperSize(double WidthMm, double MarginMm, double HeadMm)
    {
        public double UsableMm => WidthMm - (2 * MarginMm);

        public double BeyondMm => (2 * MarginMm) + BetweenMm + HeadMm;
    }
}
