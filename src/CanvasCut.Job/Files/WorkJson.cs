using System.Text;
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
        bond == BondOrder.BondFirst ? "bond-first" : "sew-first",
        Math.Round(order.HoursPerDay.Hours, JsonText.Digits),
        Minutes(order.Bench),
        order.Days,
        [.. order.Steps.Select(Step)]);

    private static StepPart Step(ScheduledStep each)
    {
        var (task, flow, advice) = (each.Step.Task, each.Step.Flow, each.Step.Advice);
        return new(
            each.Number,
            task.Id,
            Word(task.Stage),
            Word(task.Kind),
            task.Name,
            task.Do,
            [.. each.Step.Parts.Select(part => new TickPart(part.Name, part.Note))],
            [.. flow.Pieces.Select(key => key.Id)],
            [.. flow.Uses.Select(part => part.ToString())],
            [.. flow.Makes.Select(part => part.ToString())],
            [.. flow.Access.Needs.Select(reach => reach.ToString())],
            [.. flow.Access.Opens.Select(reach => reach.ToString())],
            [.. flow.Access.Closes.Select(reach => reach.ToString())],
            advice.Tool,
            advice.Condition,
            advice.Check,
            advice.Caution,
            Minutes(each.Step.Time.Hands),
            Minutes(each.Step.Time.Wait),
            each.Day,
            Minutes(each.Start),
            Minutes(each.End));
    }

    /// <summary>As in top-pieces.</summary>
    private static string Word<T>(T value)
        where T : struct, Enum
    {
        var word = new StringBuilder();
        foreach (var letter in value.ToString())
        {
            word.Append(char.IsUpper(letter) && word.Length > 0 ? "-" : string.Empty).Append(char.ToLowerInvariant(letter));
        }

        return word.ToString();
    }

    private static double Minutes(Duration time) => Math.Round(time.Minutes, JsonText.Digits);
}
