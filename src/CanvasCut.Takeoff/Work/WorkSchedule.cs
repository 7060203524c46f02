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
                .Select(index => (Index: index, From: graph.Before(index).Aggregate(Duration.Zero, (latest, before) => UnitMath.Max(latest, done[before]!.Ready))))
                .ToList();
            var from = ready.Min(each => each.From);
            clock = UnitMath.Max(clock, from);
            var next = ready.Where(each => each.From <= clock).MinBy(each => (graph.Steps[each.Index].Time.Wait > Duration.Zero ? 0 : 1, each.Index)).Index;
            var (start, end) = days.Fit(clock, graph.Steps[next].Time.Hands);
            done[next] = new(graph.Steps[next], order.Count + 1, start, end);
            order.Add(done[next]!);
            clock = end;
        }

        return new(order.ToImmutable(), hoursPerDay);
    }
}

/// <summary>Days of so many working hours, each at the beginning of 24 h.</summary>
internal sealed record WorkDays(Duration HoursPerDay)
{
    private const double Slack = 1e-9;

    /// <summary>Where work of some length fits that may begin at a time.</summary>
    public (Duration Start, Duration End) Fit(Duration from, Duration hands)
    {
        var day = Math.Floor(from.Days + Slack);
        var gone = from - Duration.FromDays(day);
        var isWithin = gone + hands <= HoursPerDay + Duration.FromSeconds(Slack) || (gone.Minutes < Slack && hands > HoursPerDay);
        var (start, first) = isWithin ? (from, day) : (Duration.FromDays(day + 1), day + 1);
        var whole = Math.Max(0, Math.Ceiling((hands / HoursPerDay) - Slack) - 1);
        return hands <= HoursPerDay
            ? (start, start + hands)
            : (start, Duration.FromDays(first + whole) + hands - (HoursPerDay * whole));
    }
}
