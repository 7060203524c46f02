using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A step and when it is done.</summary>
/// <param name="Step">The step.</param>
/// <param name="Number">Counted from 1 in the order of the work.</param>
/// <param name="Start">From the beginning of the first working day.</param>
/// <param name="End">When the hands are free again; what it makes may be used after its wait.</param>
public sealed record ScheduledStep(WorkStep Step, int Number, Duration Start, Duration End)
{
    /// <summary>The day on which it begins, counted from 1.</summary>
    public int Day => (int)Math.Floor((Start.Days + 1e-9)) + 1;

    /// <summary>When what it makes may be used.</summary>
    public Duration Ready => End + Step.Time.Wait;
}

/// <summary>The steps in their order, with the days they fall on, for one person.</summary>
/// <param name="Steps">In the order of the work.</param>
/// <param name="HoursPerDay">How long that person works a day.</param>
public sealed record WorkSchedule(ImmutableArray<ScheduledStep> Steps, Duration HoursPerDay)
{
    /// <summary>All hands-on time.</summary>
    public Duration Bench => Steps.Aggregate(Duration.Zero, (sum, step) => sum + step.Step.Time.Hands);

    /// <summary>The days from the first to the last, both counted; days on which only a cure goes on count too.</summary>
    public int Days => Steps.Max(step => (int)Math.Floor((step.End.Days - 1e-9)) + 1);

    /// <summary>Puts steps on days.</summary>
    /// <param name="graph">The steps; where there is a choice, one that starts a cure goes first, else the first of them that can be done.</param>
    /// <param name="hoursPerDay">How long one works a day; the rest of the day cures go on.</param>
    /// <remarks>A step that does not fit in what is left of a day begins the next day, unless it is longer than a day.</remarks>
    internal static WorkSchedule Of(WorkGraph graph, Duration hoursPerDay)
    {
        var done = new ScheduledStep?[graph.Steps.Length];
        var order = ImmutableArray.CreateBuilder<ScheduledStep>();
        var days = new WorkDays(hoursPerDay);
        var clock = Duration.Zero;
        while (order.Count < done.Length)
        {
            var ready = Enumerable.Range(0, done.Length)
                .Where(index => done[index] is null && graph.Before(index).All(before => done[before] is not null))
                .Select(index => new OpenStep(
                    index,
                    graph.Before(index).Aggregate(Duration.Zero, (latest, before) => UnitMath.Max(latest, done[before]!.Ready)),
                    graph.Steps[index].Time,
                    TogetherOf(graph, graph.Steps[index], hoursPerDay)))
                .ToList();
            clock = UnitMath.Max(clock, ready.Min(each => each.From));
            var next = Next(ready, clock, days);
            var (start, end) = days.Fit(UnitMath.Max(clock, next.From), next);
            done[next.Index] = new(graph.Steps[next.Index], order.Count + 1, start, end);
            order.Add(done[next.Index]!);
            clock = end;
        }

        return new(order.ToImmutable(), hoursPerDay);
    }

    /// <summary>
    /// How long it takes until a rest that only leads to the next one is over: a panel laid is weighted the same day, but need not be lifted on
    /// it.
    /// </summary>
    private static Duration TogetherOf(WorkGraph graph, WorkStep step, Duration hoursPerDay)
    {
        if (step.Time.Wait <= Duration.Zero || step.Time.Wait >= hoursPerDay)
        {
            return step.Time.Hands;
        }

        var after = graph.Steps.Where(other => other.Time.Wait > Duration.Zero && other.Flow.Uses.Any(step.Flow.Makes.Contains)).Select(other => other.Time.Hands).ToList();
        return after.Count == 0 ? step.Time.Hands : step.Time.Hands + step.Time.Wait + after.Aggregate(UnitMath.Max);
    }

    /// <summary>
    /// The first that can be done, what starts a wait before others; but nothing that would put off to another day what is soon ready to start
    /// one.
    /// </summary>
    private static OpenStep Next(IReadOnlyList<OpenStep> ready, Duration clock, WorkDays days)
    {
        var first = ready.Where(each => each.From <= clock).MinBy(each => (each.StartsWait ? 0 : 1, each.Index))!;
        if (ready.Where(each => each.From > clock && each.StartsWait).MinBy(each => each.From) is not { } soon)
        {
            return first;
        }

        var (free, held) = (days.Fit(soon.From, soon).Start, days.Fit(UnitMath.Max(soon.From, days.Fit(clock, first).End), soon).Start);
        return WorkDays.Of(free) < WorkDays.Of(held) ? soon : first;
    }
}

/// <summary>A step of which all that it needs is done.</summary>
/// <param name="Index">Which.</param>
/// <param name="From">When it can begin.</param>
/// <param name="Time">How long it takes.</param>
/// <param name="Together">What should fit into the day it is begun on.</param>
internal sealed record OpenStep(int Index, Duration From, StepTime Time, Duration Together)
{
    /// <summary>Whether something is left alone after it.</summary>
    public bool StartsWait => Time.Wait > Duration.Zero;
}

/// <summary>Days of so many working hours, each at the beginning of 24 h.</summary>
internal sealed record WorkDays(Duration HoursPerDay)
{
    private const double Slack = 1e-9;

    /// <summary>More than the sums of many days lose, and less than a minute of work.</summary>
    private static readonly Duration RoundOff = Duration.FromMilliseconds(1);

    /// <summary>The day a time falls on, counted from 0.</summary>
    public static double Of(Duration time) => Math.Floor(time.Days + Slack);

    /// <summary>Where a step fits that may begin at a time.</summary>
    public (Duration Start, Duration End) Fit(Duration from, OpenStep step)
    {
        var hands = step.Time.Hands;
        var day = Of(from);
        var gone = from - Duration.FromDays(day);
        var isWithin = gone + (step.Together <= HoursPerDay ? step.Together : hands) <= HoursPerDay + RoundOff || (gone.Minutes < Slack && hands > HoursPerDay);
        var (start, first) = isWithin ? (from, day) : (Duration.FromDays(day + 1), day + 1);
        var whole = Math.Max(0, Math.Ceiling((hands / HoursPerDay) - Slack) - 1);
        return hands <= HoursPerDay
            ? (start, start + hands)
            : (start, Duration.FromDays(first + whole) + hands - (HoursPerDay * whole));
    }
}
