using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Takeoff;

/// <summary>One order of work for several carriers, walked through as the sewist would.</summary>
public sealed class TogetherWorkTests
{
    private static readonly MadeTogether Pair = Made(SampleJobs.Plain, SampleJobs.Plain);

    private static readonly WorkSchedule Order = WorkOrder.Of(Pair);

    /// <summary>Carriers held alike and otherwise, more than a day's bonding, bonded before and after the top is sewn: each can be followed.</summary>
    [Theory]
    [InlineData(BondOrder.BondFirst, 4, MountKind.Zipper, MountKind.Zipper)]
    [InlineData(BondOrder.SewFirst, 4, MountKind.Zipper, MountKind.Snaps)]
    [InlineData(BondOrder.BondFirst, 2, MountKind.Snaps, MountKind.Lacing)]
    [InlineData(BondOrder.BondFirst, 8, MountKind.HookAndLoop, MountKind.Sleeve)]
    [InlineData(BondOrder.SewFirst, 3, MountKind.Lacing, MountKind.Snaps, MountKind.Twist, MountKind.Zipper)]
    public void Any_order_can_be_followed(BondOrder bond, int hours, params MountKind[] kinds)
    {
        CarrierJob[] jobs = [.. kinds.Select((kind, i) => (SampleJobs.Plain with { Work = new(Duration.FromHours(hours), Duration.FromHours(72), bond) }).Held(kind, kinds[(i + 1) % kinds.Length]))];
        var made = Made(jobs);

        Assert.Empty(Faults(made, WorkOrder.Of(made)));
    }

    /// <summary>One carrier is worked on as ever, whatever it is called.</summary>
    [Fact]
    public void One_carrier_has_its_own_order()
    {
        var one = Made(SampleJobs.Plain);

        Assert.Equal(
            WorkOrder.Of(one.Carriers[0]).Steps.Select(each => (each.Step.Task.Id, each.Step.Task.Name, each.Start)),
            WorkOrder.Of(one).Steps.Select(each => (each.Step.Task.Id, each.Step.Task.Name, each.Start)));
    }

    [Fact]
    public void The_top_is_measured_taken_off_and_put_back_once()
    {
        Assert.All(["measure", "take-top-off", "put-top-back"], id => Assert.Single(Order.Steps, each => each.Step.Task.Id == id));
        Assert.Equal(30, Of("take-top-off").Step.Time.Hands.Minutes, 1e-9);
        Assert.Equal(45 + 10, Of("measure").Step.Time.Hands.Minutes, 1e-9);
        Assert.Empty(Of("take-top-off").Step.Parts);
    }

    /// <summary>Two carriers with four pockets each: eight mouths in one step, each told by its carrier.</summary>
    [Fact]
    public void What_is_done_alike_is_one_step_that_names_whose_each_is()
    {
        var mouths = Of("ready-pockets").Step;

        Assert.Equal("Hem the mouths of 8 pockets", mouths.Task.Name);
        Assert.Equal(8, mouths.Parts.Length);
        Assert.Equal(4, mouths.Parts.Count(part => part.Name.StartsWith("port: ", StringComparison.Ordinal)));
        Assert.Equal(["port", "starboard"], Of("hem-carrier").Step.Parts.Select(part => part.Name));
        Assert.Equal(["port", "starboard"], mouths.Whose.Select(name => name.Text));
    }

    /// <summary>
    /// By hand, from the rates of docs/work-order.md: a carrier's two zippers take 4.1968 m of rows, 25.2 min and 10 to set up, so 40. Of two
    /// carriers that is 80, and the machine is set up once: 70.
    /// </summary>
    [Fact]
    public void The_machine_is_set_up_once() => Assert.Equal(70, Of("sew-zippers-carrier").Step.Time.Hands.Minutes, 1e-9);

    /// <summary>Each panel cures 72 h; both are laid the same day, so both cures run at the same time and end within an hour and a half of each other.</summary>
    [Fact]
    public void The_cures_run_beside_each_other()
    {
        var (port, starboard) = (Of("cure-port"), Of("cure-starboard"));

        Assert.Equal("Bond the panel to the carrier: port", Of("bond-port").Step.Task.Name);
        Assert.Equal(72, (port.Ready - port.End).Hours, 1e-9);
        Assert.InRange((starboard.End - port.End).Minutes, 0, 90);
    }

    /// <summary>What is said of all is said once; what is not, with the name of each.</summary>
    [Fact]
    public void What_is_not_alike_is_told_of_each()
    {
        var order = WorkOrder.Of(Made(SampleJobs.Plain, SampleJobs.Plain.Held(MountKind.Zipper, MountKind.Snaps)));
        var (measure, fit) = (order.Steps.Single(each => each.Step.Task.Id == "measure").Step, order.Steps.Single(each => each.Step.Task.Id == "fit").Step);

        Assert.DoesNotContain("port:", measure.Task.Do, StringComparison.Ordinal);
        Assert.Contains("port: Slide the corners into their pockets, zip forward, then aft", fit.Task.Do, StringComparison.Ordinal);
        Assert.Contains("starboard: Slide the corners into their pockets, zip forward, then snap closed aft", fit.Task.Do, StringComparison.Ordinal);
    }

    /// <summary>Several sets are cut at once, and the order is for one of them.</summary>
    [Fact]
    public void Sets_are_told()
    {
        Assert.Equal(string.Empty, WorkText.Sets(Pair));
        Assert.Contains("all 3", WorkText.Sets(Pair with { Sets = 3 }), StringComparison.Ordinal);
    }

    private static ScheduledStep Of(string id) => Order.Steps.Single(each => each.Step.Task.Id == id);

    private static MadeTogether Made(params CarrierJob[] jobs) => new(
        [
            .. jobs.Zip(["port", "starboard", "aft", "forward"], (job, name) =>
            {
                var named = job with { Mounting = new(name) };
                return PatternSet.Of(named, FitChoice.For(named).Mounted);
            }),
        ],
        1);

    /// <summary>All that cannot be done, found without knowing how the order was made.</summary>
    private static IEnumerable<string> Faults(MadeTogether made, WorkSchedule order)
    {
        var ready = new Dictionary<WorkPart, Duration>();
        var open = new HashSet<WorkReach>(made.Carriers.SelectMany(carrier => WorkAccess.OpenAtFirst.Select(reach => reach.Of(carrier.Job.Mounting))));
        open.UnionWith(order.Steps.SelectMany(each => each.Step.Flow.Access.Closes).Where(reach => reach.IsUnderPart));
        var free = Duration.Zero;
        foreach (var each in order.Steps)
        {
            var (step, flow) = (each.Step, each.Step.Flow);
            foreach (var used in flow.Uses.Where(used => !ready.TryGetValue(used, out var from) || from > each.Start + Duration.FromSeconds(1)))
            {
                yield return $"{step.Task.Id} uses \"{used}\" before it is ready";
            }

            foreach (var barred in flow.Access.Needs.Where(need => !open.Contains(need)))
            {
                yield return $"{step.Task.Id} cannot reach {barred}";
            }

            if (each.Start < free - Duration.FromSeconds(1))
            {
                yield return $"{step.Task.Id} begins while hands are busy";
            }

            if (step is { Advice.Tool: "" } or { Advice.Check: "" } or { Picture.Lines.IsEmpty: true } || step.Time.Hands <= Duration.Zero)
            {
                yield return $"{step.Task.Id} lacks a tool, a check, a picture or a time";
            }

            free = each.End;
            open.ExceptWith(flow.Access.Closes);
            open.UnionWith(flow.Access.Opens);
            foreach (var part in flow.Makes)
            {
                ready[part] = each.Ready;
            }
        }

        foreach (var piece in made.Pieces.Where(piece => order.Steps.Count(each => each.Step.Task.Kind == WorkKind.Cut && each.Step.Flow.Pieces.Contains(piece.Key)) != 1))
        {
            yield return $"{piece.Key} is not cut once";
        }

        foreach (var carrier in made.Carriers)
        {
            var (bond, cure) = (Number(order, "bond", carrier), Number(order, "cure", carrier));
            var keys = carrier.CarrierPieces.Select(piece => piece.Key).ToHashSet();
            if (order.Steps.Any(each => each.Step.Task.Kind == WorkKind.Machine && each.Number > bond.Number && each.Step.Flow.Pieces.Any(keys.Contains)))
            {
                yield return $"{carrier.Job.Mounting} is sewn on after its bond";
            }

            if (cure.Day != bond.Day)
            {
                yield return $"{carrier.Job.Mounting} is laid on day {bond.Day} and weighted on day {cure.Day}";
            }

            if (Number(order, "prove-bond", carrier).Start < cure.Ready - Duration.FromSeconds(1))
            {
                yield return $"{carrier.Job.Mounting} is pulled on before it is cured";
            }
        }
    }

    private static ScheduledStep Number(WorkSchedule order, string id, PatternSet carrier) => order.Steps.Single(each => each.Step.Task.Id == $"{id}-{carrier.Job.Mounting}");
}
