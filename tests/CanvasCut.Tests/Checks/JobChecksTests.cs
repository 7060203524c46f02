using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Checks;

public sealed class JobChecksTests
{
    [Fact]
    public void A_job_that_fits_has_no_failing_check() =>
        Assert.DoesNotContain(ResultsOf(SampleJobs.Plain, 800), check => check.Verdict == Verdict.Fail);

    [Fact]
    public void Results_stand_in_the_order_of_the_codes_and_all_codes_are_known()
    {
        var places = ResultsOf(SampleJobs.Plain, 800).Select(check => CheckCodes.All.IndexOf(check.Code)).ToList();

        Assert.All(places, place => Assert.InRange(place, 0, CheckCodes.All.Length - 1));
        Assert.Equal(places.Order(), places);
    }

    /// <summary>Forward: the seam of the strip 40.9 + 6 and its second row 3 + 6.35 further, 56.25 mm before the carrier's edge, by hand; the carrier is 575.4 mm long.</summary>
    [Fact]
    public void The_forward_margin_is_that_of_the_outermost_part()
    {
        var check = Single(ResultsOf(SampleJobs.Plain, 800), CheckCodes.Margin, "forward edge of the top");

        Assert.Equal(800 - (575.4 / 2) - 56.25, check.Measured.Value!.Value.Millimeters, 1e-9);
        Assert.Equal(25, check.Measured.Limit!.Value.Millimeters);
    }

    [Theory]
    [InlineData(330, Verdict.Fail)]
    [InlineData(400, Verdict.Pass)]
    public void A_carrier_too_near_the_edge_fails(double station, Verdict verdict) =>
        Assert.Equal(verdict, Single(ResultsOf(WithoutBows, station), CheckCodes.Margin, "forward edge of the top").Verdict);

    [Theory]
    [InlineData(1, Verdict.Fail)]
    [InlineData(60, Verdict.Pass)]
    public void A_tube_near_a_zipper_fails(double beyond, Verdict verdict)
    {
        // The forward zipper's tape ends 28.55 mm before the carrier's edge; the tube is 12.7 mm thick to each side.
        var tube = 800 - (575.4 / 2) - 28.55 - 12.7 - beyond;
        var job = SampleJobs.Plain with { Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(tube)]) };
        var check = Single(ResultsOf(job, 800), CheckCodes.TubeZipper, "forward zipper and bow 1");

        Assert.Equal(beyond, check.Measured.Value!.Value.Millimeters, 1e-9);
        Assert.Equal(verdict, check.Verdict);
    }

    [Theory]
    [InlineData(false, Verdict.Fail)]
    [InlineData(true, Verdict.Caution)]
    public void A_tube_under_cells_fails_unless_the_maker_allows_it(bool allows, Verdict verdict)
    {
        var panel = SampleJobs.Plain.Panel;
        var job = SampleJobs.Plain with
        {
            Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(800)]),
            Panel = panel with { Limits = panel.Limits with { AllowsHardPoints = allows } },
        };

        Assert.Equal(verdict, Single(ResultsOf(job, 800), CheckCodes.TubeCells, "cells and bow 1").Verdict);
    }

    /// <summary>Chord 1100 and rise 30 is a radius of 5057 mm (R = c²/8h + h/2, worked by hand); 600 x 1.5 = 900 is allowed.</summary>
    [Theory]
    [InlineData(1100, 30, 5056.7, Verdict.Pass)]
    [InlineData(1100, 300, 654.2, Verdict.Fail)]
    public void The_arc_across_is_held_against_the_panels_radius_and_factor(double chord, double crown, double radius, Verdict verdict)
    {
        var job = SampleJobs.Plain with { Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60, chord, crown)]) };
        var check = Single(ResultsOf(job, 800), CheckCodes.BendAthwart, "arc across at bow 1");

        Assert.Equal(radius, check.Measured.Value!.Value.Millimeters, 0.1);
        Assert.Equal(900, check.Measured.Limit!.Value.Millimeters, 1e-9);
        Assert.Equal(verdict, check.Verdict);
    }

    [Fact]
    public void An_unknown_radius_is_assumed_and_never_passes_without_a_word()
    {
        var panel = SampleJobs.Plain.Panel;
        var job = SampleJobs.Plain with { Panel = panel with { Limits = panel.Limits with { MinBendRadius = null } } };
        var checks = ResultsOf(job, 800).Where(check => check.Code == CheckCodes.BendAthwart).ToList();

        Assert.NotEmpty(checks);
        Assert.All(checks, check => Assert.Equal((Verdict.Caution, 3000), (check.Verdict, check.Measured.Limit!.Value.Millimeters)));
    }

    [Fact]
    public void Without_crown_or_box_what_depends_on_them_is_not_checked()
    {
        var checks = ResultsOf(WithoutBows, 800);

        Assert.Equal(Verdict.NotChecked, Assert.Single(checks, check => check.Code == CheckCodes.BendAthwart).Verdict);
        Assert.Equal(Verdict.NotChecked, Assert.Single(checks, check => check.Code == CheckCodes.BoxCover).Verdict);
    }

    [Fact]
    public void A_pocket_with_a_given_leg_shades_when_it_is_a_millimetre_too_long()
    {
        // The largest is 92.95: see the pocket's hand calculation.
        Verdict WithLeg(double leg) => ResultsOf(SampleJobs.Plain.With(pocket: SampleJobs.Pocket with { Leg = SampleJobs.Mm(leg) }), 800)
            .First(check => check.Code == CheckCodes.PocketShade).Verdict;

        Assert.Equal(Verdict.Pass, WithLeg(92.95));
        Assert.Equal(Verdict.Fail, WithLeg(93.95));
    }

    [Theory]
    [InlineData(24.7, Verdict.Pass)]
    [InlineData(24.8, Verdict.Fail)]
    public void A_strip_may_reach_to_three_millimetres_from_the_cells(double overlap, Verdict verdict)
    {
        // 12.7 of border and 15 of dead border, less 3.
        var job = SampleJobs.Plain.With(strip: SampleJobs.Strip with { Overlap = SampleJobs.Mm(overlap) });

        Assert.Equal(verdict, Assert.Single(ResultsOf(job, 800), check => check.Code == CheckCodes.StripShade).Verdict);
    }

    [Fact]
    public void A_pocket_beside_the_zipper_needs_a_setback()
    {
        var job = SampleJobs.Plain.With(pocket: SampleJobs.Pocket with { OverZipper = false });
        var check = ResultsOf(job, 800).First(each => each.Code == CheckCodes.PocketZipper);

        // Leg 64.4, its corner 12.35 outside: it reaches 52.05 along the edge, and a presser foot wants 6 more.
        Assert.Equal(58.05, check.Measured.Limit!.Value.Millimeters, 1e-9);
        Assert.Equal(Verdict.Fail, check.Verdict);
    }

    [Fact]
    public void Short_stock_and_a_narrow_roll_are_told()
    {
        var job = SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { Stock = [SampleJobs.Mm(900)] })
            .On(SampleJobs.Cloth with { Roll = new(SampleJobs.Mm(900), SampleJobs.Mm(10), SampleJobs.Mm(100)) });
        var checks = ResultsOf(job, 800);

        Assert.All(checks.Where(check => check.Code == CheckCodes.ZipperStock), check => Assert.Equal((Verdict.Caution, 100), (check.Verdict, Math.Round(check.Measured.Value!.Value.Millimeters, 9))));
        Assert.Equal(Verdict.Caution, Assert.Single(checks, check => check.Code == CheckCodes.ClothWidth).Verdict);
    }

    [Fact]
    public void A_panel_in_the_bent_side_of_the_frame_fails()
    {
        var top = SampleJobs.Plain.Top;
        var job = SampleJobs.Plain with { Top = new(top.Length, top.Width, new(top.Edges.Margin, SampleJobs.Mm(360)), top.Bows, []) };

        Assert.All(ResultsOf(job, 800).Where(check => check.Code == CheckCodes.BentSide), check => Assert.Equal(Verdict.Fail, check.Verdict));
    }

    /// <summary>The carrier is cut 575.4 mm fore and aft with 38.1 mm for the hem on both edges: 651.6 mm, its shorter side.</summary>
    [Theory]
    [InlineData(671.5, Verdict.Caution)]
    [InlineData(671.7, Verdict.Pass)]
    public void A_piece_wider_than_the_plotters_roll_less_its_margins_is_a_caution(double roll, Verdict verdict)
    {
        var workshop = SampleJobs.Plain.Workshop with { Plot = new(SampleJobs.Mm(roll), SingleStroke: false) };
        var check = Single(ResultsOf(SampleJobs.Plain with { Workshop = workshop }, 800), CheckCodes.PlotRoll, "Carrier on the plotter's roll");

        Assert.Equal((verdict, 651.6, roll - 20), (check.Verdict, Math.Round(check.Measured.Value!.Value.Millimeters, 6), Math.Round(check.Measured.Limit!.Value.Millimeters, 6)));
    }

    [Fact]
    public void Without_a_plotters_roll_nothing_is_checked_of_it() =>
        Assert.DoesNotContain(ResultsOf(SampleJobs.Plain, 800), check => check.Code == CheckCodes.PlotRoll);

    private static CarrierJob WithoutBows => SampleJobs.Plain with { Top = SampleJobs.Top(1600, 1800, []) };

    private static ImmutableArray<CheckResult> ResultsOf(CarrierJob job, double station) =>
        JobChecks.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(station), SampleJobs.Mm(0)))));

    private static CheckResult Single(IEnumerable<CheckResult> checks, string code, string subject) =>
        Assert.Single(checks, check => check.Code == code && check.Subject == subject);
}
