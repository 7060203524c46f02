using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The order of work.</summary>
internal sealed record WorkPart(
    BondOrder Order, double HoursPerDay, double BenchMin, int Days, ImmutableArray<StepPart> Steps, ImmutableArray<WordedPart> Things, ImmutableArray<WordedPart> Places);

/// <summary>What a thing in a state, or a place, is called.</summary>
internal sealed record WordedPart(string Id, [property: Words] string Words);

/// <summary>A step of the work.</summary>
internal sealed record StepPart(
    int Number,
    string Id,
    WorkStage Stage,
    WorkKind Kind,
    [property: Words] string Name,
    [property: Words] string Do,
    ImmutableArray<TickPart> Parts,
    ImmutableArray<string> Pieces,
    ImmutableArray<string> Uses,
    ImmutableArray<string> Makes,
    ImmutableArray<string> Needs,
    ImmutableArray<string> Opens,
    ImmutableArray<string> Closes,
    [property: Words] string Tool,
    [property: Words] string Condition,
    [property: Words] string Check,
    [property: Words] string Caution,
    double HandsMin,
    double WaitMin,
    int Day,
    double StartMin,
    double EndMin,
    ImmutableArray<string>? Whose = null);

/// <summary>One of several things to tick.</summary>
internal sealed record TickPart([property: Words] string Name, [property: Words] string Note);

/// <summary>The care of the finished job.</summary>
internal sealed record CarePart(
    string? Fitted, [property: Words] string FirstWind, [property: Words] ImmutableArray<string> SixMonthCheck, ImmutableArray<CareTaskPart> Tasks, ImmutableArray<CareVisitPart> Visits);

/// <summary>What is to be done now and then.</summary>
internal sealed record CareTaskPart(
    string Id, [property: Words] string Name, [property: Words] string Do, int FirstMonths, int EveryMonths, [property: Words] string Source);

/// <summary>What is due together.</summary>
internal sealed record CareVisitPart(int Months, string? Date, ImmutableArray<string> Tasks);
