using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Writes times and parts of the work in words, the same on paper and on screen.</summary>
public static class WorkText
{
    /// <summary>As in "25 min", "1 h 30 min" or "72 h".</summary>
    public static string Span(Duration time)
    {
        var minutes = (long)Math.Round(time.Minutes);
        var (hours, rest) = Math.DivRem(minutes, 60);
        return hours == 0 ? FormattableString.Invariant($"{rest} min")
            : rest == 0 ? FormattableString.Invariant($"{hours} h")
            : FormattableString.Invariant($"{hours} h {rest} min");
    }

    /// <summary>How long a step takes, as in "10 min, then wait 72 h".</summary>
    public static string Time(StepTime time) => time.Wait > Duration.Zero ? Say.Of($"{Span(time.Hands)}, then wait {Span(time.Wait)}") : Span(time.Hands);

    /// <summary>All of it in a sentence.</summary>
    public static string Total(WorkSchedule order) =>
        Say.Of($"{Span(order.Bench)} of work; with {Span(order.HoursPerDay)} a day and the cure it takes {(order.Days == 1 ? Say.Of("1 day") : Say.Of($"{order.Days} days"))}.");

    /// <summary>That the order of work is for one of several sets; empty for a single one.</summary>
    public static string Sets(MadeTogether made)
    {
        ArgumentNullException.ThrowIfNull(made);
        return made.Sets == 1 ? string.Empty : Say.Of($"This is the work on one set. The cut plan has the pieces of all {made.Sets}: cut and mark them together, and keep the sets apart.");
    }

    /// <summary>The heading of a part of the work.</summary>
    public static string Of(WorkStage stage) => stage switch
    {
        WorkStage.Prepare => Say.Of("Measure and print"),
        WorkStage.Cut => Say.Of("Cut and mark"),
        WorkStage.Carrier => Say.Of("Sew the carrier"),
        WorkStage.Bond => Say.Of("Bond the panel"),
        WorkStage.TopPieces => Say.Of("Make ready what goes on the top"),
        WorkStage.Mark => Say.Of("Mark the top from the carrier"),
        WorkStage.Top => Say.Of("Sew to the top"),
        _ => Say.Of("Fit, wire, test"),
    };
}
