namespace CanvasCut.Geometry;

/// <summary>A frame in square cells, each free or taken; a cell is taken when an outline lies in any of it.</summary>
internal sealed class RoomGrid
{
    /// <summary>So little of a cell may be taken by round-off.</summary>
    private const double SlackMm = 1e-6;

    private readonly Box _frame;
    private readonly double _cellMm;
    private readonly bool[][] _taken;
    private readonly int _rows;

    public RoomGrid(Box frame, double cellMm)
    {
        (_frame, _cellMm) = (frame, cellMm);
        _rows = Count(frame.HeightMm);
        _taken = [.. Enumerable.Range(0, Count(frame.WidthMm)).Select(_ => new bool[_rows])];
    }

    private int Columns => _taken.Length;

    /// <summary>Takes every cell that has some of an outline in it.</summary>
    public void Take(Outline outline)
    {
        for (var column = FirstCell(outline.Bounds.Left - _frame.Left); column < EndCell(outline.Bounds.Right - _frame.Left, Columns); column++)
        {
            TakeEdges(outline, column);
            TakeInside(outline, column);
        }
    }

    /// <summary>The largest free rectangle of whole cells that is good; null when there is none.</summary>
    /// <param name="leastMm">Narrower or lower ones are not asked about.</param>
    /// <param name="isGood">Tells whether one is good; asked of fewer than there are.</param>
    /// <remarks>
    /// Row by row: how far each column is free downward makes a skyline, whose widest rectangles a stack of rising
    /// columns gives (the largest rectangle in a histogram).
    /// </remarks>
    public Box? Largest(double leastMm, Func<Box, bool> isGood)
    {
        var least = Math.Max(1, (int)Math.Ceiling((leastMm - SlackMm) / _cellMm));
        var free = new int[Columns + 1];
        var best = default(Box?);
        for (var row = 0; row < _rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                free[column] = _taken[column][row] ? 0 : free[column] + 1;
            }

            foreach (var (from, to, height) in Widest(free).Where(each => each.To - each.From >= least && each.Height >= least))
            {
                var box = BoxOf(from, to, row + 1 - height, row + 1);
                best = (best is null || Area(box) > Area(best.Value) + SlackMm) && isGood(box) ? box : best;
            }
        }

        return best;
    }

    /// <summary>The rectangles under a skyline that can be made neither wider nor higher.</summary>
    private static IEnumerable<(int From, int To, int Height)> Widest(int[] free)
    {
        var rising = new Stack<(int From, int Height)>();
        for (var column = 0; column < free.Length; column++)
        {
            var from = column;
            while (rising.TryPeek(out var last) && last.Height >= free[column])
            {
                (from, var height) = rising.Pop();
                if (height > free[column])
                {
                    yield return (from, column, height);
                }
            }

            rising.Push((from, free[column]));
        }
    }

    private static double Area(Box box) => box.WidthMm * box.HeightMm;

    private Box BoxOf(int left, int right, int bottom, int top) =>
        new Box(left * _cellMm, bottom * _cellMm, right * _cellMm, top * _cellMm).MovedBy(new(_frame.Left, _frame.Bottom));

    private void TakeEdges(Outline outline, int column)
    {
        var strip = BoxOf(column, column + 1, 0, _rows);
        var inner = strip with { Left = strip.Left + SlackMm, Right = strip.Right - SlackMm };
        for (var edge = 0; edge < outline.Count; edge++)
        {
            if (inner.PartOf(outline[edge], outline[edge + 1]) is { } part)
            {
                TakeRows(column, FirstCell(Math.Min(part.From.Y, part.To.Y) - _frame.Bottom), EndCell(Math.Max(part.From.Y, part.To.Y) - _frame.Bottom, _rows));
            }
        }
    }

    /// <summary>Along the column's middle an outline lies between its crossings, two by two.</summary>
    private void TakeInside(Outline outline, int column)
    {
        var x = _frame.Left + ((column + 0.5) * _cellMm);
        var crossings = Enumerable.Range(0, outline.Count)
            .Select(edge => (From: outline[edge], To: outline[edge + 1]))
            .Where(edge => (edge.From.X > x) != (edge.To.X > x))
            .Select(edge => edge.From.Toward(edge.To, (x - edge.From.X) / (edge.To.X - edge.From.X)).Y - _frame.Bottom)
            .Order()
            .ToList();
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            TakeRows(column, FirstCell(crossings[i]), EndCell(crossings[i + 1], _rows));
        }
    }

    private void TakeRows(int column, int first, int end)
    {
        for (var row = first; row < end; row++)
        {
            _taken[column][row] = true;
        }
    }

    private int Count(double lengthMm) => (int)Math.Floor((lengthMm + SlackMm) / _cellMm);

    private int FirstCell(double fromMm) => Math.Max(0, (int)Math.Floor((fromMm + SlackMm) / _cellMm));

    private int EndCell(double toMm, int count) => Math.Min(count, (int)Math.Ceiling((toMm - SlackMm) / _cellMm));
}
