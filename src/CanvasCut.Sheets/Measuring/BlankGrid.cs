using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>A ruled grid to be filled in by pencil.</summary>
/// <param name="Columns">The columns, left to right; a column without a head belongs to the one before.</param>
internal sealed record BlankGrid(ImmutableArray<Column> Columns)
{
    /// <summary>The height of a row: room for a pencilled number.</summary>
    public const double RowMm = 6.4;

    private const double HeadMm = 4.6;
    private const double TextMm = 1.9;
    private const double PaddingMm = 1;

    /// <summary>The grid's height with so many rows.</summary>
    public static double HeightOf(int rows) => HeadMm + (rows * RowMm);

    /// <summary>The grid, its upper left corner at a point.</summary>
    /// <param name="corner">Where.</param>
    /// <param name="names">What stands in the first cell of each row; empty for a blank.</param>
    public IEnumerable<Figure> At(Point corner, ImmutableArray<string> names)
    {
        var (height, width) = (HeightOf(names.Length), Columns.Sum(column => column.WidthMm));
        for (var row = 0; row <= names.Length; row++)
        {
            var y = corner.Y - HeightOf(row);
            yield return Stroke.Open(LineRole.Note, new(corner.X, y), new(corner.X + width, y));
        }

        var left = corner.X;
        foreach (var column in Columns)
        {
            var top = column.Head.Length > 0 ? corner.Y : corner.Y - HeadMm;
            yield return Stroke.Open(LineRole.Note, new(left, top), new(left, corner.Y - height));
            yield return new Lettering(column.Head, new(left + PaddingMm, corner.Y - HeadMm + 1.3), TextMm, IsBold: true);
            left += column.WidthMm;
        }

        yield return Stroke.Open(LineRole.Note, new(left, corner.Y), new(left, corner.Y - height));
        foreach (var (row, name) in names.Index())
        {
            yield return new Lettering(name, new(corner.X + PaddingMm, corner.Y - HeightOf(row + 1) + 2.2), TextMm);
        }
    }
}
