using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>One step of the work.</summary>
/// <param name="Task">What is done.</param>
/// <param name="Flow">What it takes up and what comes of it.</param>
/// <param name="Time">How long it takes.</param>
/// <param name="Advice">How to do it well and safely.</param>
/// <param name="Picture">What its small picture shows.</param>
public sealed record WorkStep(StepTask Task, StepFlow Flow, StepTime Time, StepAdvice Advice, WorkPicture Picture)
{
    /// <summary>What to tick one by one, where the same is done to several; empty where the step is about one thing.</summary>
    public ImmutableArray<StepPart> Parts { get; init; } = [];

    /// <summary>The carriers whose things it is about; empty where there is one carrier, where it is about the top, and where its name says it.</summary>
    public ImmutableArray<MountingName> Whose { get; init; } = [];

    /// <summary>How it is told for any number of things; null where it is about one thing.</summary>
    internal StepGroup? Group { get; init; }

    /// <summary>
    /// Whether it is done once for the whole top, and how much longer it takes for each further carrier; null where each carrier has its own.
    /// </summary>
    internal Duration? OnceAndFurther { get; init; }
}

/// <summary>How a step is told that does the same to several things.</summary>
/// <param name="One">What is done to one.</param>
/// <param name="All">What is done to so many.</param>
/// <param name="Do">How, without what is so for one thing alone.</param>
/// <param name="Parts">The things.</param>
internal sealed record StepGroup(string One, Func<int, string> All, string Do, ImmutableArray<StepPart> Parts)
{
    /// <summary>The name of a step that is about these things.</summary>
    public string Name => Parts is [var only] ? $"{One}: {only.Name}" : All(Parts.Length);

    /// <summary>What is done, and behind it what is so for one thing alone; of several each has its own line to tick.</summary>
    public string Told => Parts is [{ Note.Length: > 0 } only] ? $"{Do} {Say.Of($"Here: {only.Note}.")}" : Do;
}

/// <summary>One of several things to which a step does the same.</summary>
/// <param name="Name">What it is called, as in "Corner pocket, forward port".</param>
/// <param name="Note">What is so for this one alone; empty for nothing.</param>
public sealed record StepPart(string Name, string Note)
{
    /// <summary>As in "forward: to a run of 1040 mm".</summary>
    public override string ToString() => Note.Length > 0 ? $"{Name}: {Note}" : Name;
}

/// <summary>What is done in a step.</summary>
/// <param name="Id">Lower-case letters, digits and hyphens; unique in the job, the same whenever the job is.</param>
/// <param name="Stage">The part of the work it belongs to.</param>
/// <param name="Kind">What sort of work it is.</param>
/// <param name="Name">A few words.</param>
/// <param name="Do">How it is done.</param>
public sealed record StepTask(string Id, WorkStage Stage, WorkKind Kind, string Name = "", string Do = "");

/// <summary>What a step takes up, what comes of it, and what it must be able to reach.</summary>
/// <param name="Pieces">The pieces of cloth it works on.</param>
/// <param name="Uses">What must have been made before; see <see cref="WorkParts"/>.</param>
/// <param name="Makes">What there is afterwards.</param>
/// <param name="Access">What it must reach, and what it opens and closes to others.</param>
public sealed record StepFlow(
    ImmutableArray<PieceKey> Pieces, ImmutableArray<WorkPart> Uses, ImmutableArray<WorkPart> Makes, StepAccess Access);

/// <summary>What a step must reach with needle or hand, and what can or cannot be reached after it; see <see cref="WorkAccess"/>.</summary>
/// <param name="Needs">What must be open when it is done.</param>
/// <param name="Opens">What is open afterwards.</param>
/// <param name="Closes">What is not open any more afterwards.</param>
public sealed record StepAccess(ImmutableArray<WorkReach> Needs, ImmutableArray<WorkReach> Opens, ImmutableArray<WorkReach> Closes);

/// <summary>How long a step takes.</summary>
/// <param name="Hands">At work; an estimate, see <see cref="WorkTimes"/>.</param>
/// <param name="Wait">Left alone afterwards before anything that it makes may be used.</param>
public sealed record StepTime(Duration Hands, Duration Wait);

/// <summary>How to do a step well and safely.</summary>
/// <param name="Tool">With what.</param>
/// <param name="Condition">When, in which weather or state; empty for any.</param>
/// <param name="Check">What must be true before going on.</param>
/// <param name="Caution">What can hurt or spoil; empty for nothing special.</param>
public sealed record StepAdvice(string Tool, string Condition, string Check, string Caution);
