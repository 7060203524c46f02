using System.Collections.Immutable;

namespace CanvasCut.Job;

/// <summary>The order of work.</summary>
internal sealed record WorkPart(string Order, double HoursPerDay, double BenchMin, int Days, ImmutableArray<StepPart> Steps);

/// <summary>A step of the work.</summary>
internal sealed record StepPart(
    int Number,
    string Id,
    string Stage,
    string Kind,
    string Name,
    string Do,
    ImmutableArray<TickPart> Parts,
    ImmutableArray<string> Pieces,
    ImmutableArray<string> Uses,
    ImmutableArray<string> Makes,
    ImmutableArray<string> Needs,
    ImmutableArray<string> Opens,
    ImmutableArray<string> Closes,
    string Tool,
    string Condition,
    string Check,
    string Caution,
    double HandsMin,
    double WaitMin,
    int Day,
    double StartMin,
    double EndMin);

/// <summary>One of several things to tick.</summary>
internal sealed record TickPart(string Name, string Note);

/// <summary>The care of the finished job.</summary>
internal sealed record CarePart(
    string? Fitted, string FirstWind, ImmutableArray<string> SixMonthCheck, ImmutableArray<CareTaskPart> Tasks, ImmutableArray<CareVisitPart> Visits);

/// <summary>What is to be done now and then.</summary>
internal sealed record CareTaskPart(string Id, string Name, string Do, int FirstMonths, int EveryMonths, string Source);

/// <summary>What is due together.</summary>
internal sealed record CareVisitPart(int Months, string? Date, ImmutableArray<string> Tasks);
