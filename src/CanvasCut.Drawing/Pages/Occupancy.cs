using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>How much is drawn at each place of an area.</summary>
/// <remarks>The area is divided into cells; running totals over them make the fullness of any box a matter of four look-ups.</remarks>
internal sealed class Occupancy
{
    /// <summary>The side of a cell.</summary>
    public const double CellMm = 2;

    /// <summary>A line across a line is no harm; a line through a word is.</summary>
    private const double LineWeight = 1;

    private const double TextWeight = 12;

    private readonly Box _area;
    private readonly int _columns;
    private readonly int _rows;

    /// <summary>Row by row, with an empty row below and an empty column on the left; first the weights, then their totals.</summary>
    private readonly double[] _totals;

    public Occupancy(Box area, ImmutableArray<Figure> figures)
    {
        _area = area;
        _columns = (int)Math.Ceiling(area.WidthMm / CellMm);
        _rows = (int)Math.Ceiling(area.HeightMm / CellMm);
        _totals = new double[(_columns + 1) * (_rows + 1)];
        foreach (var figure in figures)
        {
            Add(figure);
        }

        AddUp();
    }

    /// <summary>How much is drawn in the cells that a box touches.</summary>
    public double Fullness(Box box)
    {
        var (left, right) = (Column(box.Left), Column(box.Right + CellMm));
        var (bottom, top) = (Row(box.Bottom), Row(box.Top + CellMm));
        return _totals[Index(right, top)] - _totals[Index(left, top)] - _totals[Index(right, bottom)] + _totals[Index(left, bottom)];
    }

    private int Index(int column, int row) => (row * (_columns + 1)) + column;

    private int Column(double xMm) => Math.Clamp((int)Math.Floor((xMm - _area.Left) / CellMm), 0, _columns);

    private int Row(double yMm) => Math.Clamp((int)Math.Floor((yMm - _area.Bottom) / CellMm), 0, _rows);

    private void Add(Figure figure)
    {
        switch (figure)
        {
            case Stroke stroke:
                for (var i = stroke.IsClosed ? 0 : 1; i < stroke.Points.Length; i++)
                {
                    AddLine(stroke.Points[(i == 0 ? stroke.Points.Length : i) - 1], stroke.Points[i]);
                }

                break;
            case Tint:
                break;
            default:
                AddBox(Figures.BoundsOf(figure));
                break;
        }
    }

    private void AddLine(Point from, Point to)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(from.DistanceMm(to) / CellMm));
        for (var i = 1; i <= steps; i++)
        {
            var point = from.Toward(to, (double)i / steps);
            if (_area.Holds(new(point.X, point.Y, point.X, point.Y)))
            {
                AddCell(Math.Min(Column(point.X), _columns - 1), Math.Min(Row(point.Y), _rows - 1), LineWeight);
            }
        }
    }

    private void AddBox(Box box)
    {
        if (_area.Shared(box).IsEmpty)
        {
            return;
        }

        for (var column = Column(box.Left); column < Math.Min(Column(box.Right) + 1, _columns); column++)
        {
            for (var row = Row(box.Bottom); row < Math.Min(Row(box.Top) + 1, _rows); row++)
            {
                AddCell(column, row, TextWeight);
            }
        }
    }

    private void AddCell(int column, int row, double weight) => _totals[Index(column + 1, row + 1)] += weight;

    private void AddUp()
    {
        for (var row = 1; row <= _rows; row++)
        {
            for (var column = 1; column <= _columns; column++)
            {
                _totals[Index(column, row)] +=
                    _totals[Index(column - 1, row)] + _totals[Index(column, row - 1)] - _totals[Index(column - 1, row - 1)];
            }
        }
    }
}
