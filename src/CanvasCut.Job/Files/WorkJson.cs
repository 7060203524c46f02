using CanvasCut.Design;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The order of work for programs; docs/results.md tells the form.</summary>
public static class WorkJson
{
    /// <summary>The order of work alone, as text.</summary>
    public static string Of(TopRun top)
    {
        ArgumentNullException.ThrowIfNull(top);
        return JsonText.Of(Part(top.Top.First.Work.Order, top.Work), ResultsContext.Default.WorkPart);
    }

    /// <summary>What stands under "work" in results.json.</summary>
    internal static WorkPart Part(BondOrder bond, WorkSchedule order) => new(
        bond,
        Math.Round(order.HoursPerDay.Hours, JsonText.Digits),
        Minutes(order.Bench),
        order.Days,
        [.. order.Steps.Select(Step)],
        [.. order.Steps.SelectMany(each => each.Step.Flow.Uses.Concat(each.Step.Flow.Makes)).Distinct().Select(part => new WordedPart(part.Id, part.ToString()))],
        [.. order.Steps.SelectMany(each => PlacesOf(each.Step.Flow.Access)).Distinct().Select(reach => new WordedPart(reach.Id, reach.ToString()))]);

    private static StepPart Step(ScheduledStep each)
    {
        var (task, flow, advice) = (each.Step.Task, each.Step.Flow, each.Step.Advice);
        return new(
            each.Number,
            task.Id,
            task.Stage,
            task.Kind,
            task.Name,
            task.Do,
            [.. each.Step.Parts.Select(part => new TickPart(part.Name, part.Note))],
            [.. flow.Pieces.Select(key => key.Id)],
            [.. flow.Uses.Select(part => part.Id)],
            [.. flow.Makes.Select(part => part.Id)],
            [.. flow.Access.Needs.Select(reach => reach.Id)],
            [.. flow.Access.Opens.Select(reach => reach.Id)],
            [.. flow.Access.Closes.Select(reach => reach.Id)],
            advice.Tool,
            advice.Condition,
            advice.Check,
            advice.Caution,
            Minutes(each.Step.Time.Hands),
            Minutes(each.Step.Time.Wait),
            each.Day,
            Minutes(each.Start),
            Minutes(each.End),
            [.. each.Step.Whose.Select(whose => whose.Text)]);
    }

    private static IEnumerable<WorkReach> PlacesOf(StepAccess access) => [.. access.Needs, .. access.Opens, .. access.Closes];

    private static double Minutes(Duration time) => Math.Round(time.Minutes, JsonText.Digits);
}
