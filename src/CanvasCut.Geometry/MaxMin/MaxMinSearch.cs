using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>The place found.</summary>
/// <param name="Place">A value for every unknown.</param>
/// <param name="Spare">The smallest spare there; negative when all cannot be kept at once.</param>
/// <param name="Bound">No place has a larger smallest spare than this.</param>
public sealed record MaxMinPlace(ImmutableArray<double> Place, double Spare, double Bound);

/// <summary>Finds the place at which the smallest of many spares is as large as can be, each of which may be had in several ways.</summary>
/// <remarks>
/// Branch and bound: with some of the ways settled, the best place is a linear program, and none that follows from it is better. The choice that
/// falls short most is settled next, each way in turn, and the most promising first (A. H. Land and A. G. Doig, Econometrica 28, 1960).
/// </remarks>
public static class MaxMinSearch
{
    /// <summary>Places whose smallest spares differ by less are equal.</summary>
    private const double EqualMm = 0.01;

    /// <summary>The best place, or the best found within a number of steps; the same every time.</summary>
    /// <param name="bounds">From and to for each unknown.</param>
    /// <param name="choices">What must be kept; at least one.</param>
    /// <param name="steps">So many linear programs are solved at most.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static MaxMinPlace Best(ReadOnlySpan<(double Low, double High)> bounds, IReadOnlyList<SpareChoice> choices, int steps = 20_000, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentOutOfRangeException.ThrowIfZero(choices.Count);
        return new Run(bounds, choices).Best(steps, cancel);
    }

    /// <summary>One search.</summary>
    private sealed class Run
    {
        private readonly EvenProgram _program;
        private readonly IReadOnlyList<SpareChoice> _choices;
        private readonly int[][] _columns;
        private readonly int _unknowns;
        private readonly PriorityQueue<(ImmutableList<int> Settled, double[] Place, double Bound), (double, int)> _open = new();
        private double[] _best;
        private double _bestSpare = double.NegativeInfinity;
        private int _solved;

        public Run(ReadOnlySpan<(double Low, double High)> bounds, IReadOnlyList<SpareChoice> choices)
        {
            (_unknowns, _program, _choices) = (bounds.Length, new(bounds), choices);
            _columns = [.. choices.Select(choice => choice.Ways.Select(_program.Add).ToArray())];
            _best = new double[bounds.Length];
        }

        public MaxMinPlace Best(int steps, CancellationToken cancel)
        {
            var settled = _columns.Where(ways => ways.Length == 1).Select(ways => ways[0]).ToImmutableList();
            Open(settled.IsEmpty ? null : settled, []);
            while (_open.TryDequeue(out var node, out _))
            {
                cancel.ThrowIfCancellationRequested();
                if (node.Bound <= _bestSpare + EqualMm || _solved >= steps)
                {
                    return Found(Math.Max(node.Bound, _bestSpare));
                }

                var worst = WorstAt(node.Place);
                foreach (var way in _columns[worst.Choice])
                {
                    Open(node.Settled.Add(way), node.Place);
                }
            }

            return Found(_bestSpare);
        }

        /// <summary>Solves what is settled, and keeps it for branching when something better may follow from it.</summary>
        private void Open(ImmutableList<int>? settled, double[] from)
        {
            if (settled is null)
            {
                // Nothing has one way only: each way of the first choice is a beginning.
                foreach (var way in _columns[0])
                {
                    Open([way], from);
                }

                return;
            }

            var place = new double[_unknowns];
            var bound = _program.Solve(settled, place);
            _solved++;
            var (_, spare) = WorstAt(place);
            if (spare > _bestSpare)
            {
                (_best, _bestSpare) = (place, spare);
            }

            if (bound > _bestSpare + EqualMm)
            {
                _open.Enqueue((settled, place, bound), (-bound, _solved));
            }
        }

        private (int Choice, double Spare) WorstAt(double[] place)
        {
            var worst = (Choice: 0, Spare: double.PositiveInfinity);
            for (var i = 0; i < _choices.Count; i++)
            {
                var spare = _choices[i].At(place);
                if (spare < worst.Spare)
                {
                    worst = (i, spare);
                }
            }

            return worst;
        }

        private MaxMinPlace Found(double bound) => new([.. _best], _bestSpare, bound);
    }
}
