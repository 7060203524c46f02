using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The top from above with all that lies on it, and the table of marks.</summary>
public static class PlacementSheet
{
    private const double WidthMm = 420;
    private const double HeightMm = 297;
    private const double MarginMm = 12;
    private const double TableMm = 168;

    /// <summary>Draws the placement.</summary>
    public static Sheet Of(PatternSet patterns, SheetContext context)
    {
        var frame = new Box(MarginMm + 16, MarginMm + 16, WidthMm - MarginMm - TableMm - 22, HeightMm - MarginMm - 26);
        var view = View.Fitting(Plan.Of(patterns.Job.Top), frame);
        return new(
            "placement",
            $"Placement, {context.JobName}",
            WidthMm,
            HeightMm,
            [.. Head(context, view), .. new TopPicture(patterns, view, context.Units).Figures(), .. Marks(patterns, context)]);
    }

    private static IEnumerable<Figure> Head(SheetContext context, View view)
    {
        yield return new Lettering($"Placement: {context.JobName}", new(MarginMm, HeightMm - MarginMm - 5), 5, IsBold: true);
        yield return new Lettering(
            $"The top from above, laid flat, scale {view.ScaleText}. Stations run aft from the forward edge, offsets from the centreline.",
            new(MarginMm, HeightMm - MarginMm - 11),
            2.5);
        if (context.Warning.Length > 0)
        {
            yield return new Lettering(context.Warning, new(MarginMm, HeightMm - MarginMm - 17), 3, IsBold: true);
        }
    }

    private static ImmutableArray<Figure> Marks(PatternSet patterns, SheetContext context)
    {
        var measure = context.Units == PrintUnits.Both ? 40 : 28;
        var table = new Table([new("Mark on the top", TableMm - (2 * measure)), new("Station", measure), new("Offset", measure)], 1.8);
        var corner = new Point(WidthMm - MarginMm - TableMm, HeightMm - MarginMm - 2);
        var marks = table.At(corner, TopMarks.Of(patterns.Mounted).Select(mark => ImmutableArray.Create(
            mark.Name,
            LengthText.Of(mark.Place.Station, context.Units),
            OffsetText.Of(mark.Place.Offset, context.Units))));
        var squares = new Table([new("Equal in pairs when the marks are square", TableMm - measure), new("Diagonal", measure)], 1.8);
        var diagonals = squares.At(corner - new Step(0, marks.HeightMm + 4), TopMarks.Diagonals(patterns.Mounted).Select(diagonal =>
            ImmutableArray.Create(diagonal.Name, LengthText.Of(diagonal.Distance, context.Units))));
        return marks.Figures.AddRange(diagonals.Figures);
    }
}
