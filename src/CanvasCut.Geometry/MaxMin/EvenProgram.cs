namespace CanvasCut.Geometry;

/// <summary>Finds the place, between bounds, at which the smallest of several linear spares is as large as can be.</summary>
/// <remarks>
/// This is a linear program: the greatest t for which every spare is at least t. It is solved in its dual, which has one row for each
/// unknown and one for t, and a column for each spare and bound: a spare more is a column more, and the basis of before still stands. The
/// multipliers of the dual's rows are the place itself (G. B. Dantzig, Linear Programming and Extensions, 1963, chapters 6 and 9).
/// </remarks>
internal sealed class EvenProgram
{
    private const double Tolerance = 1e-9;

    /// <summary>After so many steps the lowest numbered column enters, by which no basis comes back (Bland 1977).</summary>
    private const int StepsBeforeBland = 200;

    private readonly int _unknowns;
    private readonly List<(double[] Column, double Cost)> _columns = [];

    /// <summary>A program over unknowns between bounds.</summary>
    public EvenProgram(ReadOnlySpan<(double Low, double High)> bounds)
    {
        _unknowns = bounds.Length;
        for (var i = 0; i < _unknowns; i++)
        {
            _columns.Add((Bound(i, -1), -bounds[i].Low));
            _columns.Add((Bound(i, 1), bounds[i].High));
        }
    }

    /// <summary>Adds a spare and tells the number of its column.</summary>
    public int Add(LinearSpare spare)
    {
        var column = new double[_unknowns + 1];
        foreach (var (unknown, factor) in spare.Terms)
        {
            column[unknown] -= factor;
        }

        column[_unknowns] = 1;
        _columns.Add((column, spare.Constant));
        return _columns.Count - 1;
    }

    /// <summary>The best place with some of the spares, the first of which may be any.</summary>
    /// <param name="spares">The numbers of their columns; at least one.</param>
    /// <param name="place">Where to write it.</param>
    /// <param name="binding">Where to write the columns that keep it from being better; may be null.</param>
    /// <returns>The smallest spare there.</returns>
    public double Solve(IReadOnlyList<int> spares, Span<double> place, List<int>? binding = null)
    {
        var (rows, basis) = (_unknowns + 1, StartingBasis(spares[0]));
        var (inverse, levels) = (StartingInverse(spares[0], basis), StartingLevels(spares[0]));
        var multipliers = new double[rows];
        for (var step = 0; ; step++)
        {
            Multiply(basis, inverse, multipliers);
            var entering = Entering(spares, basis, multipliers, step > StepsBeforeBland);
            if (entering < 0)
            {
                break;
            }

            Pivot(entering, basis, inverse, levels);
        }

        multipliers.AsSpan(0, _unknowns).CopyTo(place);
        binding?.AddRange(basis.Where((column, row) => column >= 2 * _unknowns && levels[row] > Tolerance));
        return multipliers[_unknowns];
    }

    private double[] Bound(int unknown, double sign)
    {
        var column = new double[_unknowns + 1];
        column[unknown] = sign;
        return column;
    }

    /// <summary>One spare, and for each unknown the bound that it drives against.</summary>
    private int[] StartingBasis(int spare)
    {
        var basis = new int[_unknowns + 1];
        for (var i = 0; i < _unknowns; i++)
        {
            basis[i] = (2 * i) + (_columns[spare].Column[i] <= 0 ? 1 : 0);
        }

        basis[_unknowns] = spare;
        return basis;
    }

    private double[] StartingLevels(int spare)
    {
        var levels = new double[_unknowns + 1];
        for (var i = 0; i < _unknowns; i++)
        {
            levels[i] = Math.Abs(_columns[spare].Column[i]);
        }

        levels[_unknowns] = 1;
        return levels;
    }

    private double[][] StartingInverse(int spare, int[] basis)
    {
        var rows = _unknowns + 1;
        var inverse = Enumerable.Range(0, rows).Select(_ => new double[rows]).ToArray();
        for (var i = 0; i < _unknowns; i++)
        {
            var sign = basis[i] % 2 == 1 ? 1 : -1;
            inverse[i][i] = sign;
            inverse[i][_unknowns] = -sign * _columns[spare].Column[i];
        }

        inverse[_unknowns][_unknowns] = 1;
        return inverse;
    }

    private void Multiply(int[] basis, double[][] inverse, double[] multipliers)
    {
        for (var j = 0; j < multipliers.Length; j++)
        {
            multipliers[j] = 0;
            for (var i = 0; i < basis.Length; i++)
            {
                multipliers[j] += _columns[basis[i]].Cost * inverse[i][j];
            }
        }
    }

    /// <summary>The column that would better the dual most: the spare or bound that is broken most; -1 when none is.</summary>
    private int Entering(IReadOnlyList<int> spares, int[] basis, double[] multipliers, bool isBland)
    {
        var (best, worst) = (-1, -Tolerance);
        for (var i = 0; i < (2 * _unknowns) + spares.Count; i++)
        {
            var column = i < 2 * _unknowns ? i : spares[i - (2 * _unknowns)];
            var reduced = Reduced(column, multipliers);
            if (reduced < worst && Array.IndexOf(basis, column) < 0)
            {
                (best, worst) = (column, reduced);
                if (isBland)
                {
                    break;
                }
            }
        }

        return best;
    }

    private double Reduced(int column, double[] multipliers)
    {
        var (entries, cost) = _columns[column];
        for (var j = 0; j < entries.Length; j++)
        {
            cost -= entries[j] * multipliers[j];
        }

        return cost;
    }

    private void Pivot(int entering, int[] basis, double[][] inverse, double[] levels)
    {
        var rows = basis.Length;
        var direction = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            for (var j = 0; j < rows; j++)
            {
                direction[i] += inverse[i][j] * _columns[entering].Column[j];
            }
        }

        var leaving = Leaving(direction, levels, basis);
        var amount = levels[leaving] / direction[leaving];
        for (var i = 0; i < rows; i++)
        {
            levels[i] = i == leaving ? amount : Math.Max(0, levels[i] - (amount * direction[i]));
        }

        for (var j = 0; j < rows; j++)
        {
            inverse[leaving][j] /= direction[leaving];
        }

        for (var i = 0; i < rows; i++)
        {
            for (var j = 0; i != leaving && j < rows; j++)
            {
                inverse[i][j] -= direction[i] * inverse[leaving][j];
            }
        }

        basis[leaving] = entering;
    }

    /// <summary>The row whose level first falls to nought; of equals the one with the lowest column.</summary>
    private static int Leaving(double[] direction, double[] levels, int[] basis)
    {
        var (leaving, least) = (-1, double.PositiveInfinity);
        for (var i = 0; i < direction.Length; i++)
        {
            if (direction[i] <= Tolerance)
            {
                continue;
            }

            var ratio = levels[i] / direction[i];
            if (ratio < least - Tolerance || (ratio <= least + Tolerance && leaving >= 0 && basis[i] < basis[leaving]))
            {
                (leaving, least) = (i, Math.Min(ratio, least));
            }
        }

        return leaving >= 0 ? leaving : throw new InvalidOperationException("Unknowns between bounds have no place without end.");
    }
}
