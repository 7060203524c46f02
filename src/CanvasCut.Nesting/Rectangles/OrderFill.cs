namespace CanvasCut.Nesting.Rectangles;

/// <summary>Lays rectangles on a strip, always on the least filled step, the one that suits it best, the first in an order among equals.</summary>
/// <remarks>
/// A piece suits a step the better the fewer corners it leaves: one as wide as the step and flush with what lies beside it
/// leaves none. After S. Leung, D. Zhang, "A fast layer-based heuristic for non-guillotine strip packing", Expert Systems
/// with Applications 38 (2011), and L. Wei and others, "A skyline heuristic for the 2D rectangular packing and strip packing
/// problems", European Journal of Operational Research 215 (2011).
/// </remarks>
internal sealed class OrderFill
{
    /// <summary>How well a piece suits that leaves no corner.</summary>
    private const int Suits = 4;

    private readonly Skyline _skyline;
    private readonly int[] _next;
    private readonly long[] _along;
    private readonly long[] _across;
    private readonly int[] _ways;

    public OrderFill(RectangleTask task)
    {
        _skyline = new(task.Width, task.Pieces.Length);
        _next = new int[task.Pieces.Length + 1];
        (_along, _across, _ways) = (new long[2 * task.Pieces.Length], new long[2 * task.Pieces.Length], new int[task.Pieces.Length]);
        for (var piece = 0; piece < task.Pieces.Length; piece++)
        {
            var ways = task.Ways[task.Pieces[piece]];
            _ways[piece] = ways.Length;
            for (var way = 0; way < ways.Length; way++)
            {
                (_along[(2 * piece) + way], _across[(2 * piece) + way]) = (ways[way].Along, ways[way].Across);
            }
        }

        (Way, Along, Across) = (new int[_ways.Length], new long[_ways.Length], new long[_ways.Length]);
    }

    /// <summary>How many places were tried.</summary>
    public long Steps { get; private set; }

    /// <summary>In which way each piece was laid.</summary>
    public int[] Way { get; }

    /// <summary>Where each piece was laid along the strip.</summary>
    public long[] Along { get; }

    /// <summary>Where each piece was laid across the strip.</summary>
    public long[] Across { get; }

    /// <summary>How far along the strip the pieces reach.</summary>
    public long Length { get; private set; }

    /// <summary>The area of the pieces laid.</summary>
    public double Filled { get; private set; }

    /// <summary>Lays all pieces.</summary>
    /// <param name="order">The pieces, in the order in which they are looked at.</param>
    public void Lay(ReadOnlySpan<int> order)
    {
        Start(order);
        for (var left = order.Length; left > 0;)
        {
            left -= LayOne(order, long.MaxValue) ? 1 : 0;
        }
    }

    /// <summary>Lays pieces only where they stay below a limit.</summary>
    /// <returns>Whether they all do.</returns>
    public bool LayBelow(ReadOnlySpan<int> order, long limit)
    {
        Start(order);
        var left = order.Length;
        while (left > 0 && _skyline.Reach < limit)
        {
            left -= LayOne(order, limit) ? 1 : 0;
        }

        return left == 0;
    }

    private void Start(ReadOnlySpan<int> order)
    {
        _skyline.Clear();
        (Length, Filled) = (0, 0);
        for (var i = 0; i <= order.Length; i++)
        {
            _next[i] = i;
        }
    }

    private bool LayOne(ReadOnlySpan<int> order, long limit)
    {
        Steps++;
        var (before, piece, way, isAtEnd) = Best(order, limit);
        if (piece < 0)
        {
            Raise(limit);
            return false;
        }

        var (along, across) = (_along[(2 * piece) + way], _across[(2 * piece) + way]);
        (Way[piece], Along[piece]) = (way, _skyline.Reach);
        Across[piece] = _skyline.From + (isAtEnd ? _skyline.Room - across : 0);
        Length = Math.Max(Length, _skyline.Reach + along);
        Filled += (double)along * across;
        _next[before] = _next[_next[before] + 1];
        _skyline.Lay(along, across, isAtEnd);
        return true;
    }

    private void Raise(long limit)
    {
        if (_skyline.WallBefore == long.MaxValue && _skyline.WallAfter == long.MaxValue)
        {
            _skyline.Lay(limit - _skyline.Reach, _skyline.Room, isAtEnd: false);
        }
        else
        {
            _skyline.Raise();
        }
    }

    /// <summary>The links run from a place in the order to the next place whose piece is not laid yet.</summary>
    private (int Before, int Piece, int Way, bool IsAtEnd) Best(ReadOnlySpan<int> order, long limit)
    {
        var (room, most) = (_skyline.Room, limit == long.MaxValue ? long.MaxValue : limit - _skyline.Reach);
        var (wallBefore, wallAfter) = (Math.Min(_skyline.WallBefore, most), Math.Min(_skyline.WallAfter, most));
        var (best, bestBefore, bestPiece, bestWay) = (-1, 0, -1, 0);
        for (int before = 0, at = _next[0]; at < order.Length && best < Suits; before = at + 1, at = _next[before])
        {
            var piece = order[at];
            for (var way = 0; way < _ways[piece]; way++)
            {
                var (along, across) = (_along[(2 * piece) + way], _across[(2 * piece) + way]);
                if (across <= room && along <= most && Suit(along, across == room, wallBefore, wallAfter) is var suit && suit > best)
                {
                    (best, bestBefore, bestPiece, bestWay) = (suit, before, piece, way);
                }
            }
        }

        return (bestBefore, bestPiece, bestWay, bestPiece >= 0 && IsAtEnd(_along[(2 * bestPiece) + bestWay], wallBefore, wallAfter));
    }

    private static int Suit(long along, bool isAsWide, long wallBefore, long wallAfter)
    {
        var isFlush = along == wallBefore || along == wallAfter;
        return isAsWide ? isFlush ? Suits : along < Math.Min(wallBefore, wallAfter) ? 3 : 2 : isFlush ? 1 : 0;
    }

    private static bool IsAtEnd(long along, long wallBefore, long wallAfter) =>
        along != wallBefore && (along == wallAfter || wallAfter > wallBefore);
}
