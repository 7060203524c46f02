using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>A column of a table.</summary>
/// <param name="Head">What stands over it.</param>
/// <param name="WidthMm">Its width.</param>
internal sealed record Column(string Head, double WidthMm);

/// <summary>Rows of text under heads, ruled with thin lines.</summary>
/// <param name="Columns">The columns, left to right.</param>
/// <param name="HeightMm">The height of capitals.</param>
internal sealed record Table(ImmutableArray<Column> Columns, double HeightMm = 2)
{
    private const double PaddingMm = 1.2;

    /// <summary>From one line of text to the next.</summary>
    private double PitchMm => HeightMm * 1.75;

    /// <summary>The width of all columns.</summary>
    public double WidthMm => Columns.Sum(column => column.WidthMm);

    /// <summary>The heads, in bold, with a rule under them.</summary>
    public (ImmutableArray<Figure> Figures, double HeightMm) Head() => Row([.. Columns.Select(column => column.Head)], isBold: true);

    /// <summary>A row, its upper left corner at the origin, with a rule under it.</summary>
    public (ImmutableArray<Figure> Figures, double HeightMm) Row(ImmutableArray<string> cells, bool isBold = false)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var (left, most) = (0.0, 1);
        foreach (var (column, cell) in Columns.Zip(cells))
        {
            var lines = TextWrap.Lines(cell, column.WidthMm - (2 * PaddingMm), HeightMm, isBold);
            figures.AddRange(lines.Select((line, i) => new Lettering(
                line, new(left + PaddingMm, -PaddingMm - HeightMm - (i * PitchMm)), HeightMm, IsBold: isBold)));
            (left, most) = (left + column.WidthMm, Math.Max(most, lines.Length));
        }

        var height = HeightMm + ((most - 1) * PitchMm) + (2.2 * PaddingMm);
        figures.Add(Stroke.Open(isBold ? LineRole.Mark : LineRole.Note, new(0, -height), new(WidthMm, -height)));
        return (figures.ToImmutable(), height);
    }

    /// <summary>The whole table, its upper left corner at a point, and the height it takes.</summary>
    public (ImmutableArray<Figure> Figures, double HeightMm) At(Point corner, IEnumerable<ImmutableArray<string>> rows)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var down = 0.0;
        foreach (var (row, height) in rows.Select(cells => Row(cells)).Prepend(Head()))
        {
            figures.AddRange(Figures.Moved(row, new(corner.X, corner.Y - down)));
            down += height;
        }

        return (figures.ToImmutable(), down);
    }
}
