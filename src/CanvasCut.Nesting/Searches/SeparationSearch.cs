using System.Collections.Immutable;
using System.Diagnostics;
using CanvasCut.Nesting.Separation;

namespace CanvasCut.Nesting;

/// <summary>
/// Shortens the strip of a layout step by step, lets the pieces overlap, and drives the overlap out again.
/// </summary>
/// <remarks>
/// Pieces are placed by their true shape, concave or not; one with many corners by an outline that is larger by a
/// thousandth at most. Two workers search at the same time and share what they find after fixed numbers of steps, so
/// that a limit of steps gives the same layout every time. The scheme of separating a layout that is a little too short:
/// J. Egeblad, B. Nielsen, A. Odgaard, European Journal of Operational Research 183 (2007); S. Umetani and others,
/// International Transactions in Operational Research 16 (2009); J. Gardeyn, G. Vanden Berghe, T. Wauters, arXiv 2509.13329
/// (2025), whose stages it follows. The documentation puts its constants beside those of that paper.
/// </remarks>
public sealed class SeparationSearch : INestingSearch
{
    private const int Workers = 2;

    /// <summary>How many steps a worker makes before what was found is shared; a few hundredths of a second.</summary>
    private const long RoundSteps = 50_000;

    /// <summary>A short search has so many rounds all the same.</summary>
    private const long LeastRounds = 20;

    /// <summary>The part of a search after which the strip is shortened by ever smaller steps alone.</summary>
    private const double SqueezeFrom = 0.8;

    /// <summary>The part of a limited time that the first layout may take.</summary>
    private const double StartPart = 0.1;

    /// <inheritdoc/>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (control.Budget.Time == TimeSpan.MaxValue)
        {
            return new BottomLeftSearch().Find(task, control) is { } start ? Shorten(start, control) : null;
        }

        var clock = Stopwatch.StartNew();
        var first = new BottomLeftSearch().Find(task, control with { Budget = NestingBudget.OfTime(control.Budget.Time * StartPart) });
        var left = control.Budget.Time - clock.Elapsed;
        return first is null ? null : Shorten(first, control with { Budget = NestingBudget.OfTime(left > TimeSpan.Zero ? left : TimeSpan.Zero) });
    }

    /// <summary>Shortens a layout without faults.</summary>
    public static NestingLayout Shorten(NestingLayout start, NestingControl control) => new Run(start, control).Go();

    private sealed class Run
    {
        private readonly NestingControl _control;
        private readonly ShapeTable _table;
        private readonly ImmutableArray<Worker> _workers;
        private readonly double _boundMm;
        private readonly Stopwatch _clock = Stopwatch.StartNew();
        private NestingLayout _best;

        public Run(NestingLayout start, NestingControl control)
        {
            (_best, _control) = (start, control);
            _table = new(start.Task, start.LengthMm);
            _boundMm = LowerBound.LengthMm(start.Task);
            var first = Arranged();
            _workers = [.. Enumerable.Range(0, Workers).Select(i => new Worker(_table, first, _boundMm, (ulong)(((long)control.Seed * Workers) + i)))];
        }

        /// <summary>How much of the budget is spent, from 0 to 1.</summary>
        private double Spent => _control.Budget.Spent(_clock.Elapsed, _workers.Sum(worker => worker.Steps));

        public NestingLayout Go()
        {
            var steps = Math.Clamp(_control.Budget.Steps / (LeastRounds * Workers), 1, RoundSteps);
            while (Spent is var spent and < 1 && _best.LengthMm > _boundMm + FreePlace.SameMm && !_control.Cancellation.IsCancellationRequested)
            {
                foreach (var worker in _workers.Where(_ => spent >= SqueezeFrom))
                {
                    worker.Squeeze((spent - SqueezeFrom) / (1 - SqueezeFrom));
                }

                Parallel.ForEach(_workers, worker => worker.Advance(steps));
                Share();
            }

            return _best;
        }

        private void Share()
        {
            var shortest = _workers.MinBy(worker => worker.Best.LengthMm)!.Best;
            foreach (var worker in _workers)
            {
                worker.Adopt(shortest);
            }

            // A layout that the witness does not pass is not kept, whatever the search makes of it.
            if (shortest.LengthMm < _best.LengthMm - FreePlace.SameMm && shortest.ToLayout() is var layout && LayoutCheck.Faults(layout).IsEmpty)
            {
                _best = layout;
                _control.Report?.Invoke(new(layout.LengthMm, _boundMm, _clock.Elapsed));
            }
        }

        private Arrangement Arranged()
        {
            var first = new Arrangement(_table) { LengthMm = _best.LengthMm };
            var places = _best.Placements.OrderBy(placement => placement.Item).ThenBy(placement => placement.Copy);
            foreach (var (piece, place) in places.Index())
            {
                first.Put(piece, _table.Choices[place.Item].First(shape => _table.Shapes[shape].Pose == place.Pose), place.Offset.X, place.Offset.Y);
            }

            return first;
        }
    }
}
