using CanvasCut.Nesting;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>How far a cut plan has come.</summary>
/// <param name="Best">The shortest length found.</param>
/// <param name="Bound">No layout can be shorter.</param>
public sealed record PlanProgress(Length Best, Length Bound)
{
    /// <summary>A quick search, the same every time, that tells how it gets on.</summary>
    internal static NestingControl Telling(Action<PlanProgress>? report) => NestingControl.Quick with
    {
        Report = report is null ? null : progress => report(new(Length.FromMillimeters(progress.BestMm), Length.FromMillimeters(progress.BoundMm))),
    };
}
