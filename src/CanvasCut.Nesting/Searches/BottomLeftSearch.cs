using System.Collections.Immutable;
using System.Diagnostics;

namespace CanvasCut.Nesting;

/// <summary>
/// Places piece after piece as far left, then as low, as it goes, in many orders, and keeps the shortest layout.
/// </summary>
/// <remarks>
/// A piece that is not convex is placed by its convex hull. A few pieces are tried in every order and turn; more are
/// tried largest first and then in a fixed number of varied orders, fewer the more work each is. The bottom-left rule:
/// B. Baker, E. Coffman, R. Rivest, "Orthogonal packings in two dimensions", SIAM Journal on Computing 9 (1980).
/// </remarks>
public sealed class BottomLeftSearch : INestingSearch
{
    /// <summary>Up to so many orders all are tried.</summary>
    private const int FewOrders = 500;

    /// <summary>How many varied orders are tried when there is work for as many.</summary>
    private const int UsualVaried = 4000;

    /// <summary>So many varied orders are tried however much work each is.</summary>
    private const int LeastVaried = 20;

    /// <summary>About how many meetings of an edge with a zone's edge a search may take: less than a tenth of a second once warm.</summary>
    private const double Work = 4e7;

    /// <summary>One in so many varied orders is mixed up altogether.</summary>
    private const int ShuffleEvery = 20;

    private readonly int _mostVaried;

    /// <summary>Makes a search.</summary>
    /// <param name="mostVaried">How many varied orders are tried at most; 0 or more. Fewer take less time.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public BottomLeftSearch(int mostVaried = UsualVaried)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mostVaried);
        _mostVaried = mostVaried;
    }

    /// <inheritdoc/>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (!NestingProblems.Of(task).IsEmpty)
        {
            return null;
        }

        var run = new Run(new PieceCatalog(task));
        run.Go(_mostVaried, control);
        return LayoutCheck.Faultless(run.Best.ToLayout());
    }

    private sealed class Run
    {
        private readonly PieceCatalog _catalog;
        private readonly double _enoughMm;
        private readonly Stopwatch _clock = Stopwatch.StartNew();
        private ImmutableArray<PieceChoice> _order;
        private double _belowMm;

        public Run(PieceCatalog catalog)
        {
            _catalog = catalog;
            _enoughMm = LowerBound.LengthMm(catalog.Task) + FreePlace.SameMm;
            _order = Orders.LargestFirst(catalog).First();
            Best = PlacedRow.Of(catalog, _order, double.PositiveInfinity)!;
            _belowMm = Best.LengthMm + FreePlace.SameMm;
        }

        public PlacedRow Best { get; private set; }

        private bool IsDone(NestingControl control) =>
            Best.LengthMm <= _enoughMm || control.Cancellation.IsCancellationRequested || _clock.Elapsed >= control.Budget.Time;

        public void Go(int mostVaried, NestingControl control)
        {
            TryAll(Orders.LargestFirst(_catalog).Skip(1), control);
            if (Orders.CountOfEvery(_catalog) <= FewOrders)
            {
                TryAll(Orders.Every(_catalog), control);
                return;
            }

            var dice = new Dice(seed: 1);
            for (var left = Math.Min(mostVaried, OrdersForWork()); left > 0 && !IsDone(control); left--)
            {
                Try(left % ShuffleEvery == 0 ? Orders.Shuffled(_order, dice) : Orders.Varied(_order, _catalog, dice));
            }
        }

        private void TryAll(IEnumerable<ImmutableArray<PieceChoice>> orders, NestingControl control)
        {
            foreach (var order in orders.TakeWhile(_ => !IsDone(control)))
            {
                Try(order);
            }
        }

        /// <summary>An order as good as the best takes its place, so that varying it leads somewhere else.</summary>
        private void Try(ImmutableArray<PieceChoice> order)
        {
            if (PlacedRow.Of(_catalog, order, _belowMm) is { } row)
            {
                (Best, _order) = (row, order);
                _belowMm = Math.Min(_belowMm, row.LengthMm + FreePlace.SameMm);
            }
        }

        private int OrdersForWork()
        {
            var zoneEdges = _order.Average(choice => 2.0 * _catalog.Turns[choice.Item].Sum(piece => piece.Hull.Count));
            var work = zoneEdges * zoneEdges * Math.Pow(_order.Length, 3) / 3;
            return (int)Math.Clamp(Work / work, LeastVaried, int.MaxValue);
        }
    }
}
