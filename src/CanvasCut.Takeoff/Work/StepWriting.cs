using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Writes steps down, a clause after the other.</summary>
internal static class StepWriting
{
    private static readonly StepFlow NoFlow = new([], [], [], new([], [], []));
    private static readonly StepAdvice NoAdvice = new(string.Empty, string.Empty, string.Empty, string.Empty);

    /// <summary>A step of which only the task is known yet.</summary>
    public static WorkStep Step(StepTask task) => new(task, NoFlow, new(Duration.Zero, Duration.Zero), NoAdvice, new(null, []));

    /// <summary>A step that does the same to several things, or to a single one, which is then named in its own name.</summary>
    public static WorkStep Step(StepTask task, StepGroup group) =>
        (Step(task with { Name = group.Name, Do = group.Told }) with { Group = group }).Ticking(group.Parts);

    /// <summary>A step that is done once for the whole top.</summary>
    public static WorkStep OnceForAll(this WorkStep step, Duration further = default) => step with { OnceAndFurther = further };

    /// <summary>The things to tick; a step about a single one names it in its own name.</summary>
    public static WorkStep Ticking(this WorkStep step, IReadOnlyList<StepPart> parts) => parts.Count > 1 ? step with { Parts = [.. parts] } : step;

    public static WorkStep On(this WorkStep step, params IEnumerable<PatternPiece> pieces) =>
        step with { Flow = step.Flow with { Pieces = [.. pieces.Select(piece => piece.Key)] } };

    public static WorkStep Using(this WorkStep step, params IEnumerable<WorkPart> parts) => step with { Flow = step.Flow with { Uses = [.. parts] } };

    public static WorkStep Making(this WorkStep step, params IEnumerable<WorkPart> parts) => step with { Flow = step.Flow with { Makes = [.. parts] } };

    public static WorkStep Needing(this WorkStep step, params IEnumerable<WorkReach> access) => Reaching(step, step.Flow.Access with { Needs = [.. access] });

    public static WorkStep Opening(this WorkStep step, params IEnumerable<WorkReach> access) => Reaching(step, step.Flow.Access with { Opens = [.. access] });

    public static WorkStep Closing(this WorkStep step, params IEnumerable<WorkReach> access) => Reaching(step, step.Flow.Access with { Closes = [.. access] });

    public static WorkStep Taking(this WorkStep step, Duration hands) => step with { Time = step.Time with { Hands = hands } };

    public static WorkStep Waiting(this WorkStep step, Duration wait) => step with { Time = step.Time with { Wait = wait } };

    public static WorkStep With(this WorkStep step, string tool) => step with { Advice = step.Advice with { Tool = tool } };

    public static WorkStep When(this WorkStep step, string condition) => step with { Advice = step.Advice with { Condition = condition } };

    public static WorkStep Until(this WorkStep step, string check) => step with { Advice = step.Advice with { Check = check } };

    public static WorkStep Minding(this WorkStep step, string caution) => step with { Advice = step.Advice with { Caution = caution } };

    public static WorkStep Seen(this WorkStep step, WorkPicture picture) => step with { Picture = picture };

    private static WorkStep Reaching(WorkStep step, StepAccess access) => step with { Flow = step.Flow with { Access = access } };
}
