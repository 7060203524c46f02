using System.Collections.Immutable;
using CanvasCut.Language;

namespace CanvasCut.Takeoff;

/// <summary>Something to do again and again once the job is fitted.</summary>
/// <param name="Id">Lower-case letters, digits and hyphens; never changes its meaning.</param>
/// <param name="Name">A few words.</param>
/// <param name="Do">How.</param>
/// <param name="Due">When.</param>
/// <param name="Source">Where the time comes from.</param>
public sealed record CareTask(string Id, string Name, string Do, CareDue Due, string Source);

/// <summary>When something is due, in months after fitting.</summary>
/// <param name="FirstMonths">For the first time; above zero.</param>
/// <param name="EveryMonths">And then again each time after so many; zero for once.</param>
public sealed record CareDue(int FirstMonths, int EveryMonths)
{
    /// <summary>Whether it is due so many months after fitting.</summary>
    public bool IsAt(int months) =>
        months == FirstMonths || (EveryMonths > 0 && months > FirstMonths && (months - FirstMonths) % EveryMonths == 0);
}

/// <summary>All that is due at one time.</summary>
/// <param name="Months">After fitting.</param>
/// <param name="Date">The day; null while the day of fitting is not known.</param>
/// <param name="Tasks">What is due, in the order of the plan.</param>
public sealed record CareVisit(int Months, DateOnly? Date, ImmutableArray<CareTask> Tasks)
{
    /// <summary>The day, or as in "6 months after fitting".</summary>
    public string When => Date is { } date
        ? date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
        : Say.Of($"{Months} months after fitting");
}
