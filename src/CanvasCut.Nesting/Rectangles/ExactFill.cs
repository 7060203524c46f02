using System.Collections.Immutable;

namespace CanvasCut.Nesting.Rectangles;

/// <summary>Tries every way to lay rectangles below a length that could matter.</summary>
/// <remarks>
/// <para>
/// Push every piece of a layout toward the strip's start and then to one side, as long as any moves. Go through it from the
/// least filled step of the skyline, the first of several. Either a piece lies at the step's start; or the first piece that
/// stands on the step lies against one that overhangs from the wall before it, so that between them nothing lies up to that
/// wall's height, and the piece is taller than the wall, or it could be pushed under; or nothing stands on the step, and it
/// is empty up to the lower wall. What is empty so may not become more than strip less pieces.
/// </para>
/// <para>
/// Places across the strip are sums of widths, as N. Christofides and C. Whitlock, Operations Research 25 (1977), have
/// shown. The scheme is related to that of M. Kenmochi and others, "Exact algorithms for the two-dimensional strip packing problem
/// with and without rotations", European Journal of Operational Research 198 (2009).
/// </para>
/// </remarks>
internal sealed class ExactFill
{
    /// <summary>What a sum of areas may be wrong by; more than a double loses.</summary>
    private const double RoundOff = 1e-12;

    private readonly RectangleTask _task;
    private readonly long _limit;
    private readonly long _width;
    private readonly double _roundOff;
    private readonly long _mostSteps;
    private readonly ImmutableArray<long> _places;
    private readonly int[] _items;
    private readonly int[] _left;
    private readonly List<(int Item, int Way, long Along, long Across)> _laid = [];
    private readonly HashSet<UInt128> _hopeless = [];
    private readonly List<Skyline> _skylines = [];
    private long _steps;

    private ExactFill(RectangleTask task, long limit, long mostSteps, ImmutableArray<long> places)
    {
        (_task, _mostSteps, _places) = (task, mostSteps, places);
        _width = places[^1];
        _limit = limit;
        _roundOff = 0.5 + ((double)_limit * _width * RoundOff);
        _items = [.. Enumerable.Range(0, task.Ways.Length).OrderByDescending(item => task.Ways[item][0].Along * (double)task.Ways[item][0].Across)];
        _left = [.. task.Task.Items.Select(item => item.Demand)];
    }

    /// <summary>Looks for a layout that does not reach beyond a limit.</summary>
    /// <param name="task">The rectangles.</param>
    /// <param name="limit">How far they may reach.</param>
    /// <param name="mostSteps">How many pieces may be laid on trial before it is given up.</param>
    /// <param name="layout">The layout, if there is one.</param>
    public static LengthAnswer Try(RectangleTask task, long limit, long mostSteps, out RectangleLayout? layout)
    {
        layout = null;
        if (Sums.Of(task, way => way.Across, task.Width) is not { } places || Sums.Of(task, way => way.Along, limit) is not { } ends)
        {
            return LengthAnswer.Unknown;
        }

        var fill = new ExactFill(task, ends[^1], mostSteps, places);
        var answer = fill.Lay(0, ((double)fill._limit * fill._width) - task.Area);
        layout = answer == LengthAnswer.Possible ? fill.Found() : null;
        return answer;
    }

    private LengthAnswer Lay(int depth, double waste)
    {
        if (_laid.Count == _task.Pieces.Length)
        {
            return LengthAnswer.Possible;
        }

        if (waste < -_roundOff || ++_steps > _mostSteps)
        {
            return waste < -_roundOff ? LengthAnswer.Impossible : LengthAnswer.Unknown;
        }

        var skyline = At(depth);
        var key = skyline.Key(_left);
        if (_hopeless.Contains(key))
        {
            return LengthAnswer.Impossible;
        }

        var answer = LengthAnswer.Impossible;
        for (var i = 0; i < _items.Length && answer == LengthAnswer.Impossible; i++)
        {
            answer = _left[_items[i]] > 0 ? Laid(depth, skyline, _items[i], waste) : answer;
        }

        answer = answer == LengthAnswer.Impossible ? Raised(depth, skyline, waste) : answer;
        if (answer == LengthAnswer.Impossible)
        {
            _hopeless.Add(key);
        }

        return answer;
    }

    private Skyline At(int depth)
    {
        while (_skylines.Count <= depth + 1)
        {
            _skylines.Add(new(_width, _task.Pieces.Length));
        }

        return _skylines[depth];
    }

    private LengthAnswer Raised(int depth, Skyline skyline, double waste)
    {
        var wall = Math.Min(skyline.WallBefore, skyline.WallAfter);
        if (wall == long.MaxValue)
        {
            return LengthAnswer.Impossible;
        }

        var next = _skylines[depth + 1];
        next.CopyFrom(skyline);
        next.Raise();
        return Lay(depth + 1, waste - ((double)wall * skyline.Room));
    }

    private LengthAnswer Laid(int depth, Skyline skyline, int item, double waste)
    {
        var answer = LengthAnswer.Impossible;
        var ways = _task.Ways[item];
        for (var way = 0; way < ways.Length && answer == LengthAnswer.Impossible; way++)
        {
            var (along, across) = (ways[way].Along, ways[way].Across);
            if (skyline.Reach + along > _limit || across > skyline.Room)
            {
                continue;
            }

            answer = Laid(depth, (item, way), 0, waste);
            if (skyline.WallBefore < along)
            {
                answer = Shifted(depth, skyline, (item, way), waste, answer);
            }
        }

        return answer;
    }

    /// <summary>Not at the step's start but where another piece may overhang it.</summary>
    private LengthAnswer Shifted(int depth, Skyline skyline, (int Item, int Way) piece, double waste, LengthAnswer answer)
    {
        var (from, to) = (skyline.From, skyline.From + skyline.Room - _task.Ways[piece.Item][piece.Way].Across);
        for (var i = 0; i < _places.Length && _places[i] <= to && answer == LengthAnswer.Impossible; i++)
        {
            var empty = (double)(_places[i] - from) * skyline.WallBefore;
            if (_places[i] > from && empty <= waste + _roundOff)
            {
                answer = Laid(depth, piece, _places[i] - from, waste - empty);
            }
        }

        return answer;
    }

    private LengthAnswer Laid(int depth, (int Item, int Way) piece, long shift, double waste)
    {
        var (way, next) = (_task.Ways[piece.Item][piece.Way], _skylines[depth + 1]);
        next.CopyFrom(_skylines[depth]);
        if (shift > 0)
        {
            next.Lay(next.WallBefore, shift, isAtEnd: false);
        }

        _laid.Add((piece.Item, piece.Way, next.Reach, next.From));
        _left[piece.Item]--;
        next.Lay(way.Along, way.Across, isAtEnd: false);
        var answer = Lay(depth + 1, waste);
        if (answer != LengthAnswer.Possible)
        {
            _laid.RemoveAt(_laid.Count - 1);
            _left[piece.Item]++;
        }

        return answer;
    }

    private RectangleLayout Found()
    {
        var laid = _laid.OrderBy(piece => piece.Item).ToList();
        var length = laid.Max(piece => piece.Along + _task.Ways[piece.Item][piece.Way].Along);
        return new(length, [.. Enumerable.Range(0, laid.Count)], [.. laid.Select(piece => piece.Way)], [.. laid.Select(piece => piece.Along)], [.. laid.Select(piece => piece.Across)]);
    }
}
