using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>The order of work, made from the pieces and choices of a job.</summary>
public static class WorkOrder
{
    /// <summary>The steps with their days; the same job gives the same order.</summary>
    /// <remarks>Tolerances and times are common practice or from memory; docs/work-order.md names what has a source.</remarks>
    public static WorkSchedule Of(PatternSet patterns)
    {
        var subject = new WorkSubject(patterns);
        return WorkSchedule.Of(GraphOf(subject), patterns.Job.Work.HoursPerDay);
    }

    /// <summary>One order for all carriers of a top, for one set of them.</summary>
    public static WorkSchedule Of(MadeTogether made)
    {
        ArgumentNullException.ThrowIfNull(made);
        return made.HasSeveral
            ? WorkSchedule.Of(new(TogetherSteps.Of([.. made.Carriers.Select(carrier => new WhoseSteps(carrier.Job.Mounting, StepsOf(new(carrier))))])), made.Job.Work.HoursPerDay)
            : Of(made.Carriers[0]);
    }

    /// <summary>The steps as they are written down before any scheduling.</summary>
    internal static WorkGraph GraphOf(WorkSubject subject) => new(StepsOf(subject));

    private static ImmutableArray<WorkStep> StepsOf(WorkSubject subject)
    {
        var bond = BondSteps.Of(subject);
        return
        [
            .. PrepareSteps.Of(subject),
            .. subject.Patterns.IsRefit ? [RefitSteps.LookOver(subject)] : Array.Empty<WorkStep>(),
            .. CarrierSteps.Of(subject),
            .. subject.IsBondFirst ? bond : [],
            .. subject.Patterns.IsRefit ? [] : TopSide(subject),
            .. subject.IsBondFirst ? [] : bond,
            .. FitSteps.Of(subject),
        ];
    }

    private static WorkStep[] TopSide(WorkSubject subject) => [.. TopPieceSteps.Of(subject), .. TopSteps.Of(subject)];
}
