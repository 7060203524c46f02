using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>The steps of one of several carriers.</summary>
/// <param name="Whose">The carrier.</param>
/// <param name="Steps">Its steps, as if there were no other carrier.</param>
internal sealed record WhoseSteps(MountingName Whose, ImmutableArray<WorkStep> Steps);

/// <summary>
/// Makes one order of work of those of several carriers: what is done to all of them in the same way is one step, in which each thing to tick
/// says whose it is; what is done to the top, such as taking it off, is done once; each panel is bonded by itself, so that their cures run
/// beside each other.
/// </summary>
internal static class TogetherSteps
{
    /// <summary>The steps, what is used made first.</summary>
    public static ImmutableArray<WorkStep> Of(ImmutableArray<WhoseSteps> carriers)
    {
        ImmutableArray<WhoseSteps> known = [.. carriers.Select(carrier => carrier with { Steps = [.. carrier.Steps.Select(step => OfCarrier(step, carrier.Whose))] })];
        return [.. OrderOf(known).Select(id => Merged([.. known.SelectMany(carrier => carrier.Steps.Where(step => step.Task.Id == id).Select(step => (carrier.Whose, step)))]))];
    }

    /// <summary>A step that knows whose things it uses and makes; a bond has a step of its own for each carrier.</summary>
    private static WorkStep OfCarrier(WorkStep step, MountingName whose)
    {
        var (task, flow, access) = (step.Task, step.Flow, step.Flow.Access);
        return step with
        {
            Task = task.Stage == WorkStage.Bond ? task with { Id = $"{task.Id}-{whose}", Name = $"{task.Name}: {whose}" } : task,
            Flow = flow with
            {
                Uses = [.. flow.Uses.Select(part => part.Of(whose))],
                Makes = [.. flow.Makes.Select(part => part.Of(whose))],
                Access = new([.. access.Needs.Select(reach => reach.Of(whose))], [.. access.Opens.Select(reach => reach.Of(whose))], [.. access.Closes.Select(reach => reach.Of(whose))]),
            },
        };
    }

    /// <summary>Every step once, in an order that keeps that of each carrier, so far as they agree.</summary>
    private static IEnumerable<string> OrderOf(ImmutableArray<WhoseSteps> carriers)
    {
        List<List<string>> left = [.. carriers.Select(carrier => carrier.Steps.Select(step => step.Task.Id).ToList())];
        while (left.FirstOrDefault(ids => ids.Count > 0) is { } first)
        {
            var next = left.Where(ids => ids.Count > 0).Select(ids => ids[0]).FirstOrDefault(id => left.All(ids => ids.IndexOf(id) <= 0)) ?? first[0];
            left.ForEach(ids => ids.Remove(next));
            yield return next;
        }
    }

    private static WorkStep Merged(ImmutableArray<(MountingName Whose, WorkStep Step)> each)
    {
        var (first, isOwn) = (each[0].Step, each[0].Step.Task.Stage == WorkStage.Bond);
        var ticks = isOwn || first.OnceAndFurther is not null ? first.Parts : [.. each.SelectMany(one => TicksOf(one.Whose, one.Step))];
        var group = first.Group is { } own ? own with { Do = Told(each, step => step.Group!.Do), Parts = ticks } : null;
        return first with
        {
            Task = first.Task with { Name = group?.Name ?? Names(each), Do = group?.Told ?? Told(each, step => step.Task.Do) },
            Group = group,
            Whose = isOwn || first.OnceAndFurther is not null ? [] : [.. each.Select(one => one.Whose)],
            Parts = group is not null && ticks.Length == 1 ? [] : ticks,
            Flow = new(
                All(each, step => step.Flow.Pieces),
                All(each, step => step.Flow.Uses),
                All(each, step => step.Flow.Makes),
                new(All(each, step => step.Flow.Access.Needs), All(each, step => step.Flow.Access.Opens), All(each, step => step.Flow.Access.Closes))),
            Time = new(Hands(each), each.Select(one => one.Step.Time.Wait).Aggregate(UnitMath.Max)),
            Advice = new(
                Told(each, step => step.Advice.Tool), Told(each, step => step.Advice.Condition), Told(each, step => step.Advice.Check), Told(each, step => step.Advice.Caution)),
            Picture = first.Picture.Piece is null ? first.Picture with { Lines = [.. each.SelectMany(one => one.Step.Picture.Lines)] } : first.Picture,
        };
    }

    /// <summary>Each thing with its carrier's name; the carrier itself where the step is about all of it.</summary>
    private static IEnumerable<StepPart> TicksOf(MountingName whose, WorkStep step)
    {
        var parts = step.Group?.Parts ?? step.Parts;
        return parts.IsEmpty ? [new StepPart(whose.Text, string.Empty)] : parts.Select(part => part with { Name = $"{whose}: {part.Name}" });
    }

    /// <summary>What is the same for all is told once, what is not with the name of each.</summary>
    private static string Told(ImmutableArray<(MountingName Whose, WorkStep Step)> each, Func<WorkStep, string> told)
    {
        var alike = each.GroupBy(one => told(one.Step)).ToList();
        return alike.Count == 1 ? alike[0].Key : string.Join(' ', alike.Where(same => same.Key.Length > 0).Select(same => $"{string.Join(", ", same.Select(one => one.Whose))}: {same.Key}"));
    }

    private static string Names(ImmutableArray<(MountingName Whose, WorkStep Step)> each) => string.Join("; ", each.Select(one => one.Step.Task.Name).Distinct());

    private static ImmutableArray<T> All<T>(ImmutableArray<(MountingName Whose, WorkStep Step)> each, Func<WorkStep, ImmutableArray<T>> of) => [.. each.SelectMany(one => of(one.Step)).Distinct()];

    /// <summary>The machine is set up once for what is sewn in one step.</summary>
    private static Duration Hands(ImmutableArray<(MountingName Whose, WorkStep Step)> each)
    {
        var (first, more) = (each[0].Step, each.Length - 1);
        if (first.OnceAndFurther is { } further)
        {
            return each.Select(one => one.Step.Time.Hands).Aggregate(UnitMath.Max) + (further * more);
        }

        var all = each.Aggregate(Duration.Zero, (sum, one) => sum + one.Step.Time.Hands);
        return first.Task.Kind == WorkKind.Machine ? all - (WorkTimes.SetUp * more) : all;
    }
}
