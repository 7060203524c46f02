using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CanvasCut.Design;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>The order of work for programs; docs/results.md tells the form.</summary>
public static class WorkJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The order of work alone, as text.</summary>
    public static string Of(JobRun outcome) => JsonSerializer.Serialize(Root(outcome), Options) + "\n";

    /// <summary>What stands under "work" in results.json.</summary>
    internal static object Root(JobRun outcome)
    {
        var order = outcome.Work;
        return new
        {
            order = outcome.Job.Work.Order == BondOrder.BondFirst ? "bond-first" : "sew-first",
            hours_per_day = Math.Round(order.HoursPerDay.Hours, 6),
            bench_min = Minutes(order.Bench),
            days = order.Days,
            steps = order.Steps.Select(Step),
        };
    }

    private static object Step(ScheduledStep each)
    {
        var (task, flow, advice) = (each.Step.Task, each.Step.Flow, each.Step.Advice);
        return new
        {
            number = each.Number,
            id = task.Id,
            stage = Word(task.Stage),
            kind = Word(task.Kind),
            name = task.Name,
            @do = task.Do,
            parts = each.Step.Parts.Select(part => new { name = part.Name, note = part.Note }),
            pieces = flow.Pieces.Select(key => key.Id),
            uses = flow.Uses,
            makes = flow.Makes,
            needs = flow.Access.Needs,
            opens = flow.Access.Opens,
            closes = flow.Access.Closes,
            tool = advice.Tool,
            condition = advice.Condition,
            check = advice.Check,
            caution = advice.Caution,
            hands_min = Minutes(each.Step.Time.Hands),
            wait_min = Minutes(each.Step.Time.Wait),
            day = each.Day,
            start_min = Minutes(each.Start),
            end_min = Minutes(each.End),
        };
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

    private static double Minutes(Duration time) => Math.Round(time.Minutes, 6);
}
