using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Takeoff;

/// <summary>What keeps the job sound, and when it is due.</summary>
/// <param name="Tasks">What is done again and again, in the order in which they are first due.</param>
/// <param name="Visits">What is due when, over the first five years.</param>
/// <param name="SixMonthCheck">What the six-month check looks at, a line each.</param>
public sealed record CarePlan(ImmutableArray<CareTask> Tasks, ImmutableArray<CareVisit> Visits, ImmutableArray<string> SixMonthCheck)
{
    /// <summary>How far the calendar reaches.</summary>
    public const int LastMonth = 60;

    /// <summary>What is done after the first strong wind, on whatever day that is.</summary>
    public static string FirstWindOf(params ImmutableArray<MountSpec> mounts) =>
        Say.Of($"After the first strong wind: look at the pockets' mouths, {MountCare.Ends(mounts)}, every row of stitches, and the rim of the panel. Mend before it goes out again.");

    /// <summary>Words in a cloth's name that tell of a coating, which is washed and never proofed.</summary>
    private static readonly string[] Coatings = ["vinyl", "PVC", "coated", "laminate", "mesh", "beschichtet", "Laminat", "Netz"];

    /// <summary>The care of a job.</summary>
    public static CarePlan Of(CarrierJob job)
    {
        ImmutableArray<CareTask> tasks = [.. TasksOf(job).OrderBy(task => task.Due.FirstMonths)];
        return new(tasks, VisitsOf(tasks, job.Care.Fitted), [.. Checks(job)]);
    }

    /// <summary>One plan for several carriers: what is due for all is told once, what is due for some with their names.</summary>
    public static CarePlan Of(ImmutableArray<CarrierJob> jobs)
    {
        if (jobs is [var only])
        {
            return Of(only);
        }

        var plans = jobs.Select(job => (job.Mounting, Plan: Of(job))).ToList();
        ImmutableArray<CareTask> tasks =
        [
            .. plans.SelectMany(each => each.Plan.Tasks.Select(task => (each.Mounting, Task: task)))
                .GroupBy(each => each.Task.Id)
                .Select(alike => alike.Count() == jobs.Length ? alike.First().Task : alike.First().Task with { Name = $"{alike.First().Task.Name} ({string.Join(", ", alike.Select(each => each.Mounting))})" })
                .OrderBy(task => task.Due.FirstMonths),
        ];
        return new(tasks, VisitsOf(tasks, jobs[0].Care.Fitted), [.. plans.SelectMany(each => each.Plan.SixMonthCheck).Distinct()]);
    }

    private static ImmutableArray<CareVisit> VisitsOf(ImmutableArray<CareTask> tasks, DateOnly? fitted) =>
    [
        .. Enumerable.Range(1, LastMonth)
            .Select(months => new CareVisit(months, fitted?.AddMonths(months), [.. tasks.Where(task => task.Due.IsAt(months))]))
            .Where(visit => !visit.Tasks.IsEmpty),
    ];

    private static IEnumerable<CareTask> TasksOf(CarrierJob job)
    {
        yield return new("six-month-check", Say.Of("Six-month check"), Say.Of("Go through the card's list, with the carrier off the top."), new(6, 6), Say.Of("common practice, no source"));
        foreach (var task in MountCare.Tasks(job.Fastenings))
        {
            yield return task;
        }

        yield return new("output", Say.Of("Compare the output"), Say.Of("Measure as on the day of the form: clear noon, the battery not full, the same season."), new(12, 12), Say.Of("Practical Sailor, \"Solar panel self-destruction\""));
        yield return new("connectors", Say.Of("Look at cable and connectors"), Say.Of("Cover the panel first. Look for cracks, green or black contacts, water; whoever may do so parts and cleans them dry."), new(12, 12), Say.Of("from memory; connectors closed wet corrode: an engineers' forum"));
        yield return new("cable-jacket", Say.Of("Look hard at the cable's jacket"), Say.Of("Bend it gently where the sun lies on it; replace it when it is chalky or cracked."), new(60, 60), Say.Of("5 to 10 years in sun; single source"));
        foreach (var task in Thread(job).Concat(Cloth(job)).Concat(HookAndLoop(job)))
        {
            yield return task;
        }
    }

    private static IEnumerable<CareTask> Thread(CarrierJob job)
    {
        var thread = job.Workshop.Supplies.Sewing.Thread;
        var source = job.Care.ThreadLifeMonths is null ? $"{thread.Grade.Name}: {thread.Grade.Source}" : Say.Of("the job file, care.thread_life_months");
        if ((job.Care.ThreadLifeMonths ?? thread.LifeMonths) is { } life)
        {
            yield return new("restitch", Say.Of("Sew the seams again"), Say.Of("The thread has reached the age at which it fails first: pull at it with a needle in the sunniest place. If it breaks, sew all rows again beside the old holes."), new(life, life), source);
        }
    }

    private static IEnumerable<CareTask> Cloth(CarrierJob job)
    {
        if (!Coatings.Any(word => job.Workshop.Cloth.Name.Contains(word, StringComparison.OrdinalIgnoreCase)))
        {
            yield return new("proofing", Say.Of("Proof the cloth"), Say.Of("Wash top and carrier with mild soap, rinse, dry, then proof them as the cloth's maker says, under the carrier too. Sooner when water no longer beads."), new(24, 24), Say.Of("from memory; water under panels that stay on: one crew's account"));
        }
    }

    private static IEnumerable<CareTask> HookAndLoop(CarrierJob job)
    {
        if (UsesHookAndLoop(job))
        {
            yield return new("hook-and-loop-try", Say.Of("Try the hook-and-loop"), Say.Of("Press it, pull it: it must hold as it did when new."), new(12, 6), Say.Of("Practical Sailor, a test of hook-and-loop in the sun"));
            yield return new("hook-and-loop-new", Say.Of("Replace the hook-and-loop"), Say.Of("Unpick it and sew on new."), new(24, 24), Say.Of("nothing is left of its strength after 2 to 4 years of sun: Practical Sailor, a test of hook-and-loop in the sun"));
        }
    }

    private static bool UsesHookAndLoop(CarrierJob job) => job.Care.HasHookAndLoop || job.Fastenings.Mount.Uses(MountKind.HookAndLoop) || MountCare.Strip(job.Fastenings) == StripHold.HookAndLoop;

    private static IEnumerable<string> Checks(CarrierJob job)
    {
        foreach (var check in MountCare.Checks(job.Fastenings))
        {
            yield return check;
        }

        yield return Say.Of("Thread: pick at a row in the sunniest place with a fingernail.");
        yield return Say.Of("Bond: the rim of the panel is down all round.");
        yield return Say.Of("Pockets and corners: no worn mouth, no broken row.");
        yield return Say.Of("Panel: no bubble, brown edge, crack, dull or dark cell.");
        yield return Say.Of("Cloth at the bows: no worn spot, patches whole.");
        yield return Say.Of("Under the carrier: clean and dry.");
        yield return Say.Of("Fit: it closes without force; if not, cloth has shrunk.");
        yield return Say.Of("Cable: no crack, no scraped jacket, connectors dry and locked.");
        if (UsesHookAndLoop(job))
        {
            yield return Say.Of("Hook-and-loop: holds as it did when new.");
        }
    }
}
