using System.Collections.Immutable;
using System.Diagnostics;
using CanvasCut.Nesting.Rectangles;

namespace CanvasCut.Nesting;

/// <summary>Lays rectangles, and only those.</summary>
/// <remarks>
/// Two workers search at the same time and share what they find after fixed numbers of steps, so that a limit of steps
/// gives the same layout every time. The first always tries to reach the bound, the second to do a little better than the best.
/// </remarks>
public sealed class RectangleSearch : INestingSearch
{
    private const int Workers = 2;
    private const long RoundSteps = 200_000;
    private const long LeastRounds = 20;

    /// <summary>Up to so many pieces every way to lay them is tried, if that takes no more than some steps.</summary>
    private const int FewPieces = 12;

    private const long ExactSteps = 200_000;

    /// <summary>Whether a task has only rectangles that lie level, on a strip without zones and repeat.</summary>
    public static bool IsFor(NestingTask task) => NestingProblems.Of(task).IsEmpty && RectangleTask.Of(task) is not null;

    /// <inheritdoc/>
    /// <remarks>A task with other pieces, with zones or with a repeat is left to another search.</remarks>
    /// <exception cref="ArgumentException">The search is not <see cref="IsFor">for</see> the task.</exception>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (!NestingProblems.Of(task).IsEmpty)
        {
            return null;
        }

        var rectangles = RectangleTask.Of(task) ?? throw new ArgumentException("The search is for rectangles alone.", nameof(task));
        return new Run(rectangles, control).Go();
    }

    private sealed class Run
    {
        private readonly RectangleTask _task;
        private readonly NestingControl _control;
        private readonly ImmutableArray<OrderSearch> _workers;
        private readonly Stopwatch _clock = Stopwatch.StartNew();
        private readonly Dice _dice;
        private int _round;

        public Run(RectangleTask task, NestingControl control)
        {
            (_task, _control, _dice) = (task, control, new((ulong)control.Seed));
            var order = Enumerable.Range(0, task.Pieces.Length).OrderByDescending(piece => task.Ways[task.Pieces[piece]].Max(way => way.Across)).ToArray();
            _workers = [.. Enumerable.Range(0, Workers).Select(i => new OrderSearch(task, order, (ulong)(((long)control.Seed * Workers) + i)))];
        }

        private double Spent => _control.Budget.Spent(_clock.Elapsed, _workers.Sum(worker => worker.Steps));

        public NestingLayout Go()
        {
            var steps = Math.Clamp(_control.Budget.Steps / (LeastRounds * Workers), 1, RoundSteps);
            var (best, isProven) = Exact(_workers[0].Best);
            while (!isProven && Spent < 1 && best.Length > _task.Least && !_control.Cancellation.IsCancellationRequested)
            {
                Begin(best);
                Parallel.ForEach(_workers, worker => worker.Advance(steps));
                var found = _workers.MinBy(worker => worker.Best.Length)!.Best;
                if (found.Length < best.Length)
                {
                    best = found;
                    _control.Report?.Invoke(new(_task.LengthMm(best.Length), _task.LengthMm(_task.Least), _clock.Elapsed));
                }

                foreach (var worker in _workers)
                {
                    worker.Adopt(best);
                }
            }

            return LayoutCheck.Faultless(_task.ToLayout(best));
        }

        /// <summary>Few pieces are laid in every way that could matter, shorter and shorter.</summary>
        private (RectangleLayout Best, bool IsProven) Exact(RectangleLayout best)
        {
            var answer = _task.Pieces.Length <= FewPieces ? LengthAnswer.Possible : LengthAnswer.Unknown;
            while (answer == LengthAnswer.Possible && best.Length > _task.Least)
            {
                answer = ExactFill.Try(_task, best.Length - 1, Math.Min(ExactSteps, _control.Budget.Steps), out var shorter);
                best = shorter ?? best;
            }

            return (best, answer != LengthAnswer.Unknown);
        }

        private void Begin(RectangleLayout best)
        {
            _round++;
            var orders = Orders();
            _workers[0].Begin(_task.Least, orders[_round % orders.Length]);
            var step = Math.Max(_task.Step, (best.Length - _task.Least) / 2 / _task.Step * _task.Step);
            _workers[1].Begin(_round % 2 == 0 ? best.Length - _task.Step : best.Length - step, _round % 3 == 0 ? best.Order : orders[_dice.Below(orders.Length)]);
        }

        private int[][] Orders()
        {
            Func<Lying, double>[] sizes = [way => way.Across, way => (double)way.Along * way.Across, way => way.Along, way => way.Along + way.Across];
            return [.. sizes.Select(size => Enumerable.Range(0, _task.Pieces.Length).OrderByDescending(piece => _task.Ways[_task.Pieces[piece]].Max(size)).ToArray())];
        }
    }
}
