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

    /// <summary>The steps as they are written down before any scheduling.</summary>
    internal static WorkGraph GraphOf(WorkSubject subject)
    {
        var bond = BondSteps.Of(subject);
        return new(
        [
            .. PrepareSteps.Of(subject),
            .. subject.Patterns.IsRefit ? [RefitSteps.LookOver(subject)] : Array.Empty<WorkStep>(),
            .. CarrierSteps.Of(subject),
            .. subject.IsBondFirst ? bond : [],
            .. subject.Patterns.IsRefit ? [] : TopSide(subject),
            .. subject.IsBondFirst ? [] : bond,
            .. FitSteps.Of(subject),
        ]);
    }

    private static WorkStep[] TopSide(WorkSubject subject) => [.. TopPieceSteps.Of(subject), .. TopSteps.Of(subject)];
}
