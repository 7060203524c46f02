namespace CanvasCut.Nesting.Rectangles;

/// <summary>One of several that look for a good order of the rectangles, each on its own from its own seed.</summary>
internal sealed class OrderSearch
{
    private readonly RectangleTask _task;
    private readonly OrderFill _fill;
    private readonly Dice _dice;
    private readonly int[] _order;
    private double _filled;
    private long _limit;

    public OrderSearch(RectangleTask task, int[] order, ulong seed)
    {
        (_task, _fill, _dice, _order) = (task, new(task), new(seed), [.. order]);
        Best = Found(order);
    }

    /// <summary>The shortest layout.</summary>
    public RectangleLayout Best { get; private set; }

    /// <summary>How many places were tried.</summary>
    public long Steps => _fill.Steps;

    /// <summary>Takes over what another found, if it is shorter.</summary>
    public void Adopt(RectangleLayout other) => Best = other.Length < Best.Length ? other : Best;

    /// <summary>Tries to stay below a limit with orders that differ a little from one another.</summary>
    /// <param name="limit">The length wanted.</param>
    /// <param name="from">The order to begin with.</param>
    public void Begin(long limit, ReadOnlySpan<int> from)
    {
        from.CopyTo(_order);
        _limit = limit;
        _fill.LayBelow(_order, limit);
        _filled = _fill.Filled;
    }

    /// <summary>Goes on for at least so many steps, or until the limit is kept.</summary>
    public void Advance(long steps)
    {
        for (var end = Steps + steps; Steps < end && Best.Length > _limit;)
        {
            var (i, j) = (_dice.Below(_order.Length), _dice.Below(_order.Length));
            if (_task.Pieces[_order[i]] != _task.Pieces[_order[j]])
            {
                Exchange(i, j);
            }
        }
    }

    private void Exchange(int i, int j)
    {
        (_order[i], _order[j]) = (_order[j], _order[i]);
        _fill.LayBelow(_order, _limit);
        if (_fill.Filled < _filled)
        {
            (_order[i], _order[j]) = (_order[j], _order[i]);
        }
        else if (_fill.Filled > _filled)
        {
            _filled = _fill.Filled;
            var found = Found(_order);
            Best = found.Length < Best.Length ? found : Best;
        }
    }

    private RectangleLayout Found(ReadOnlySpan<int> order)
    {
        _fill.Lay(order);
        return new(_fill.Length, [.. order], [.. _fill.Way], [.. _fill.Along], [.. _fill.Across]);
    }
}
