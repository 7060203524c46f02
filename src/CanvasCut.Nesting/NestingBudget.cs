namespace CanvasCut.Nesting;

/// <summary>How long a search may go on: for a time, or for a number of steps, whichever ends first.</summary>
/// <remarks>
/// A step is one place tried for one piece. With a limit of steps and none of time, a search gives the same layout
/// every time, on every machine; with a limit of time it need not.
/// </remarks>
public sealed record NestingBudget
{
    private NestingBudget(TimeSpan time, long steps) => (Time, Steps) = (time, steps);

    /// <summary>The longest time; <see cref="TimeSpan.MaxValue"/> for no limit.</summary>
    public TimeSpan Time { get; }

    /// <summary>The most steps; <see cref="long.MaxValue"/> for no limit.</summary>
    public long Steps { get; }

    /// <summary>A limit of time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public static NestingBudget OfTime(TimeSpan time)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(time, TimeSpan.Zero);
        return new(time, long.MaxValue);
    }

    /// <summary>A part of this budget.</summary>
    /// <param name="part">Above 0 to 1.</param>
    public NestingBudget Part(double part) => new(
        Time == TimeSpan.MaxValue ? Time : Time * part,
        Steps == long.MaxValue ? Steps : (long)(Steps * part));

    /// <summary>How much of it is spent, from 0 to 1 and beyond.</summary>
    /// <param name="elapsed">How long the search has gone on.</param>
    /// <param name="steps">How many steps were made.</param>
    public double Spent(TimeSpan elapsed, long steps)
    {
        var ofSteps = (double)steps / Math.Max(1, Steps);
        return Time == TimeSpan.MaxValue ? ofSteps : Math.Max(ofSteps, elapsed / Time);
    }

    /// <summary>A limit of steps.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static NestingBudget OfSteps(long steps)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(steps);
        return new(TimeSpan.MaxValue, steps);
    }
}
