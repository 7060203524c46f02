using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Checks;

/// <summary>
/// By hand: a panel of 1100 by 550 with a forward border of 60 mm and hems of 25.4, so that 34.6 mm are free between hem and panel. A
/// hole of 14 mm in the middle of that, 17.3 mm before the panel, is 10.3 mm from hem and panel; its patch is 34.6 deep and
/// 14 + 2 × 38.1 = 90.2 wide, and its rows lie 3 mm inside: 17.3 − 3 − 7 = 7.3 mm from the hole, more than the flange's 6.
/// </summary>
public sealed class CableChecksTests
{
    [Fact]
    public void A_hole_in_a_wide_border_is_clear_and_its_patch_fits_between_hem_and_panel()
    {
        var job = Job(border: 60, fromForward: -17.3);
        var (clear, hole) = (Assert.Single(Results(job), check => check.Code == CheckCodes.CableClear), Assert.Single(CableHole.All(job, Mounted(job))));

        Assert.Equal((Verdict.Pass, 7.3), (clear.Verdict, Math.Round(clear.Measured.Value!.Value.Millimeters, 6)));
        Assert.Equal((34.6, 90.2), (Math.Round(hole.Patch.HeightMm, 6), Math.Round(hole.Patch.WidthMm, 6)));
        Assert.Equal(Verdict.Pass, Assert.Single(Results(job), check => check.Code == CheckCodes.CableReach).Verdict);
    }

    /// <summary>4.7 mm further out the hole's edge is 12.6 − 7 = 5.6 mm from the hem: too near for the flange of 6.</summary>
    [Fact]
    public void A_hole_too_near_the_hem_fails_by_the_hems_name()
    {
        var failed = Results(Job(border: 60, fromForward: -22)).Where(check => check.Code == CheckCodes.CableClear).ToDictionary(check => check.Subject, check => Math.Round(check.Measured.Value!.Value.Millimeters, 6), StringComparer.Ordinal);

        Assert.Equal(5.6, failed["cable hole and hems of the carrier"]);
        Assert.DoesNotContain("cable hole and cells", failed.Keys);
    }

    /// <summary>From panel to hem there are no 34 mm in a border of 1 in: the hole lies in the hem, between its rows and the zipper's.</summary>
    [Fact]
    public void A_hole_in_an_inch_of_border_fails() =>
        Assert.Contains(Results(Job(border: 25.4, fromForward: -12.7)), check => check.Code == CheckCodes.CableClear && check.Verdict == Verdict.Fail);

    /// <summary>150 mm inside the panel: under cells, and never reached once the panel is bonded.</summary>
    [Fact]
    public void A_hole_in_the_panels_middle_fails_with_a_box_on_the_face()
    {
        var results = Results(Job(border: 25.4, fromForward: 150));

        Assert.Equal(Verdict.Fail, Assert.Single(results, check => check.Code == CheckCodes.CableReach).Verdict);
        Assert.Contains(results, check => check is { Code: CheckCodes.CableClear, Verdict: Verdict.Fail, Subject: "cable hole and cells" });
    }

    [Theory]
    [InlineData(-17.3, "bond", "set-grommet")]
    [InlineData(150, "bush-hole", "bond")]
    public void A_hole_under_the_panel_is_bushed_before_it_is_bonded_one_beside_it_after(double fromForward, string first, string then)
    {
        var job = Job(border: 60, fromForward);
        var order = WorkOrder.Of(PatternSet.Of(job, Mounted(job))).Steps.Select(step => step.Step.Task.Id).ToList();

        Assert.InRange(order.IndexOf(first), 0, order.IndexOf(then) - 1);
    }

    /// <summary>The hole lies 20 mm from the port edge; the patch of 90.2 is drawn with its middle 45.1 inside it, and so are its rows and its picture.</summary>
    [Fact]
    public void The_patch_is_sewn_where_it_is_drawn()
    {
        var job = Job(border: 25.4, fromForward: 300, fromPort: 20);
        var mounted = Mounted(job);
        var hole = Assert.Single(CableHole.All(job, mounted));

        Assert.Equal(mounted.CarrierBox.Left + 45.1, hole.Patch.Center.X, 1e-9);
        Assert.Equal(mounted.CarrierBox.Left + 20, hole.Middle.X, 1e-9);
        var drawn = PatternSet.Of(job, mounted).WholeCarrier.Lines.Single(line => line.Text == "cable exit patch");
        Assert.Equal(hole.Patch.Center.X - mounted.CarrierBox.Center.X, CanvasCut.Geometry.Box.Holding(drawn.Points).Center.X, 1e-9);
    }

    /// <summary>A box of 18 mm hangs free over 18 + 5 = 23 mm of support.</summary>
    [Fact]
    public void A_panel_on_its_face_is_supported_round_its_box()
    {
        var cure = CureOf(18);

        Assert.Contains("23 mm", cure, StringComparison.Ordinal);
        Assert.Contains("nothing over the box", cure, StringComparison.Ordinal);
        Assert.DoesNotContain("face down", CureOf(-18), StringComparison.Ordinal);
    }

    /// <summary>Between panel and carrier there is the foam tape's 1 mm.</summary>
    [Fact]
    public void A_box_at_the_back_is_told_to_be_impossible()
    {
        var back = Assert.Single(Results(WithBox(SampleJobs.Plain, -18)), check => check.Code == CheckCodes.BoxBack);

        Assert.Equal((Verdict.Fail, 18, 1), (back.Verdict, back.Measured.Value!.Value.Millimeters, back.Measured.Limit!.Value.Millimeters));
        Assert.DoesNotContain(Results(WithBox(SampleJobs.Plain, 18)), check => check.Code == CheckCodes.BoxBack);
    }

    private static string CureOf(double height)
    {
        var job = WithBox(SampleJobs.Plain, height);
        return WorkOrder.Of(PatternSet.Of(job, Mounted(job))).Steps.Single(step => step.Step.Task.Id == "cure").Step.Task.Do;
    }

    private static CarrierJob WithBox(CarrierJob job, double height) => job with
    {
        Panel = job.Panel with { Fittings = job.Panel.Fittings with { JunctionBox = new(SampleJobs.Mm(500), SampleJobs.Mm(30), SampleJobs.Mm(100), SampleJobs.Mm(60), SampleJobs.Mm(height)) } },
    };

    private static CarrierJob Job(double border, double fromForward, double fromPort = 550)
    {
        var job = WithBox(SampleJobs.Plain, 15) with { Carrier = SampleJobs.Carrier with { Border = new(SampleJobs.Mm(border), SampleJobs.Mm(12.7), SampleJobs.Mm(0), SampleJobs.Mm(0)) } };
        return job with { Panel = job.Panel with { Fittings = job.Panel.Fittings with { CableExit = new(SampleJobs.Mm(fromPort), SampleJobs.Mm(fromForward), SampleJobs.Mm(14)) } } };
    }

    private static MountedShape Mounted(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)));

    private static ImmutableArray<CheckResult> Results(CarrierJob job) => JobChecks.Of(PatternSet.Of(job, Mounted(job)));
}
