using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The care of the finished job in results.json.</summary>
internal static class CareJson
{
    public static CarePart Of(params ImmutableArray<CarrierJob> jobs)
    {
        var plan = CarePlan.Of(jobs);
        return new(
            Day(jobs[0].Care.Fitted),
            CarePlan.FirstWindOf([.. jobs.Select(job => job.Fastenings.Mount)]),
            plan.SixMonthCheck,
            [.. plan.Tasks.Select(task => new CareTaskPart(task.Id, task.Name, task.Do, task.Due.FirstMonths, task.Due.EveryMonths, task.Source))],
            [.. plan.Visits.Select(visit => new CareVisitPart(visit.Months, Day(visit.Date), [.. visit.Tasks.Select(task => task.Id)]))]);
    }

    private static string? Day(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
