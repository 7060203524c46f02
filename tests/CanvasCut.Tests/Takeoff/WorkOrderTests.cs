using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.JobFiles;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Job;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Takeoff;

public sealed class WorkOrderTests
{
    private static readonly PatternSet Plain = Patterned(SampleJobs.Plain with
    {
        Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(820), SampleJobs.BowAt(1540)]),
        Carrier = SampleJobs.Carrier with { Position = new(SampleJobs.Mm(800), SampleJobs.Mm(0)) },
    });

    private static readonly Gen<WorkSpec> AnyWork = Gen.Select(
        Gen.Int[15, 1440], Gen.Int[1, 400], Gen.Bool, (minutes, cure, sewFirst) =>
            new WorkSpec(Duration.FromMinutes(minutes), Duration.FromHours(cure), sewFirst ? BondOrder.SewFirst : BondOrder.BondFirst));

    /// <summary>Any job that is read at all, with any working day, cure and order of the bond.</summary>
    [Fact]
    public void Any_order_of_work_can_be_followed() =>
        Gen.Select(AnyJobTests.AnyText, AnyWork).Sample((text, work) => Follow(text, work), iter: 300);

    /// <summary>The examples with each wish, bonded before or after the sewing; the proof would be empty if no job had these kinds.</summary>
    [Fact]
    public void The_order_of_work_of_every_kind_of_job_can_be_followed()
    {
        var seen = AnyJobTests.ExamplesWithWishes
            .SelectMany(_ => new[] { BondOrder.SewFirst, BondOrder.BondFirst }, (text, bond) => Follow(text, new(Duration.FromHours(4), Duration.FromHours(72), bond)))
            .SelectMany(patterns => patterns is null ? [] : KindsOf(patterns))
            .ToHashSet(StringComparer.Ordinal);

        Assert.Superset(
            new HashSet<string>(StringComparer.Ordinal)
            {
                "split carrier", "cable exit", "chafe patch", "no strip", "two strips", "bond first", "sew first", "zippers", "snaps", "twist", "hook-and-loop", "lacing", "sleeve", "Zipper at a side", "Snaps at a side", "Lacing at a side", "HookAndLoop at a side", "Sleeve at a side",
            },
            seen);
    }

    [Fact]
    public void The_same_job_has_the_same_order() => Assert.Equal(Lines(WorkOrder.Of(Plain)), Lines(WorkOrder.Of(Plain)));

    /// <summary>By hand: 72 h after the cure's ten minutes end, whatever is sewn meanwhile, the bond is tried.</summary>
    [Fact]
    public void The_panel_lies_for_72_hours_while_the_pockets_are_made()
    {
        var order = WorkOrder.Of(Plain);
        var (bond, cure, prove) = (Of(order, "bond"), Of(order, "cure"), Of(order, "prove-bond"));

        Assert.InRange((prove.Start - cure.End).Hours, 72 - 1e-9, 7 * 24);
        Assert.All(order.Steps.Where(each => each.Step.Task.Id.StartsWith("ready-", StringComparison.Ordinal)), each => Assert.InRange(each.Number, bond.Number, prove.Number));
    }

    /// <summary>By hand: a cure of 8 h fits into a day of 18 h at the bench, but nobody has to lift the panel the same day, so it is weighted 20 min after it was laid.</summary>
    [Fact]
    public void A_cure_shorter_than_the_day_does_not_keep_a_laid_panel_waiting()
    {
        var order = WorkOrder.Of(Plain with { Job = Plain.Job with { Work = new(Duration.FromMinutes(1099), Duration.FromHours(8), BondOrder.BondFirst) } });

        Assert.Equal(Of(order, "bond").Day, Of(order, "cure").Day);
    }

    /// <summary>
    /// By hand: two steps of 3 h and one of 30 min with days of 4 h. The second does not fit the first day's last hour, so it
    /// begins the second, and the third follows on that day: 6.5 h at the bench over two days.
    /// </summary>
    [Fact]
    public void A_step_that_does_not_fit_the_day_begins_the_next()
    {
        var order = WorkSchedule.Of(Chain(180, 180, 30), Duration.FromHours(4));

        Assert.Equal([0, 24, 27], order.Steps.Select(each => each.Start.Hours));
        Assert.Equal([1, 2, 2], order.Steps.Select(each => each.Day));
        Assert.Equal((6.5, 2), (order.Bench.Hours, order.Days));
    }

    /// <summary>By hand: 9 h of one step with days of 4 h are 4, 4 and 1 h on three days.</summary>
    [Fact]
    public void A_step_longer_than_a_day_goes_on_the_next()
    {
        var order = WorkSchedule.Of(Chain(60, 540, 60), Duration.FromHours(4));

        Assert.Equal([0, 24, 73], order.Steps.Select(each => each.Start.Hours));
        Assert.Equal(4, order.Days);
    }

    [Theory]
    [InlineData("sew-zippers-carrier", "look-again", "sews on the carrier after the bond")]
    [InlineData("flat-work", "cure", "cannot reach the carrier under the needle")]
    [InlineData("sew-pockets-top", "try-on", "sews on the top while it is on its frame")]
    [InlineData("sew-pockets-top", "measure", "comes before the top is marked")]
    [InlineData("sew-zippers-top", "sew-weather-strips-top", "Forward edge lies under weather-strip-forward")]
    [InlineData("sew-chafe-patches-top", "put-top-back", "uses")]
    [InlineData("cap-zippers", "sew-zippers-carrier", "cannot reach the ends of the zipper tapes")]
    [InlineData("hem-carrier", "bond", "uses \"carrier, edges finished\", which is not made")]
    [InlineData("mark-pockets", "take-top-off", "cannot reach the carrier in its place on the top")]
    public void The_audit_sees_a_step_in_the_wrong_place(string moved, string behind, string fault)
    {
        var order = WorkOrder.Of(Plain);
        Assert.Empty(new WorkAudit(Plain, order).Faults());
        var rest = order.Steps.Remove(Of(order, moved));
        var wrong = rest.Insert(rest.IndexOf(Of(order, behind)) + 1, Of(order, moved));

        Assert.Contains(new WorkAudit(Plain, Renumbered(order, wrong)).Faults(), line => line.Contains(fault, StringComparison.Ordinal));
    }

    [Fact]
    public void The_audit_sees_a_cure_that_is_cut_short_and_pieces_cut_twice_or_never()
    {
        var order = WorkOrder.Of(Plain);
        var cut = Of(order, "cut-pieces");
        WorkSchedule[] wrong =
        [
            order with { Steps = [.. order.Steps.Select(each => each.Step.Task.Id == "prove-bond" ? each with { Start = each.Start - Duration.FromHours(1) } : each)] },
            Renumbered(order, order.Steps.Insert(order.Steps.IndexOf(cut), cut)),
            Renumbered(order, order.Steps.Remove(cut)),
        ];
        string[] faults = ["the bond is pulled on after 7", "carrier is cut 2 times", "carrier is cut 0 times"];

        Assert.All(wrong.Zip(faults), pair => Assert.Contains(new WorkAudit(Plain, pair.First).Faults(), line => line.StartsWith(pair.Second, StringComparison.Ordinal)));
    }

    [Fact]
    public void What_is_used_must_be_made() =>
        Assert.Throws<ArgumentException>(() => new WorkGraph([Chain(10).Steps[0] with { Flow = new([], [WorkParts.Done], [], new([], [], [])) }]));

    /// <summary>Sewing first leaves the top sewn before the panel is bonded; bonding first the other way round.</summary>
    [Theory]
    [InlineData(BondOrder.BondFirst, false)]
    [InlineData(BondOrder.SewFirst, true)]
    public void The_job_chooses_when_the_panel_is_bonded(BondOrder choice, bool isAfterTop)
    {
        var order = WorkOrder.Of(Plain with { Job = Plain.Job with { Work = Plain.Job.Work with { Order = choice } } });

        Assert.Equal(isAfterTop, Of(order, "bond").Number > Of(order, "put-top-back").Number);
    }

    /// <summary>By hand, from the rates of docs/work-order.md: two zippers with two rows each of 1049.2 mm are 4.1968 m, at 6 min a metre 25.2 min, with 10 min to set up once 35.2, so 40.</summary>
    [Fact]
    public void The_zippers_time_is_their_rows() =>
        Assert.Equal(40, Of(WorkOrder.Of(Plain), "sew-zippers-carrier").Step.Time.Hands.Minutes, 1e-9);

    internal static PatternSet Patterned(CarrierJob job) => PatternSet.Of(job, FitChoice.For(job).Mounted);

    /// <summary>The patterns of a job whose order of work was proven, or null where the job is not read.</summary>
    private static PatternSet? Follow(string text, WorkSpec work)
    {
        if (JobFile.Read(text, "job.toml").Value?.First is not { } job)
        {
            return null;
        }

        var patterns = Patterned(job with { Work = work });
        Assert.Empty(new WorkAudit(patterns, WorkOrder.Of(patterns)).Faults());
        return patterns;
    }

    private static IEnumerable<string> KindsOf(PatternSet patterns)
    {
        var fastened = patterns.Mounted.Fastened;
        var mount = patterns.Job.Fastenings.Mount;
        (string Kind, bool IsSo)[] kinds =
        [
            ("split carrier", patterns.CarrierPieces.Length > 1),
            ("cable exit", patterns.Job.Panel.Fittings.CableExit is not null),
            ("chafe patch", patterns.TopPieces.Any(piece => piece.Key.Id.StartsWith("chafe", StringComparison.Ordinal))),
            ("no strip", fastened.Strips.Length == 0),
            ("two strips", fastened.Strips.Length == 2),
            ("strip on the carrier", fastened.StripsOnCarrier.Any()),
            .. Enum.GetValues<StripHold>().Select(held => ($"strip held by {held}", fastened.Strips.Any(strip => strip.Holding?.Kind == held))),
            ("zippers", fastened.Flaps.IsEmpty),
            ("snaps", mount.Uses(MountKind.Snaps)),
            ("twist", mount.Uses(MountKind.Twist)),
            ("hook-and-loop", mount.Uses(MountKind.HookAndLoop)),
            ("lacing", mount.Uses(MountKind.Lacing)),
            ("sleeve", mount.Uses(MountKind.Sleeve)),
            .. Enum.GetValues<MountKind>().Select(kind => ($"{kind} at a side", mount.Port == kind || mount.Starboard == kind)),
            ("bond first", patterns.Job.Work.Order == BondOrder.BondFirst),
            ("sew first", patterns.Job.Work.Order == BondOrder.SewFirst),
        ];
        return kinds.Where(each => each.IsSo).Select(each => each.Kind);
    }

    private static ScheduledStep Of(WorkSchedule order, string id) => Assert.Single(order.Steps, each => each.Step.Task.Id == id);

    private static WorkSchedule Renumbered(WorkSchedule order, ImmutableArray<ScheduledStep> steps) =>
        order with { Steps = [.. steps.Select((each, index) => each with { Number = index + 1 })] };

    private static IEnumerable<string> Lines(WorkSchedule order) => order.Steps.Select(each => $"{each.Number} {each.Step.Task.Id} {each.Start} {each.End}");

    private static WorkPart Part(int number) => new(WorkState.Cut, new(new(CanvasCut.Patterns.PieceKind.Carrier, Width: number)), () => $"part {number}");

    /// <summary>Steps that follow each other, each so many minutes long.</summary>
    private static WorkGraph Chain(params int[] minutes) => new(
    [
        .. minutes.Select((length, index) => StepWriting.Step(new($"step-{index}", WorkStage.Fit, WorkKind.Hand, "Step", "Do it."))
            .Using(index == 0 ? [] : [Part(index - 1)]).Making(Part(index)).Taking(Duration.FromMinutes(length))),
    ]);
}
