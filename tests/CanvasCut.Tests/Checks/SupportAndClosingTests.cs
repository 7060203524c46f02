using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Tests.Patterns;
using static CanvasCut.Tests.Checks.BendingChecksTests;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Checks;

/// <summary>What lies near the cells, what the cloth does between the bows, and whether the zippers close; worked by hand.</summary>
public sealed class SupportAndClosingTests
{
    /// <summary>Border 12.7 and dead border 15 to the cells; the chain 9.5 outside the edge and half of 10 wide: 12.7 + 15 + 9.5 − 5.</summary>
    [Fact]
    public void The_teeth_keep_clear_of_the_cells() =>
        Assert.Equal(32.2, Single(ResultsOf(Plain), CheckCodes.SupportZipper, "cells and forward zipper's teeth").Measured.Value!.Value.Millimeters, 1e-9);

    /// <summary>With no border the cells begin 15 from the edge, and the hem's row lies 25.4 − 3 from it: 7.4 under the cells. With 20 mm of border it clears them by 12.6.</summary>
    [Theory]
    [InlineData(0, -7.4, Verdict.Caution)]
    [InlineData(20, 12.6, Verdict.Pass)]
    public void The_row_of_a_side_hem_may_lie_under_cells(double border, double clear, Verdict verdict)
    {
        var job = Plain with { Carrier = Plain.Carrier with { Border = Plain.Carrier.Border with { Port = Mm(border) } } };
        var check = Single(ResultsOf(job), CheckCodes.Stitch, "cells and rows along the carrier's port edge");

        Assert.Equal(clear, check.Measured.Value!.Value.Millimeters, 1e-9);
        Assert.Equal(verdict, check.Verdict);
    }

    [Theory]
    [InlineData(false, Verdict.Fail)]
    [InlineData(true, Verdict.Caution)]
    public void A_felled_seam_under_cells_fails_unless_hard_points_are_allowed(bool allows, Verdict verdict)
    {
        var job = Plain.On(Cloth with { Roll = new(Mm(900), Mm(10), Mm(100)) });
        var checks = ResultsOf(job with { Panel = job.Panel with { Limits = job.Panel.Limits with { AllowsHardPoints = allows } } });

        Assert.Equal(verdict, Single(checks, CheckCodes.SupportSeam, "cells and carrier's felled seam 1").Verdict);
        Assert.DoesNotContain(ResultsOf(Plain), check => check.Code == CheckCodes.SupportSeam);
    }

    /// <summary>The mouth of a pocket passes the cells' corner aslant, and its row lies 12.7 − 3 = 9.7 behind it: 3/√2 + 9.7 = 11.82 from the corner.</summary>
    [Fact]
    public void A_slanting_row_is_measured_square_to_it() =>
        Assert.Equal(11.821, Single(ResultsOf(Plain), CheckCodes.Stitch, "cells and rows of the corner pocket, aft port").Measured.Value!.Value.Millimeters, 1e-3);

    /// <summary>
    /// A strip of two widths has the rows that it would have in one. Its free edge lies 15.9 over the carrier and is hemmed 12.7
    /// wide, the row 3 from the inner fold: 15.9 − 9.7 = 6.2; the cells begin at 12.7 + 15: 21.5.
    /// </summary>
    [Theory]
    [InlineData(1500)]
    [InlineData(900)]
    public void The_rows_of_a_piece_in_widths_are_looked_at_too(double roll) =>
        Assert.Equal(21.5, Single(OnRoll(roll), CheckCodes.Stitch, "cells and rows of the weather strip, forward").Measured.Value!.Value.Millimeters, 1e-9);

    /// <summary>The seam ends with the strip, 15.9 over the carrier, though its allowance is cut 25.4 beyond: 27.7 − 15.9 = 11.8.</summary>
    [Fact]
    public void The_seam_of_a_strip_in_widths_is_looked_at_too() =>
        Assert.Equal(11.8, Single(OnRoll(900), CheckCodes.SupportSeam, "cells and felled seams of the weather strip, forward").Measured.Value!.Value.Millimeters, 1e-9);

    private static ImmutableArray<CheckResult> OnRoll(double roll) => ResultsOf(Plain.On(Cloth with { Roll = new(Mm(roll), Mm(10), Mm(100)) }));

    /// <summary>
    /// The hole lies 20 from the carrier's port edge, but the patch of 14 + 2 × 38.1 = 90.2 stays inside the carrier and reaches
    /// from 0 to 90.2; the cells begin at 15, so its rows reach 75.2 under them.
    /// </summary>
    [Fact]
    public void The_cable_patch_is_measured_where_it_lies()
    {
        var exit = new CableExit(Mm(20), Mm(300), Mm(14));
        var panel = Plain.Panel with { Fittings = Plain.Panel.Fittings with { CableExit = exit } };

        Assert.Equal(-75.2, Single(ResultsOf(Plain with { Panel = panel }), CheckCodes.Stitch, "cells and rows of the cable exit patch").Measured.Value!.Value.Millimeters, 1e-9);
    }

    /// <summary>400 mm of cloth that hang 10 mm are bent to 2.0 m: R = L²/8s + s/2.</summary>
    [Theory]
    [InlineData(600, Verdict.Pass)]
    [InlineData(1400, Verdict.Fail)]
    public void A_span_is_held_to_the_radius_of_its_measured_sag(double allowed, Verdict verdict)
    {
        var even = BowHalves.Even(CircularArc.FromChordAndRise(1750, 90));
        var top = Top(1600, 1800, [new Bow(Mm(600), Mm(25), even, Mm(0), Mm(10)), new Bow(Mm(1000), Mm(25), even, Mm(0), Mm(0))]);
        var limits = Plain.Panel.Limits with { MinBendRadius = Mm(allowed) };
        var check = Assert.Single(ResultsOf(Plain with { Top = top, Panel = Plain.Panel with { Limits = limits } }), each => each.Code == CheckCodes.Span);

        Assert.Equal(2000, check.Measured.Value!.Value.Millimeters, 10.0);
        Assert.Equal(verdict, check.Verdict);
    }

    [Fact]
    public void A_sag_that_was_only_assumed_never_fails()
    {
        var job = Plain with { Limits = Plain.Limits with { BendFactor = 20 } };
        var check = Assert.Single(ResultsOf(job), each => each.Code == CheckCodes.Span);

        Assert.Equal(Verdict.Caution, check.Verdict);
        Assert.Contains("sag_aft", check.Advice, StringComparison.Ordinal);
    }

    /// <summary>
    /// Over the ridge of the bending tests: the strip is longer than its chord of 547.24 by 2.4 d²/L = 3.32 (half the
    /// integral of the slope squared of the middle-loaded beam), so 0.55 longer than 550 of cloth; and the middle of a panel of 2.5 on
    /// cloth of 0.5 goes round 2·asin 0.1 = 0.2003 by 1.75 outside: 0.35. Together 0.90.
    /// </summary>
    [Fact]
    public void The_way_over_a_ridge_takes_more_carrier()
    {
        var check = Single(ResultsOf(Ridged(60)), CheckCodes.ClosingPath, "carrier from zipper to zipper, too short by");

        Assert.Equal(0.904, check.Measured.Value!.Value.Millimeters, 0.01);
        Assert.Equal(Verdict.Pass, check.Verdict);
    }

    [Fact]
    public void A_way_that_asks_for_more_than_the_zipper_can_be_pulled_fails()
    {
        var job = Ridged(60);
        var tight = job with { Limits = job.Limits with { Shape = job.Limits.Shape with { ZipperPull = Mm(0.5) } } };

        Assert.Equal(Verdict.Fail, Single(ResultsOf(tight), CheckCodes.ClosingPath, "carrier from zipper to zipper, too short by").Verdict);
    }

    /// <summary>The carrier is 575.4 along the boat: 1 % is 5.754, 0.5 % is 2.877. An allowance of 1 % takes the first to nothing and adds 5.81 to the second.</summary>
    [Theory]
    [InlineData(0, 5.754, 2.877)]
    [InlineData(0.01, 0, 8.718)]
    public void Shrinking_and_stretching_are_worked_on_the_cloth(double allowance, double gap, double slack)
    {
        var checks = ResultsOf(Plain.On(Cloth with { Shrink = new(allowance, 0) }));

        Assert.Equal(gap, Single(checks, CheckCodes.ClosingShrunk, "carrier short of closing after shrinking 1 %").Measured.Value!.Value.Millimeters, 1e-3);
        Assert.Equal(slack, Single(checks, CheckCodes.ClosingStretched, "carrier's slack after stretching 0.5 %").Measured.Value!.Value.Millimeters, 1e-3);
    }

    [Fact]
    public void A_carrier_that_shrinks_too_far_is_a_caution()
    {
        var job = Plain with { Limits = Plain.Limits with { Shape = Plain.Limits.Shape with { Shrink = 0.02 } } };

        Assert.Equal(Verdict.Caution, Assert.Single(ResultsOf(job), check => check.Code == CheckCodes.ClosingShrunk).Verdict);
    }

    /// <summary>Run 1100 − 2·25.4 = 1049.2 on an arc of 4298.5, the halves 1 mm apart: 0.244.</summary>
    [Fact]
    public void The_outer_half_of_a_zipper_on_an_arc_is_longer()
    {
        var check = Single(ResultsOf(Ridged(60)), CheckCodes.ClosingMatch, "halves of the aft zipper");

        Assert.Equal(0.244, check.Measured.Value!.Value.Millimeters, 1e-3);
        Assert.Equal((Verdict.Pass, 1.5875), (check.Verdict, Math.Round(check.Measured.Limit!.Value.Millimeters, 9)));
    }
}
