using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

/// <summary>
/// The plain job by hand: a panel of 1100 by 550 with cells 15 mm inside and rounded corners of 10 mm. Tape of 25.4 mm, 5 mm
/// inside the edge: a frame of 2 × 1090 and 2 × (540 − 50.8 = 489.2); inside it 1039.2, and (1039.2 − 300) / 325.4 = 2.27, so three
/// strips of 489.2 with four gaps of (1039.2 − 76.2) / 4 = 240.75.
/// </summary>
public sealed class BondPlanTests
{
    private const double FrameMm = (2 * 1090) + (2 * 489.2);

    [Fact]
    public void The_tape_is_as_long_as_worked_out_by_hand()
    {
        var bond = Of(SampleJobs.Plain);

        Assert.Equal(FrameMm + (3 * 489.2), bond.TapeLength.Millimeters, 1e-6);
        Assert.Equal(4626 * 25.4, bond.Adhesive.SquareMillimeters, 1e-3);
        Assert.Equal(240.75, BondLayout.Of(SampleJobs.Plain, Mounted(SampleJobs.Plain)).WidestGap.Millimeters, 1e-6);
    }

    /// <summary>5.2 m less the frame's 3158.4 are 2041.6: four strips of 489.2, four more than which would be 2446.</summary>
    [Theory]
    [InlineData(5200, 4)]
    [InlineData(4130, 1)]
    [InlineData(1000, 0)]
    public void A_length_that_is_given_changes_the_strips(double lengthMm, int strips) =>
        Assert.Equal(FrameMm + (strips * 489.2), Of(With(length: lengthMm)).TapeLength.Millimeters, 1e-6);

    /// <summary>
    /// An adhesive back of 1100 by 550 meets 605 000 mm² of cloth, with a coated patch as large as the panel none; were the patch 10 smaller at each
    /// edge, 605 000 − 1080 × 530 = 32 600. Webbing lies under all of the tape; without its forward strip 1090 × 25.4 = 27 686 of it lie on cloth.
    /// </summary>
    [Fact]
    public void What_of_the_adhesive_meets_the_cloth_is_measured()
    {
        var (webbed, adhesive) = (With(onto: BondSurface.SewnTape), SampleJobs.Plain.Panel with { Limits = SampleJobs.Plain.Panel.Limits with { HasAdhesive = true } });
        var panel = Mounted(SampleJobs.Plain).PanelBox;
        var (onCloth, onPatch, onWebbing) = (Of(webbed with { Panel = adhesive }), Of(With(onto: BondSurface.CoatedPatch) with { Panel = adhesive }), Of(webbed));

        Assert.Equal(605_000, onCloth.OnCloth(panel).SquareMillimeters, 1e-3);
        Assert.Equal(0, onPatch.OnCloth(panel).SquareMillimeters, 1e-3);
        Assert.Equal(32_600, (onPatch with { Patches = [panel.Grown(-10)] }).OnCloth(panel).SquareMillimeters, 1e-3);
        Assert.Equal(0, onWebbing.OnCloth(panel).SquareMillimeters, 1e-3);
        Assert.Equal(27_686, (onWebbing with { Webbing = onWebbing.Webbing[1..] }).OnCloth(panel).SquareMillimeters, 1e-3);
    }

    /// <summary>The same strips in the pattern, in the order, in the wind and in what it carries.</summary>
    [Fact]
    public void Pattern_order_and_wind_have_the_same_strips()
    {
        var patterns = PatternSet.Of(With(length: 5200, onto: BondSurface.SewnTape), Mounted(SampleJobs.Plain));
        var order = Purchase.Of(patterns, CutPlan.Of(patterns, new BottomLeftSearch(), cancellation: TestContext.Current.CancellationToken)).Order;
        var drawn = patterns.WholeCarrier.Lines.Where(line => line.Text.Contains("foam tape", StringComparison.Ordinal)).Sum(line => LongSideMm(line.Points));
        var load = HoldDown.Of(patterns.Job, patterns.Mounted).Holds.Single(hold => hold.Code == CheckCodes.WindBond).Load.Reading!.Value;

        Assert.Equal(FrameMm + (4 * 489.2), drawn, 1e-6);
        Assert.Contains(order, line => line.Thing.Grade == "foam-25" && line.Also.StartsWith("5115.2 mm", StringComparison.Ordinal));
        Assert.Equal(168.191 / (5.1152 * 0.0254), load.As(UnitsNet.Units.PressureUnit.Pascal), 0.05);
    }

    /// <summary>A border of 28 mm holds the tape when it begins 28 − 25.4 = 2.6 mm inside the edge; one of 40 leaves it at 5.</summary>
    [Theory]
    [InlineData(28, 2.6)]
    [InlineData(40, 5)]
    [InlineData(20, 5)]
    public void The_rim_lies_in_the_dead_border_where_that_is_wide_enough(double dead, double inset)
    {
        var job = SampleJobs.Plain with { Panel = SampleJobs.Panel(1100, 550, dead) };
        var (panel, rim) = (Mounted(job).PanelBox, Of(job).Tape[0].Box);

        Assert.Equal(inset, panel.Top - rim.Top, 1e-9);
        Assert.Equal(dead >= 25.4, rim.Bottom >= Mounted(job).CellBox.Top - 1e-9);
    }

    /// <summary>A corner of 100 mm: a line 5 mm inside begins 100 − √(100² − 95²) = 68.775 mm from the panel's corner.</summary>
    [Fact]
    public void No_strip_looks_out_of_a_rounded_corner()
    {
        var panel = SampleJobs.Panel(1100, 550) with { Body = SampleJobs.Panel(1100, 550).Body with { CornerRadius = SampleJobs.Mm(100) } };
        var job = SampleJobs.Plain with { Panel = panel };
        var (box, outline) = (Mounted(job).PanelBox, RoundedBox.Of(Mounted(job).PanelBox, 100));

        Assert.Equal(68.775, Of(job).Tape[0].Box.Left - box.Left, 1e-3);
        Assert.All(Of(job).Tape, strip => Assert.Equal(0, Witness.OutsideMm2(Outline.Of(strip.Box), outline), 2.0));
    }

    /// <summary>The webbing's inner row lies 5 + 25.4 − 3 = 27.4 mm inside the edge, cells from 15: all of it is under cells, and of each strip across.</summary>
    [Fact]
    public void Rows_under_cells_are_told_and_a_patch_has_none()
    {
        var (webbing, patch) = (Check(With(onto: BondSurface.SewnTape), CheckCodes.BondRows), Check(With(onto: BondSurface.CoatedPatch), CheckCodes.BondRows));

        // Inner rows of the rim, cut off by the cells (1070 by 520) where they are longer: 2 × 1070 + 2 × 489.2; across 6 × 489.2; 6053.6.
        Assert.Equal((Verdict.Caution, 6053.6), (webbing.Verdict, Math.Round(webbing.Measured.Value!.Value.Millimeters, 1)));
        Assert.Equal((Verdict.Pass, 0), (patch.Verdict, patch.Measured.Value!.Value.Millimeters));
    }

    /// <summary>Foam of 1 mm on webbing of 1.2 mm.</summary>
    [Fact]
    public void A_step_of_webbing_and_foam_is_told_and_foam_alone_is_soft()
    {
        var (webbing, patch) = (Check(With(onto: BondSurface.SewnTape), CheckCodes.BondStep), Check(With(onto: BondSurface.CoatedPatch), CheckCodes.BondStep));

        Assert.Equal((Verdict.Caution, 2.2), (webbing.Verdict, webbing.Measured.Value!.Value.Millimeters));
        Assert.Equal((Verdict.Pass, 1.0), (patch.Verdict, patch.Measured.Value!.Value.Millimeters));
    }

    [Theory]
    [InlineData(0, Verdict.Caution)]
    [InlineData(4, Verdict.Caution)]
    [InlineData(5, Verdict.Pass)]
    public void A_panel_without_a_dead_border_does_not_pass_in_silence(double dead, Verdict verdict)
    {
        var job = With(onto: BondSurface.CoatedPatch) with { Panel = SampleJobs.Panel(1100, 550, dead) };

        Assert.Equal(verdict, Check(job, CheckCodes.BondBorder).Verdict);
    }

    /// <summary>The patch's row lies 3 mm inside the edge: with cells from the very edge all of it but its ends is under them, 2 × 1094 + 2 × 544.</summary>
    [Fact]
    public void The_patch_lies_under_cells_that_begin_at_the_edge()
    {
        var job = With(onto: BondSurface.CoatedPatch) with { Panel = SampleJobs.Panel(1100, 550, 0) };

        Assert.Equal((2 * 1094) + (2 * 544), Check(job, CheckCodes.BondRows).Measured.Value!.Value.Millimeters, 0.1);
    }

    /// <summary>168.191 N over all of 0.605 m² are 278.0 Pa; without the maker's figure nothing is said.</summary>
    [Fact]
    public void An_adhesive_back_is_judged_by_its_own_figure_or_not_at_all()
    {
        var (known, unknown) = (Check(Adhesive(Pressure.FromPascals(200)), CheckCodes.WindBond), Check(Adhesive(null), CheckCodes.WindBond));

        Assert.Equal((Verdict.Caution, 278.0), (known.Verdict, Math.Round(known.Measured.Reading!.Value.As(UnitsNet.Units.PressureUnit.Pascal), 1)));
        Assert.Equal(Verdict.NotChecked, unknown.Verdict);
        Assert.Contains("panel.adhesive_pull", unknown.Advice, StringComparison.Ordinal);
        Assert.Equal(Verdict.Caution, Check(Adhesive(null), CheckCodes.WindOff).Verdict);
    }

    /// <summary>The sample's cloth is woven and sewn-tape lays nothing under an adhesive back.</summary>
    [Fact]
    public void An_adhesive_back_on_woven_cloth_is_caught_whatever_was_asked_for()
    {
        Assert.Equal(Verdict.Caution, Check(Adhesive(null), CheckCodes.BondingOnto).Verdict);
        Assert.Equal(Verdict.Pass, Check(With(onto: BondSurface.CoatedPatch), CheckCodes.BondingOnto).Verdict);
    }

    private static double LongSideMm(IEnumerable<Point> points) => Math.Max(Box.Holding(points).WidthMm, Box.Holding(points).HeightMm);

    private static CarrierJob Adhesive(Pressure? pull) => SampleJobs.Plain with
    {
        Panel = SampleJobs.Plain.Panel with { Limits = SampleJobs.Plain.Panel.Limits with { HasAdhesive = true, AdhesivePull = pull } },
    };

    private static CarrierJob With(double? length = null, BondSurface onto = BondSurface.SewnTape) => SampleJobs.Plain with
    {
        Conditions = SampleJobs.Conditions with { Bonding = SampleJobs.Conditions.Bonding with { TapeLength = length is { } mm ? SampleJobs.Mm(mm) : null, Onto = onto } },
    };

    private static BondPlan Of(CarrierJob job) => BondPlan.Of(job, Mounted(job));

    private static CheckResult Check(CarrierJob job, string code) => Assert.Single(JobChecks.Of(PatternSet.Of(job, Mounted(job))), check => check.Code == code);

    private static MountedShape Mounted(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)));
}
