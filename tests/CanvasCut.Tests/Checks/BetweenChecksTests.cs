using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Checks;

/// <summary>
/// Room to work between two carriers, worked by hand. A carrier of the plain job is 1100 athwart (no borders at the sides) and
/// 550 + 2 × 12.7 = 575.4 fore and aft, half of it 287.7. Its chains lie 9.5 outside its ends, the tapes reach 9.5 + 38.1 / 2 = 28.55 out, a pocket
/// 12.35 further: 40.9 beyond an end, 12.35 beyond a side. A zipper starts 25.4 from the port corner.
/// </summary>
public sealed class BetweenChecksTests
{
    private static readonly CarrierJob Bare = SampleJobs.Plain.With(strip: SampleJobs.Strip with { Edges = [] });

    /// <summary>By hand, side by side with 100 between them: pockets reach 12.35 into it from both sides, 75.3 is left.</summary>
    [Fact]
    public void Pockets_side_by_side() => Is(75.3, 15, Verdict.Pass, Of(Checks(Bare, (800, -600), (800, 600)), CheckCodes.BetweenPockets));

    /// <summary>By hand: the starboard carrier's zipper starts at 50 + 25.4 = 75.4, the port one's pocket ends at -50 + 12.35 = -37.65: 113.05.</summary>
    [Fact]
    public void A_pull_beside_a_pocket() => Is(113.05, 50, Verdict.Pass, Of(Checks(Bare, (800, -600), (800, 600)), CheckCodes.BetweenPulls));

    /// <summary>By hand with 30 between them: 15 + 25.4 - (-15 + 12.35) = 43.05, less than two fingers; and 30 - 2 × 12.35 = 5.3 between the pockets.</summary>
    [Fact]
    public void Too_near_is_told()
    {
        var checks = Checks(Bare, (800, -565), (800, 565));

        Is(43.05, 50, Verdict.Caution, Of(checks, CheckCodes.BetweenPulls));
        Is(5.3, 15, Verdict.Caution, Of(checks, CheckCodes.BetweenPockets));
        Assert.Equal(["port-pocket-forward-starboard", "starboard-pocket-forward-port"], Of(checks, CheckCodes.BetweenPockets).About.Parts.Select(part => part.Id));
    }

    /// <summary>Sides that nothing holds are not closed by hand.</summary>
    [Fact]
    public void Where_no_edge_faces_the_other_no_hand_goes() =>
        Assert.DoesNotContain(Checks(SampleJobs.Plain, (800, -600), (800, 600)), check => check.Code is CheckCodes.BetweenHands or CheckCodes.BetweenStrips);

    /// <summary>
    /// By hand, one behind the other, middles 800 apart: from end to end 800 - 575.4 = 224.6. The hand beside the tape has 224.6 - 28.55 - 40.9 =
    /// 155.15, the pockets 224.6 - 2 × 40.9 = 142.8, the pull 224.6 - 9.5 - 40.9 = 174.2. A hundred nearer the hand has 55.15.
    /// </summary>
    [Fact]
    public void One_behind_the_other()
    {
        var checks = Checks(Bare, (400, 0), (1200, 0));

        Is(155.15, 60, Verdict.Pass, Of(checks, CheckCodes.BetweenHands));
        Is(142.8, 15, Verdict.Pass, Of(checks, CheckCodes.BetweenPockets));
        Is(174.2, 50, Verdict.Pass, Of(checks, CheckCodes.BetweenPulls));
        Is(55.15, 60, Verdict.Caution, Of(Checks(Bare, (400, 0), (1100, 0)), CheckCodes.BetweenHands));
    }

    /// <summary>By hand: the forward panel ends at 400 + 550 / 2 = 675, the aft carrier's strip, where it is drawn, begins so far behind it; laid back it reaches as far as it is deep.</summary>
    [Theory]
    [InlineData(1200, Verdict.Pass)]
    [InlineData(1040, Verdict.Caution)]
    public void A_strip_laid_back(double station, Verdict verdict)
    {
        var checks = Checks(SampleJobs.Plain, (400, 0), (station, 0));
        var strip = Assert.Single(MountedShape.Of(SampleJobs.Plain, LongSide.Athwart).At(new(SampleJobs.Mm(station), SampleJobs.Mm(0))).Fastened.Strips).Finished;

        Is(-675 - strip.Top, strip.HeightMm, verdict, Of(checks, CheckCodes.BetweenStrips));
    }

    /// <summary>By hand: the starboard panel begins at 50, its box 100 further to starboard; the port carrier's pocket ends at -37.65: 187.65.</summary>
    [Fact]
    public void A_cable_beside_a_pocket()
    {
        var box = new JunctionBox(SampleJobs.Mm(100), SampleJobs.Mm(20), SampleJobs.Mm(90), SampleJobs.Mm(60), SampleJobs.Mm(15));
        var boxed = Bare with { Panel = Bare.Panel with { Fittings = Bare.Panel.Fittings with { JunctionBox = box } } };

        Is(187.65, 40, Verdict.Pass, Of(Checks(boxed, (800, -600), (800, 600)), CheckCodes.BetweenCables));
    }

    [Fact]
    public void Without_box_and_exit_cables_are_not_checked() => Assert.Equal(Verdict.NotChecked, Of(Checks(Bare, (800, -600), (800, 600)), CheckCodes.BetweenCables).Verdict);

    /// <summary>The limits are the job's own.</summary>
    [Fact]
    public void Limits_can_be_edited()
    {
        var wide = Bare with { Limits = Bare.Limits with { Between = new(SampleJobs.Mm(76), SampleJobs.Mm(114), SampleJobs.Mm(60), SampleJobs.Mm(40)) } };
        var checks = Checks(wide, (800, -600), (800, 600));

        Is(75.3, 76, Verdict.Caution, Of(checks, CheckCodes.BetweenPockets));
        Is(113.05, 114, Verdict.Caution, Of(checks, CheckCodes.BetweenPulls));
    }

    private static void Is(double foundMm, double neededMm, Verdict verdict, CheckResult check)
    {
        Assert.Equal(foundMm, check.Measured.Value!.Value.Millimeters, 1e-6);
        Assert.Equal(neededMm, check.Measured.Limit!.Value.Millimeters, 1e-6);
        Assert.Equal(verdict, check.Verdict);
    }

    private static CheckResult Of(ImmutableArray<CheckResult> checks, string code) => Assert.Single(checks, check => check.Code == code);

    private static ImmutableArray<CheckResult> Checks(CarrierJob job, params (double Station, double Offset)[] places)
    {
        ImmutableArray<PlacedMounting> mountings = [.. places.Zip(["port", "starboard"], (place, name) => Placed(job with { Mounting = new(name) }, place))];
        return JobChecks.Of(new PlacedTop(new([.. mountings.Select(each => each.Job)], [], 1), mountings, []));
    }

    private static PlacedMounting Placed(CarrierJob job, (double Station, double Offset) place)
    {
        var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(place.Station), SampleJobs.Mm(place.Offset)));
        return new(job, new(mounted, [], IsPlaceChosen: false));
    }
}
