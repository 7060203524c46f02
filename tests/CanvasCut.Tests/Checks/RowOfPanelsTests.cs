using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using UnitsNet;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Checks;

/// <summary>
/// Panels of 600 by 400 and 500 by 300 mm on one carrier, 20 mm apart, worked by hand. Borders of 12.7 mm forward and aft only, dead
/// borders of 15 mm, tape of 25.4 mm.
/// </summary>
public sealed class RowOfPanelsTests
{
    private static readonly CarrierJob Across = Row(RowAxis.Athwart);
    private static readonly CarrierJob Along = Row(RowAxis.ForeAft);

    /// <summary>600 + 20 + 500 by 400 + 25.4; the second begins at −560 + 620 and lies in the middle of 400.</summary>
    [Fact]
    public void The_carrier_is_as_large_as_the_row_and_its_borders()
    {
        var mounted = MountedShape.Of(Across, LongSide.Athwart);

        Assert.Equal((1120, 425.4), (Rounded(mounted.CarrierBox.WidthMm), Rounded(mounted.CarrierBox.HeightMm)));
        Assert.Equal((-560, 40), (Rounded(mounted.Panels[0].Box.Left), Rounded(mounted.Panels[0].Box.Right)));
        Assert.Equal((60, 560, 150), (Rounded(mounted.Panels[1].Box.Left), Rounded(mounted.Panels[1].Box.Right), Rounded(mounted.Panels[1].Box.Top)));
        Assert.Equal((75, 135), (Rounded(mounted.Panels[1].Cells.Left), Rounded(mounted.Panels[1].Cells.Top)));
    }

    /// <summary>400 + 20 + 300 + 25.4 along; the second lies from 360 − 420 to 300 less.</summary>
    [Fact]
    public void A_row_fore_and_aft_is_as_long_as_both()
    {
        var mounted = MountedShape.Of(Along, LongSide.Athwart);

        Assert.Equal((600, 745.4), (Rounded(mounted.CarrierBox.WidthMm), Rounded(mounted.CarrierBox.HeightMm)));
        Assert.Equal((-60, -360), (Rounded(mounted.Panels[1].Box.Top), Rounded(mounted.Panels[1].Box.Bottom)));
    }

    /// <summary>To port 15 + (12.7 + 15) less 3 of gap; to starboard, where the smaller panel's cells are nearest, 15 + (12.7 + 50 + 15) less 3.</summary>
    [Fact]
    public void A_pocket_is_held_to_the_nearest_cells()
    {
        var checks = ResultsOf(Across);

        Assert.Equal(39.7, Limit(checks, CheckCodes.PocketShade, "forward port pocket and cells"), 1e-6);
        Assert.Equal(89.7, Limit(checks, CheckCodes.PocketShade, "forward starboard pocket and cells"), 1e-6);
        Assert.Equal(["cells-one", "cells-other"], new[] { "forward port pocket and cells", "forward starboard pocket and cells" }.Select(subject => Single(checks, CheckCodes.PocketShade, subject).About.Parts[1]).Select(key => $"cells-{key.Panel}"));
    }

    /// <summary>
    /// Of the larger: twice 590, twice 390 − 50.8, and one strip of 339.2 between (539.2 less one of 25.4 leaves two gaps of 256.9). Of the
    /// smaller: twice 490, twice 290 − 50.8, one of 239.2.
    /// </summary>
    [Fact]
    public void Each_panel_has_its_own_strips()
    {
        var patterns = PatternsOf(Across);

        Assert.Equal([2197.6, 1697.6], patterns.Bonds.Select(bond => Rounded(bond.TapeLength.Millimeters)));
        Assert.Equal(3895.2, patterns.Bond.TapeLength.Millimeters, 1e-6);
        Assert.All(patterns.Bonds.Zip(patterns.Mounted.Panels), pair => Assert.All(pair.First.Tape, strip => Assert.True(pair.Second.Box.Holds(strip.Box))));
    }

    /// <summary>
    /// 198.573 Pa × 1.4 = 278.002 Pa. On all of 1120 × 425.4 mm: 132.45 N. On the larger panel 66.721 N over 2197.6 × 25.4 mm of tape:
    /// 1195.3 Pa; on the smaller 41.700 N over 1697.6 × 25.4: 967.1 Pa.
    /// </summary>
    [Fact]
    public void The_wind_lifts_the_carrier_and_each_panel_off_its_own_tape()
    {
        var hold = HoldDown.Of(Across, MountedShape.Of(Across, LongSide.Athwart));

        Assert.Equal(132.45, hold.UpliftAt(Speed.FromKnots(35)).Newtons, 0.01);
        Assert.Equal(
            [("panel \"one\": adhesive under the panel", 1195.3), ("panel \"other\": adhesive under the panel", 967.1)],
            hold.Holds.Where(each => each.Code == CheckCodes.WindBond).Select(each => (each.Subject, Math.Round(((Pressure)each.Load.Reading!.Value).Pascals, 1))));
    }

    /// <summary>Over the ridge of the middle bow a gap bends, and neither panel; one panel as long as both would bend over it.</summary>
    [Fact]
    public void A_gap_over_a_tube_is_a_hinge()
    {
        // The gap's middle is 10 mm above −50: with the carrier's middle at station 750 it lies at station 800.
        var job = At(Ridged(Along), 750);
        var checks = ResultsOf(job);

        Assert.DoesNotContain(checks, check => check.Code == CheckCodes.BendAlong && check.Subject.Contains("over bow 2", StringComparison.Ordinal));
        Assert.Contains("Bow 2 lies under it", Single(checks, CheckCodes.RowGap, "gap between panels \"one\" and \"other\"").Advice, StringComparison.Ordinal);
        var one = At(Ridged(Along) with { Row = null, Panel = Stiff(Panel(720, 600, longSide: LongSide.ForeAft)) }, 750);
        Assert.Contains(ResultsOf(one), check => check.Code == CheckCodes.BendAlong && check.Subject == "bend along over bow 2");
    }

    /// <summary>
    /// The panel of 400 along has the bow under its middle: cloth falls 60 in 600 to both sides, so its edges lie 20 below the bow and
    /// 200·√(1 − 0.1²) = 198.997 from it on the level. Roark, table 8.1, case 1e: R = L²/12d = 397.995²/(12·20) = 660.0. The other bends over none.
    /// </summary>
    [Fact]
    public void Each_panel_bends_over_its_own_length()
    {
        // The first's middle is 160 forward of the carrier's, which therefore lies 160 aft of the bow at 800.
        var checks = ResultsOf(At(Ridged(Along), 960));
        var bend = Single(checks, CheckCodes.BendAlong, "panel \"one\": bend along over bow 2");

        Assert.Equal(660.0, bend.Measured.Value!.Value.Millimeters, 0.05);
        Assert.DoesNotContain(checks, check => check.Code == CheckCodes.BendAlong && check.Subject.StartsWith("panel \"other\"", StringComparison.Ordinal) && check.Subject.Contains("bow 2", StringComparison.Ordinal));
    }

    /// <summary>Flat between bows that lie in line, the carrier is exactly as long as its way, through both panels and the gap.</summary>
    [Fact]
    public void The_way_from_zipper_to_zipper_goes_through_both_panels()
    {
        var flat = At(Along with { Top = Top(1600, 1800, [BendingChecksTests.BowWith(60, 0), BendingChecksTests.BowWith(1540, 0)]), Limits = Along.Limits with { Shape = Along.Limits.Shape with { ClothSag = 0 } } }, 800);

        Assert.Equal(0, ResultsOf(flat).Single(check => check.Code == CheckCodes.ClosingPath).Measured.Value!.Value.Millimeters, 0.02);
    }

    [Fact]
    public void Panels_that_nearly_touch_are_a_caution() =>
        Assert.Equal(Verdict.Caution, Single(ResultsOf(Row(RowAxis.Athwart, gap: 4)), CheckCodes.RowGap, "gap between panels \"one\" and \"other\"").Verdict);

    [Fact]
    public void A_tube_is_held_against_the_cells_of_every_panel() =>
        Assert.Equal(
            ["panel \"one\": cells and bow 1", "panel \"one\": cells and bow 2", "panel \"other\": cells and bow 1", "panel \"other\": cells and bow 2"],
            ResultsOf(Across).Where(check => check.Code == CheckCodes.TubeCells).Select(check => check.Subject).Order(StringComparer.Ordinal));

    /// <summary>The corner's own panel is bowed: the last corner to port that of the first, to starboard that of the second.</summary>
    [Fact]
    public void The_panel_at_a_corner_is_the_one_that_is_bowed()
    {
        Assert.Equal([0, 1, 0, 1], Corner.All.Select(corner => PocketFitting.IndexAt(Across, corner)));
        Assert.Equal([0, 0, 1, 1], Corner.All.Select(corner => PocketFitting.IndexAt(Along, corner)));
    }

    [Fact]
    public void Keys_of_a_row_tell_its_panels_apart()
    {
        var keys = EachPanel.Of(Across with { Mounting = new("one") }, MountedShape.Of(Across, LongSide.Athwart)).Select(each => new PartKeys(each.Job)).ToList();

        Assert.Equal(["one-cells", "other-cells"], keys.Select(each => each.Cells.Id));
        Assert.Equal(["one-panel", "other-panel"], keys.Select(each => each.Panel.Id));
    }

    /// <summary>A hole in the border before each panel has its own patch, as deep as the border's room: both are sewn on and drawn.</summary>
    [Fact]
    public void Each_cable_has_its_own_hole_and_patch()
    {
        var job = WithExits(Across);
        var patterns = PatternsOf(job);
        var patches = patterns.WholesOf(PieceKind.ExitPatch);

        Assert.Equal(["one", "other"], patches.Select(patch => patch.Key.Panel.Text));
        Assert.Equal(2, patterns.WholeCarrier.Lines.Count(line => line.Shows == LineShows.CableExit));

        // The second panel's forward edge lies 50 mm aft of the first's: 20 mm before them their holes lie 50 mm apart.
        Assert.Equal(50, patterns.Holes[0].Middle.Y - patterns.Holes[1].Middle.Y, 1e-9);
        Assert.Contains(ResultsOf(job), check => check.Code == CheckCodes.CableReach && check.Subject.StartsWith("panel \"other\"", StringComparison.Ordinal));
    }

    /// <summary>Its flange reaches 4 + 6 mm from the hole: in the middle of a gap of 20 mm it lies under no panel, a millimetre aside under one.</summary>
    [Theory]
    [InlineData(-10, false)]
    [InlineData(-9, true)]
    public void A_hole_in_the_gap_is_held_against_both_panels(double fromPort, bool isUnder)
    {
        var other = Across.Row!.After[0];
        var job = Across with { Row = Across.Row with { After = [other with { Panel = WithExit(other.Panel, fromPort, 150) }] } };

        Assert.Equal(isUnder, Assert.Single(PatternsOf(job).Holes).IsUnderPanel);
    }

    private static CarrierJob WithExits(CarrierJob job)
    {
        var border = job.Carrier with { Border = job.Carrier.Border with { Forward = Mm(60) } };
        var after = job.Row!.After[0];
        return job with { Carrier = border, Panel = WithExit(job.Panel, 300, -20), Row = job.Row with { After = [after with { Panel = WithExit(after.Panel, 250, -20) }] } };
    }

    private static SolarPanel WithExit(SolarPanel panel, double fromPort, double fromForward) =>
        panel with { Fittings = panel.Fittings with { CableExit = new(Mm(fromPort), Mm(fromForward), Mm(8)) } };

    private static CarrierJob Row(RowAxis axis, double gap = 20) => Plain with
    {
        Panel = Panel(600, 400),
        Row = new(axis, new("one"), [new(new("other"), Panel(500, 300), Mm(gap))]),
    };

    private static CarrierJob Ridged(CarrierJob job) => job with
    {
        Top = Top(1600, 1800, [BendingChecksTests.BowWith(200, 0), BendingChecksTests.BowWith(800, 60), BendingChecksTests.BowWith(1400, 0)]),
        Limits = job.Limits with { Shape = job.Limits.Shape with { ClothSag = 0 } },
        Panel = Stiff(job.Panel),
        Row = job.Row! with { After = [.. job.Row.After.Select(each => each with { Panel = Stiff(each.Panel) })] },
    };

    /// <summary>So stiff that its weight does not bend it.</summary>
    private static SolarPanel Stiff(SolarPanel panel) => panel with { Body = panel.Body with { Droop = new(Mm(400), Mm(1e-4)) } };

    private static CarrierJob At(CarrierJob job, double station) => job with { Carrier = job.Carrier with { Position = new(Mm(station), Mm(0)) } };

    private static PatternSet PatternsOf(CarrierJob job) => PatternSet.Of(job, FitChoice.For(job).Mounted);

    private static ImmutableArray<CheckResult> ResultsOf(CarrierJob job) => JobChecks.Of(PatternsOf(job));

    private static CheckResult Single(ImmutableArray<CheckResult> checks, string code, string subject) => checks.Single(check => check.Code == code && check.Subject == subject);

    private static double Limit(ImmutableArray<CheckResult> checks, string code, string subject) => Single(checks, code, subject).Measured.Limit!.Value.Millimeters;

    private static double Rounded(double number) => Math.Round(number, 6);
}
