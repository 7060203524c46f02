using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Checks;

public sealed class RoomChecksTests
{
    [Fact]
    public void Without_room_to_keep_there_is_no_check() => Assert.Empty(Of(Plain));

    /// <summary>
    /// 20 on every side: borders of 32.7 and 20; later panels up to 1100 + 40 by 550 + 40. The pockets cover
    /// (0 + 15) + (12.7 + 15) − 3 = 39.7 as without it, for the cells may come 20 nearer both ways.
    /// </summary>
    [Fact]
    public void Pockets_are_made_for_the_later_panel()
    {
        var job = Keeping(Plain, 20);
        var pocket = MountedShape.Of(job, LongSide.Athwart).Fastened.Pockets[0];

        Assert.Equal(39.7, pocket.Covers.Millimeters, 6);
        Assert.Equal(
            [(Verdict.Pass, 1140.0, 1140.0), (Verdict.Pass, 590.0, 590.0)],
            Of(job).Select(check => (check.Verdict, Math.Round(check.Measured.Value!.Value.Millimeters, 6), Math.Round(check.Measured.Limit!.Value.Millimeters, 6))));
    }

    /// <summary>
    /// A leg of 113.25 covers 113.25 − 12.35 − 40.9 = 60, so the borders at a corner must add up to 60 + 3 − 30 = 33. At the
    /// full width forward and aft are 12.7, so the sides need 20.3 each: 1140 − 40.6 = 1099.4 long. At the full length the
    /// sides have nothing: 615.4 − 66 = 549.4 wide.
    /// </summary>
    [Fact]
    public void A_leg_that_is_too_long_for_the_later_panel_is_told()
    {
        var checks = Of(Keeping(Plain, 20).With(Pocket with { Leg = Mm(113.25) }));

        Assert.Equal(
            [(Verdict.Caution, 1099.4), (Verdict.Caution, 549.4)],
            checks.Select(check => (check.Verdict, Math.Round(check.Measured.Value!.Value.Millimeters, 6))));
        Assert.All(checks, check => Assert.Contains("Shorten pocket.leg", check.Advice, StringComparison.Ordinal));
    }

    private static List<CheckResult> Of(CarrierJob job) =>
        [.. JobChecks.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(Mm(800), Mm(0))))).Where(check => check.Code == CheckCodes.KeepRoom)];

    private static CarrierJob Keeping(CarrierJob job, double each)
    {
        var kept = Sides.All(Mm(each));
        var border = Sides.Of(side => job.Carrier.Border[side] + kept[side]);
        return job with { Carrier = job.Carrier with { Border = border, Room = job.Carrier.Room with { Kept = kept } } };
    }
}
