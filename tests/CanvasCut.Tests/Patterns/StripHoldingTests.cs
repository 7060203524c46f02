using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Takeoff;
using UnitsNet;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Patterns;

/// <summary>
/// What holds a weather strip's free edge; worked by hand. A panel of 1100 by 550 with 50 of border all round, so a carrier of 1200 by 650 with its
/// middle at the origin. Pockets of 120: their legs lie 12.35 and 28.55 + 12.35 = 40.9 out, so each covers 66.75. Overlap 35, snaps of 15, rods of 6.35.
/// </summary>
public sealed class StripHoldingTests
{
    /// <summary>
    /// On the carrier a rim lies 6 + 3 beside the pocket's mouth, so the first middle 66.75 + 9 + 7.5 = 83.25 from the corner; 1033.5 are left between first and last,
    /// six spaces of 172.25 for at most 203.2. On the top the pocket reaches as far as its leg, 66.75 + 40.9: 124.15, and 951.7 are five spaces of 190.34. Across it lies 3 + 7.5 inside the free edge: on the top's strip 325 − 35 + 10.5 = 300.5, on the carrier's 325 + 28.55 + 35 − 10.5 = 378.05.
    /// </summary>
    [Theory]
    [InlineData(StripGround.Top, 7, 172.25, 516.75, 300.5)]
    [InlineData(StripGround.Carrier, 6, 190.34, 475.85, 378.05)]
    public void Snaps_lie_where_they_were_worked_out(StripGround ground, int count, double pitch, double x, double y)
    {
        var holding = StripOf(Job(StripHold.Snaps, ground)).Holding!;

        Assert.Equal((count, pitch), (holding.Centres.Length, Math.Round(holding.Pitch.Millimeters, 6)));
        Assert.Equal((-x, y), (Math.Round(holding.Centres[0].X, 6), Math.Round(holding.Centres[0].Y, 6)));
        Assert.Equal((x, y), (Math.Round(holding.Centres[^1].X, 6), Math.Round(holding.Centres[^1].Y, 6)));
    }

    /// <summary>15 + 3 to the fold + 3 to the row + 3 behind it are 24, 16 of a square 25; half way round a rod (6.35π + 6)/2 and 3 are 15.97, of one of 4 mm 12.28, no more than which is turned in.</summary>
    [Theory]
    [InlineData(StripHold.Nothing, 6.35, 12.7, 12.7)]
    [InlineData(StripHold.Snaps, 6.35, 12.7, 24)]
    [InlineData(StripHold.HookAndLoop, 6.35, 12.7, 25)]
    [InlineData(StripHold.Rod, 6.35, 12.7, 15.9746)]
    [InlineData(StripHold.Rod, 4, 12.2832, 12.2832)]
    public void The_hem_is_as_wide_as_what_it_takes(StripHold held, double rod, double turn, double width)
    {
        var job = Job(held, StripGround.Top);
        var hem = StripHolding.FreeHem(job.Fastenings.WeatherStrip with { Rod = Mm(rod) }, StripHolding.SizeOf(job.Fastenings));

        Assert.Equal((turn, width), (Math.Round(hem.TurnUnder.Millimeters, 4), Math.Round(hem.Width.Millimeters, 4)));
    }

    /// <summary>
    /// With a rod: 56.25 + 35 deep; 12.7 of seam and 12.7 + 15.97 of hem. 1250.8 long, 12.7 once at each end. The ends are folded before the hem, whose ends
    /// stay open; where it goes over them the needle meets 3 × 2 plies.
    /// </summary>
    [Fact]
    public void A_rods_hem_is_folded_over_the_ends()
    {
        var patterns = PatternSet.Of(Job(StripHold.Rod, StripGround.Top), Mounted(Job(StripHold.Rod, StripGround.Top)));
        var piece = patterns.Whole(PieceKind.WeatherStrip, Side.Forward)!;
        var hems = Assert.Single(JobSeams.Of(patterns), seam => seam.Kind == SeamKind.Hems && seam.Pieces.Contains(piece.Key));

        Assert.Equal((1276.2, 132.6246), (Math.Round(piece.CutSize.Athwart.Millimeters, 4), Math.Round(piece.CutSize.ForeAft.Millimeters, 4)));
        Assert.Equal(6, hems.Thickest(patterns.Job.Workshop.Supplies).Plies);
        Assert.DoesNotContain(piece.Lines, line => line.Shows == LineShows.Mitre);
        Assert.Equal(-45.625, piece.Folds.Reverse().Skip(1).First().On.Y, 1e-6);
    }

    /// <summary>
    /// On the top's strip the rim comes 35 − 3 − 15 = 17 from the edge, the zipper's tape to 9.55: 7.45 between. 50 of border less 32 leave 18 to the panel. With 15.9 of
    /// overlap it lies 11.65 on the tape, and 9.55 + 3 + 15 + 3 = 30.55 would do; then 30.55 of border are needed. On the carrier's strip 35 − 18 = 17 are left to the tape.
    /// </summary>
    [Theory]
    [InlineData(StripGround.Top, 35, 50, 7.45, 18.0, "")]
    [InlineData(StripGround.Top, 15.9, 50, -11.65, 37.1, "weather_strip.overlap to 30.6 mm")]
    [InlineData(StripGround.Top, 30.55, 25.4, 3, -2.15, "carrier.border.forward to 30.6 mm")]
    [InlineData(StripGround.Carrier, 35, 50, 17, null, "")]
    public void Snaps_keep_clear_of_tape_and_panel(StripGround ground, double overlap, double border, double toTape, double? toPanel, string remedy)
    {
        var job = Job(StripHold.Snaps, ground, border);
        var checks = JobChecks.Of(WorkOrderTests.Patterned(job.With(strip: job.Fastenings.WeatherStrip with { Overlap = Mm(overlap) }))).Where(check => check.Code == CheckCodes.StripHold && check.Measured.Value is not null).ToList();

        Assert.Equal(toPanel is { } panel ? [toTape, panel] : [toTape], checks.Select(check => Math.Round(check.Measured.Value!.Value.Millimeters, 6)));
        Assert.Equal(remedy.Length > 0, checks.Any(check => check.Verdict == Verdict.Fail));
        Assert.Contains(remedy, string.Concat(checks.Select(check => check.Advice)), StringComparison.Ordinal);
    }

    /// <summary>Seven snaps; seven squares of 16 are 112 mm of hook and as much loop; a rod of 1250.8 − 20, with two caps.</summary>
    [Theory]
    [InlineData(StripHold.Snaps, "7 at 172.3 mm")]
    [InlineData(StripHold.HookAndLoop, "squares of 16 mm")]
    [InlineData(StripHold.Rod, "1230.8 mm")]
    public void What_holds_it_is_ordered(StripHold held, string told)
    {
        var needs = StripHoldOrder.Of(WorkOrderTests.Patterned(Job(held, StripGround.Top))).ToList();

        Assert.Equal(held == StripHold.Rod ? 2 : 1, needs.Count);
        Assert.Contains(told, string.Join(' ', needs.Select(need => $"{need.Thing.Name} {need.Also}")), StringComparison.Ordinal);
    }

    /// <summary>What is the carrier's is set before the bond, what is the top's before it goes back on its frame.</summary>
    [Fact]
    public void It_is_set_in_time() => Assert.All(
        from held in new[] { StripHold.HookAndLoop, StripHold.Snaps, StripHold.Rod }
        from ground in Enum.GetValues<StripGround>()
        select (held, ground),
        each =>
        {
            var patterns = WorkOrderTests.Patterned(Job(each.held, each.ground));
            var order = WorkOrder.Of(patterns);
            string[] ids = [.. order.Steps.Select(step => step.Step.Task.Id)];
            bool IsBefore(string one, string other) => Array.IndexOf(ids, one) is >= 0 and var at && at < Array.IndexOf(ids, other);

            Assert.Empty(new WorkAudit(patterns, order).Faults());
            Assert.Equal(each is not (StripHold.Rod, StripGround.Top), IsBefore("hold-strips-carrier", "bond"));
            Assert.Equal(each is not (StripHold.Rod, StripGround.Carrier), IsBefore("hold-strips-top", "put-top-back"));
        });

    /// <summary>Cover, plug, two zippers and four corners are 8; each snap is one more, hook-and-loop one pull.</summary>
    [Theory]
    [InlineData(StripHold.Nothing, 8)]
    [InlineData(StripHold.Rod, 8)]
    [InlineData(StripHold.HookAndLoop, 9)]
    [InlineData(StripHold.Snaps, 15)]
    public void It_takes_so_many_movements_more(StripHold held, int movements) =>
        Assert.Equal(movements, RemovalActions.Of(Mounted(Job(held, StripGround.Top)).Fastened));

    /// <summary>
    /// Each square has 4 rows of 16 − 6 = 10 mm. On the strip they lie 6 to 16 from its edge, and its hem of 25 has its third ply from 12.3 on: three and the square. Under
    /// it they lie 19 to 29 from the carrier's edge, whose hem of 50.8 has its third ply from 38.1 on: two and the square.
    /// </summary>
    [Fact]
    public void Squares_are_sewn_all_round()
    {
        var patterns = PatternSet.Of(Job(StripHold.HookAndLoop, StripGround.Top), Mounted(Job(StripHold.HookAndLoop, StripGround.Top)));
        var seams = JobSeams.Of(patterns).Where(seam => seam.Kind == SeamKind.Mount).ToList();

        Assert.Equal(2, seams.Count);
        Assert.All(seams, seam => Assert.Equal(7 * 40, seam.Sewn.Millimeters, 1e-6));
        Assert.Equal([new LayerCount(2, HookAndLoop: 1), new LayerCount(3, HookAndLoop: 1)], seams.Select(seam => seam.Thickest(patterns.Job.Workshop.Supplies)));
    }

    private static StripPlace StripOf(CarrierJob job) => Assert.Single(Mounted(job).Fastened.Strips);

    private static MountedShape Mounted(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart);

    private static CarrierJob Job(StripHold held, StripGround ground, double border = 50) => (Plain with { Carrier = Carrier with { Border = Sides.All(Mm(border)), Hem = new(Mm(12.7), Mm(50.8)) } })
        .With(Pocket with { Leg = Mm(120) }, strip: Strip with { Overlap = Mm(35), SewnTo = Sides.All(ground), Held = held, Pitch = Mm(203.2), Square = Mm(16), Rod = Mm(6.35) });
}
