using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The care of the finished job in results.json.</summary>
internal static class CareJson
{
    public static CarePart Of(CarrierJob job)
    {
        var plan = CarePlan.Of(job);
        return new(
            Day(job.Care.Fitted),
            CarePlan.FirstWindOf(job.Fastenings.Mount),
            plan.SixMonthCheck,
            [.. plan.Tasks.Select(task => new CareTaskPart(task.Id, task.Name, task.Do, task.Due.FirstMonths, task.Due.EveryMonths, task.Source))],
            [.. plan.Visits.Select(visit => new CareVisitPart(visit.Months, Day(visit.Date), [.. visit.Tasks.Select(task => task.Id)]))]);
    }

    private static string? Day(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
