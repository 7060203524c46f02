using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>What is kept with the finished job: the form of the first day, the card, the calendar.</summary>
public static class CareSheets
{
    /// <summary>The pages; the form and the card a page each.</summary>
    public static ImmutableArray<Sheet> Of(PatternSet patterns, SheetContext context)
    {
        return Of([(patterns, context)], context);
    }

    /// <summary>The same for several carriers: a form and a card for each, and one calendar.</summary>
    /// <param name="carriers">The carriers with what their own sheets say.</param>
    /// <param name="context">What all pages say.</param>
    public static ImmutableArray<Sheet> Of(ImmutableArray<(PatternSet Patterns, SheetContext Context)> carriers, SheetContext context)
    {
        var flow = new Flow(context);
        foreach (var (patterns, own) in carriers)
        {
            FirstDayForm.Add(flow, patterns, own);
            flow.NewPage();
            CareCard.Add(flow, patterns, CarePlan.Of(patterns.Job));
            flow.NewPage();
        }

        Calendar(flow, [.. carriers.Select(each => each.Patterns.Job)]);
        return flow.Pages("care", Say.Of($"Care, {context.JobName}"), context.Footer);
    }

    private static void Calendar(Flow flow, ImmutableArray<CarrierJob> jobs)
    {
        var plan = CarePlan.Of(jobs);
        flow.Title(Say.Of("Care calendar"));
        flow.Text(jobs[0].Care.Fitted is null
            ? Say.Of("The months count from the day of fitting. Write that day into the job file, as in fitted = 2027-04-01 under [care], and this page has dates and a calendar file lies beside it.")
            : Say.Of("The dates count from the day of fitting in the job file; care.ics holds the same for a calendar program."));
        flow.Text(CarePlan.FirstWindOf([.. jobs.Select(job => job.Fastenings.Mount)]), isBold: true);
        flow.Heading(Say.Of("What is due when"));
        var due = new Table([new(Say.Of("When"), 44), new(Say.Of("What"), flow.WidthMm - 44 - 24), new(Say.Of("Done on"), 24)], 2.4);
        flow.Rows(due, plan.Visits.Select(visit => ImmutableArray.Create(visit.When, string.Join("; ", visit.Tasks.Select(task => task.Name)), string.Empty)));
        flow.Heading(Say.Of("How"));
        var how = new Table([new(Say.Of("What"), 40), new(Say.Of("First, then every"), 32), new(Say.Of("How"), flow.WidthMm - 72 - 52), new(Say.Of("Where the time comes from"), 52)], 2);
        flow.Rows(how, plan.Tasks.Select(task => ImmutableArray.Create(task.Name, DueText(task.Due), task.Do, task.Source)));
    }

    private static string DueText(CareDue due) => Say.Of($"{due.FirstMonths} months, then every {due.EveryMonths}");
}
