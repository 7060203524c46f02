namespace CanvasCut.Nesting.Separation;

/// <summary>One of several that shorten the strip again and again, each on its own from its own seed.</summary>
internal sealed class Worker
{
    /// <summary>By how much the strip is shortened at first and at last.</summary>
    private const double FirstStep = 0.02;

    /// <inheritdoc cref="FirstStep"/>
    private const double FineStep = 0.001;

    /// <summary>The steps of the last stage, from the longest to the shortest.</summary>
    private const double LongestSqueeze = 0.0005;

    /// <inheritdoc cref="LongestSqueeze"/>
    private const double ShortestSqueeze = 0.00001;

    private readonly ShapeTable _table;
    private readonly Dice _dice;
    private readonly Separator _separator;
    private readonly IEnumerator<double> _run;
    private readonly double _boundMm;
    private double _step = FirstStep;
    private double? _squeeze;
    private bool _isOutdated;

    public Worker(ShapeTable table, Arrangement start, double boundMm, ulong seed)
    {
        (_table, Best, _boundMm) = (table, start.Copy(), boundMm);
        _dice = new(seed);
        _separator = new(table, _dice);
        _run = Run().GetEnumerator();
    }

    /// <summary>The shortest arrangement without overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>How many places were tried.</summary>
    public long Steps => _separator.Steps;

    private bool IsDone => Best.LengthMm <= _boundMm + FreePlace.SameMm;

    /// <summary>Goes on for at least so many steps.</summary>
    public void Advance(long steps)
    {
        for (var end = Steps + steps; Steps < end && !IsDone;)
        {
            _run.MoveNext();
        }
    }

    /// <summary>Takes over what another found, if it is shorter.</summary>
    public void Adopt(Arrangement other)
    {
        if (other.LengthMm < Best.LengthMm)
        {
            Best.CopyFrom(other);
            _isOutdated |= _separator.At.LengthMm >= other.LengthMm - FreePlace.SameMm;
        }
    }

    /// <summary>Enters the last stage, or goes on in it.</summary>
    /// <param name="part">How much of it is over, from 0 to 1.</param>
    public void Squeeze(double part)
    {
        _isOutdated |= _squeeze is null;
        _squeeze = LongestSqueeze * Math.Pow(ShortestSqueeze / LongestSqueeze, part);
    }

    private IEnumerable<double> Run()
    {
        while (true)
        {
            _isOutdated = false;
            foreach (var total in _squeeze is { } part ? Once(part, 100, 2) : Explored())
            {
                yield return total;
                if (_isOutdated)
                {
                    break;
                }
            }

            if (_separator.BestTotal <= 0 && !_isOutdated)
            {
                Accept();
            }

            yield return 0;
        }
    }

    private IEnumerable<double> Explored()
    {
        foreach (var total in Once(_step, 200, 3))
        {
            yield return total;
        }

        if (_step > FineStep)
        {
            _step = _separator.BestTotal > 0 ? Math.Max(_step / 2, FineStep) : _step;
            yield break;
        }

        var pool = new FailedPool(_table, _dice);
        while (_separator.BestTotal > 0)
        {
            pool.Add(_separator.BestTotal, _separator.Best);
            pool.Draw(_separator.At);
            foreach (var total in _separator.Passes(200, 3))
            {
                yield return total;
            }
        }
    }

    private IEnumerable<double> Once(double step, int patience, int rounds)
    {
        var byMm = Math.Min(Best.LengthMm * step, Best.LengthMm - _boundMm);
        _separator.At.CopyFrom(Best);
        _separator.At.Shorten(byMm, _dice.Part() * Best.LengthMm);
        return _separator.Passes(patience, rounds);
    }

    private void Accept()
    {
        var found = _separator.Best.Copy();
        Slide.Apply(_table, found);
        found.LengthMm = found.ReachMm;
        if (found.LengthMm < Best.LengthMm)
        {
            Best.CopyFrom(found);
        }
    }
}
