using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The care of the finished job for programs; docs/results.md tells the form.</summary>
internal static class CareJson
{
    /// <summary>What stands under "care" in results.json.</summary>
    public static object Root(CarrierJob job)
    {
        var plan = CarePlan.Of(job);
        return new
        {
            fitted = Day(job.Care.Fitted),
            first_wind = CarePlan.FirstWindOf(job.Fastenings.Mount),
            six_month_check = plan.SixMonthCheck,
            tasks = plan.Tasks.Select(task => new
            {
                id = task.Id,
                name = task.Name,
                @do = task.Do,
                first_months = task.Due.FirstMonths,
                every_months = task.Due.EveryMonths,
                source = task.Source,
            }),
            visits = plan.Visits.Select(visit => new { months = visit.Months, date = Day(visit.Date), tasks = visit.Tasks.Select(task => task.Id) }),
        };
    }

    private static string? Day(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
