namespace CanvasCut.Nesting.Separation;

/// <summary>Drives the overlap out of an arrangement, pass by pass.</summary>
internal sealed class Separator
{
    private const double WorthWhile = 0.98;

    private readonly PairLoads _loads;
    private readonly PlaceFinder _finder;
    private readonly PlaceScore _score;
    private readonly Dice _dice;
    private readonly int[] _order;

    public Separator(ShapeTable table, Dice dice)
    {
        (At, _dice) = (new(table), dice);
        Best = new(table);
        _loads = new(table, At);
        _score = new(table, At, _loads);
        _finder = new(table, At, _score, dice);
        _order = new int[At.Count];
    }

    /// <summary>The arrangement worked on.</summary>
    public Arrangement At { get; }

    /// <summary>The arrangement with the least overlap since the start.</summary>
    public Arrangement Best { get; }

    /// <summary>The overlap in <see cref="Best"/>; 0 when the pieces are apart.</summary>
    public double BestTotal { get; private set; }

    /// <summary>How many places were tried.</summary>
    public long Steps => _score.Steps;

    /// <summary>Works until the pieces are apart or hope is lost; gives the turn away after every pass.</summary>
    /// <param name="patience">How many passes without gain end a round.</param>
    /// <param name="rounds">How many rounds without much gain are the end.</param>
    public IEnumerable<double> Passes(int patience, int rounds)
    {
        Start();
        for (var without = 0; without < rounds && BestTotal > 0; without++)
        {
            var before = BestTotal;
            for (var idle = 0; idle < patience && BestTotal > 0; idle++)
            {
                var worthwhile = BestTotal * WorthWhile;
                Pass();
                idle = BestTotal < worthwhile ? -1 : idle;
                yield return BestTotal;
            }

            without = BestTotal < before * WorthWhile ? -1 : without;
            At.CopyFrom(Best);
            _loads.MeasureAll(At);
        }
    }

    private void Start()
    {
        _loads.Reset();
        _loads.MeasureAll(At);
        BestTotal = _loads.Sum(At.Count);
        Best.CopyFrom(At);
    }

    private void Pass()
    {
        var count = Overlapping();
        for (var i = 0; i < count; i++)
        {
            var j = i + _dice.Below(count - i);
            (_order[i], _order[j]) = (_order[j], _order[i]);
            Move(_order[i]);
        }

        var total = _loads.Sum(At.Count);
        if (total < BestTotal)
        {
            BestTotal = total;
            Best.CopyFrom(At);
        }

        _loads.Grow();
    }

    private int Overlapping()
    {
        var count = 0;
        for (var piece = 0; piece < At.Count; piece++)
        {
            if (_loads.Of(piece) > 0)
            {
                _order[count++] = piece;
            }
        }

        return count;
    }

    private void Move(int piece)
    {
        var now = _loads.Of(piece);
        if (now > 0 && _finder.Best(piece) is var place && place.Score < now)
        {
            At.Put(piece, place.Shape, place.X, place.Y);
            _loads.Measure(At, piece);
        }
    }
}
