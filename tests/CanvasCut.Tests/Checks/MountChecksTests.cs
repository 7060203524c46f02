using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Checks;

/// <summary>
/// Worked by hand for the plain job, whose carrier lifts with 175.96 N at 35 kn (see the hold-down's tests): 87.98 N an edge, 79.98 N/m.
/// </summary>
public sealed class MountChecksTests
{
    /// <summary>
    /// The snaps' middle lies 12.7 out, the chain 9.5: 597.6 apart; 2 x 79.98 / 0.5976 = 267.67 Pa. It lies at 800 - 300.4, 439.6 from bow 1, and
    /// the chain 442.8 from bow 2, so 47.6 + 439.6 + 442.8 = 930 mm stretch: T^3 x 0.93 / 40000 = 267.67^2 x 0.5976^3 / 24 = 637.1, T = 301.49;
    /// with 159.96 upright 341.30 N/m. 11 snaps share 1.1 m: 34.13 N each. 60 N by 3 are 20 N. At 24.24 kn, 0.6926 of the wind,
    /// 159.96 x 0.4797 = 76.73 and 301.49 x 0.6128 = 184.8 make 200.0 N/m, 20 N.
    /// </summary>
    [Fact]
    public void A_snap_bears_the_pull_and_its_share_twice()
    {
        var hold = HoldOf(Strong(MountKind.Snaps, MountKind.Zipper)).Holds.Single(part => part.Code == CheckCodes.WindFastener);

        Assert.Equal("forward snaps", hold.Subject);
        Assert.Equal((34.13, 20), (Math.Round(QuantityWords.Plain(hold.Load.Reading!.Value).Number, 2), QuantityWords.Plain(hold.Load.Reading.Limit!).Number));
        Assert.Equal(24.24, hold.HoldsTo.Knots, 0.01);
    }

    /// <summary>
    /// What lifts peels: 87.98 / 1.0492 x 2 = 167.71 N/m; 1 lbf an inch is 175.13 N/m, by 3 58.38; it holds to 35 x sqrt(58.38 / 167.71) = 20.65 kn, and
    /// the whole comes off there: below 22 kn that fails.
    /// </summary>
    [Fact]
    public void Hook_and_loop_peels_in_a_fresh_breeze()
    {
        var job = SampleJobs.Plain.Held(MountKind.HookAndLoop, MountKind.Zipper);
        var hold = HoldOf(job);

        Assert.Equal(20.65, hold.OffAt.Knots, 0.01);
        Assert.Equal("forward hook-and-loop", hold.Weakest.Subject);
        Assert.Equal(Verdict.Fail, Assert.Single(Of(job), check => check.Code == CheckCodes.WindOff).Verdict);
    }

    /// <summary>No public figure was found for a fastener, so it is told that the check is not made, and the whole is never a pass.</summary>
    [Fact]
    public void A_fastener_of_unknown_strength_is_not_judged()
    {
        var checks = Of(SampleJobs.Plain.Held(MountKind.Twist, MountKind.Lacing));

        Assert.Equal(
            ["forward twist fasteners", "aft lacing"],
            checks.Where(check => check is { Code: CheckCodes.WindFastener, Verdict: Verdict.NotChecked }).Select(check => check.Subject));
        Assert.Equal(Verdict.Caution, Assert.Single(checks, check => check.Code == CheckCodes.WindOff).Verdict);
    }

    /// <summary>
    /// By hand: 92.22 mm from snap to snap, 92.22 - 15 = 77.22 from rim to rim; (25.4 - 15)/2 = 5.2 to the flap's edge. The mouth of a
    /// pocket that covers 39.7 is the line where both distances from the corner add up to that: the first snap, 25.4 + 63.5 = 88.9
    /// along and 12.7 out, lies (88.9 - 12.7 - 39.7)/sqrt(2) - 7.5 = 18.31 from it.
    /// </summary>
    [Theory]
    [InlineData(CheckCodes.MountPitch, 92.22)]
    [InlineData(CheckCodes.MountRoom, 77.22)]
    [InlineData(CheckCodes.MountEdge, 5.2)]
    [InlineData(CheckCodes.MountReach, 18.31)]
    public void The_distances_are_those_worked_out_by_hand(string code, double value)
    {
        var check = Assert.Single(Of(SampleJobs.Plain.Held(MountKind.Snaps, MountKind.Zipper)), check => check.Code == code);

        Assert.Equal(Verdict.Pass, check.Verdict);
        Assert.Equal(value, check.Measured.Value!.Value.Millimeters, 0.02);
    }

    /// <summary>
    /// One change each from what passes: 922.2 mm in spaces of at most 200 are 5 of 184.4, more than 152.4; caps of 90 mm leave 2.2
    /// between them, and are wider than the flap; an end distance of 20 mm puts the first snap 25.4 + 20 = 45.4 along, under the mouth.
    /// </summary>
    [Theory]
    [InlineData(CheckCodes.MountPitch, 200, 63.5, 15, Verdict.Caution)]
    [InlineData(CheckCodes.MountRoom, 101.6, 63.5, 90, Verdict.Fail)]
    [InlineData(CheckCodes.MountEdge, 101.6, 63.5, 20, Verdict.Fail)]
    [InlineData(CheckCodes.MountReach, 101.6, 20, 15, Verdict.Fail)]
    public void A_check_sees_what_does_not_hold(string code, double pitch, double end, double diameter, Verdict verdict)
    {
        var spec = new FastenerSpec(SampleJobs.Mm(25.4), new(SampleJobs.Mm(pitch), SampleJobs.Mm(end)), SampleJobs.Mm(diameter), null);

        Assert.Equal(verdict, Assert.Single(Of(WithSnaps(SampleJobs.Plain.Held(MountKind.Snaps, MountKind.Zipper), spec)), check => check.Code == code).Verdict);
    }

    /// <summary>2 + 4 + 11 + 10 + 1: more than 20.</summary>
    [Fact]
    public void Too_many_movements_are_a_caution()
    {
        var check = Assert.Single(Of(SampleJobs.Plain.Held(MountKind.Snaps, MountKind.Lacing)), check => check.Code == CheckCodes.MountRemoval);

        Assert.Equal((Verdict.Caution, 28), (check.Verdict, QuantityWords.Plain(check.Measured.Reading!.Value).Number));
    }

    [Fact]
    public void Zippers_alone_have_none_of_these_checks() =>
        Assert.DoesNotContain(Of(SampleJobs.Plain), check => check.Code.StartsWith("mount.", StringComparison.Ordinal) || check.Code is CheckCodes.TubeMount or CheckCodes.WindFastener);

    private static CarrierJob Strong(MountKind forward, MountKind aft)
    {
        var job = SampleJobs.Plain.Held(forward, aft);
        return WithSnaps(job, job.Fastenings.Mount.Figures.Snaps with { Strength = Force.FromNewtons(60) });
    }

    private static CarrierJob WithSnaps(CarrierJob job, FastenerSpec snaps) => job with
    {
        Fastenings = job.Fastenings with { Mount = job.Fastenings.Mount with { Figures = job.Fastenings.Mount.Figures with { Snaps = snaps } } },
    };

    private static HoldDown HoldOf(CarrierJob job) => HoldDown.Of(job, FitChoice.For(job).Mounted);

    private static IEnumerable<CheckResult> Of(CarrierJob job) => [.. JobChecks.Of(PatternSet.Of(job, FitChoice.For(job).Mounted))];
}
