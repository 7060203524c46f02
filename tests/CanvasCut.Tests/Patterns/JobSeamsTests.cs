using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

public sealed class JobSeamsTests
{
    private static readonly JobSupplies Supplies = SampleJobs.Supplies;

    /// <summary>
    /// C = 2 + 2·T·S: thickness 0.01 in at 10 stitches an inch takes 2.2 in of thread an inch (textilecalculations.com).
    /// By the same formula, worked by hand: 1 mm at 6 an inch 2.472, 2 mm 2.945, 2.5 mm at 7 an inch 3.378.
    /// </summary>
    [Theory]
    [InlineData(0.254, 10, 2.2)]
    [InlineData(1, 6, 2.472)]
    [InlineData(2, 6, 2.945)]
    [InlineData(2.5, 7, 3.378)]
    public void A_lockstitch_takes_the_published_thread(double thicknessMm, double stitchesPerInch, double ratio) =>
        Assert.Equal(ratio, SewnSeam.LockstitchRatio(Length.FromMillimeters(thicknessMm), Length.FromInches(1 / stitchesPerInch)), 5e-4);

    /// <summary>
    /// 220 cm of seam take 550 cm of thread by the fixed ratio of 2.5 (melgeecrafts.com). The formula gives that ratio where
    /// the thickness is a quarter of the stitch: two plies of 0.5 mm at 4 mm.
    /// </summary>
    [Fact]
    public void Two_plies_at_four_millimetres_take_the_fixed_ratio_of_the_trade()
    {
        var seam = new SewnSeam(SeamKind.Hems, "seam", [], 1, [new(0, [new(Length.FromCentimeters(220), new(2))])]);

        Assert.Equal(550, seam.Thread(Supplies, SampleJobs.Mm(4)).Centimeters, 1e-9);
    }

    [Fact]
    public void Thread_adds_up_run_by_run_and_copy_by_copy()
    {
        // 2 × (100 × 2(1 + 0.5/5) + 50 × 2(1 + 1.6/5)) = 2 × (220 + 132): one ply of 0.5, then two and a tape of 0.6.
        var seam = new SewnSeam(SeamKind.Zipper, "seam", [], 2, [new(0, [new(SampleJobs.Mm(100), new(1)), new(SampleJobs.Mm(50), new(2, 1))])]);

        Assert.Equal(704, seam.Thread(Supplies, SampleJobs.Mm(5)).Millimeters, 1e-9);
        Assert.Equal(300, seam.Sewn.Millimeters, 1e-9);
    }

    /// <summary>Square corners of two equal double hems cross in nine layers (SailNet, 2000); a mitre has five or six (common practice).</summary>
    [Theory]
    [InlineData(CornerKind.Square, 9, 9)]
    [InlineData(CornerKind.Mitred, 5, 6)]
    public void The_carriers_corners_have_the_layers_of_the_trade(CornerKind corner, int atLeast, int atMost)
    {
        var seam = SeamOf(Job(corner, 25.4), "Carrier, hems");

        Assert.Equal(new LayerCount(3), seam.Usual);
        Assert.InRange(seam.Thickest(Supplies).Plies, atLeast, atMost);
    }

    /// <summary>The rows run round the hem: 2 × (1100 + 575.4), worked by hand.</summary>
    [Fact]
    public void The_hems_are_as_long_as_the_carrier_is_round() =>
        Assert.Equal(2 * (1100 + 575.4), SeamOf(Job(CornerKind.Square, 12.7), "Carrier, hems").Sewn.Millimeters, 1e-6);

    /// <summary>
    /// A zipper's row 3 mm from the fold goes through the carrier, its hem and the tape; where the turn-under is as wide as
    /// the hem, through that too. Two rows of 1100 − 2 × 25.4.
    /// </summary>
    [Theory]
    [InlineData(12.7, 2)]
    [InlineData(25.4, 3)]
    public void A_zipper_goes_through_hem_and_tape(double turnUnder, int cloth)
    {
        var seam = SeamOf(Job(CornerKind.Mitred, turnUnder), "forward zipper, half on the carrier");

        Assert.Equal(new LayerCount(cloth, 1), seam.Usual);
        Assert.Equal(2 * 1049.2, seam.Sewn.Millimeters, 1e-6);
        Assert.Equal(cloth * 0.5 + 0.6, seam.Usual.Thickness(Supplies).Millimeters, 1e-9);
    }

    /// <summary>Top, pocket and its turned leg are three plies; at the tips the mouth's hem of three is folded over: 2 × 3 + 1.</summary>
    [Fact]
    public void A_pockets_tips_have_seven_plies()
    {
        var seam = SeamOf(SampleJobs.Plain, "Corner pocket, forward port, edges on the top");

        Assert.Equal((3, 7), (seam.Usual.Plies, seam.Thickest(Supplies).Plies));
    }

    /// <summary>A full felled seam has four plies, and a triple hem across it three times as many; a semi-felled one three (ISO 4916 seams of class 2, from memory).</summary>
    [Theory]
    [InlineData(FelledSeam.Full, 4)]
    [InlineData(FelledSeam.Semi, 3)]
    public void A_hem_over_a_felled_seam_multiplies_its_plies(FelledSeam join, int plies)
    {
        var job = Job(CornerKind.Mitred, 25.4).On(SampleJobs.Cloth with { Join = join, Roll = SampleJobs.Cloth.Roll with { Width = SampleJobs.Mm(800) } });

        Assert.Equal(new LayerCount(plies), SeamOf(job, "Carrier, felled seam 1").Usual);
        Assert.Equal(3 * plies, SeamOf(job, "Carrier, hems").Thickest(Supplies).Plies);
    }

    [Fact]
    public void A_bound_edge_has_the_binding_on_both_faces()
    {
        var job = SampleJobs.Plain with { Carrier = SampleJobs.Carrier with { Edges = Sides.All(EdgeFinish.Binding) } };
        var seam = SeamOf(job, "Carrier, port binding");

        Assert.Equal(new LayerCount(1, Binding: 2), seam.Usual);
        Assert.Equal(575.4, seam.Sewn.Millimeters, 1e-6);
    }

    [Fact]
    public void An_adhesive_panel_and_a_smooth_cloth_need_no_webbing()
    {
        var adhesive = SampleJobs.Plain with { Panel = SampleJobs.Plain.Panel with { Limits = SampleJobs.Plain.Panel.Limits with { HasAdhesive = true } } };
        var smooth = SampleJobs.Plain with { Workshop = SampleJobs.Plain.Workshop with { Supplies = Supplies with { Cloth = Supplies.Cloth with { IsSmooth = true } } } };

        Assert.Contains(SeamsOf(SampleJobs.Plain), seam => seam.Kind == SeamKind.Webbing);
        Assert.DoesNotContain(SeamsOf(adhesive), seam => seam.Kind == SeamKind.Webbing);
        Assert.DoesNotContain(SeamsOf(smooth), seam => seam.Kind == SeamKind.Webbing);
        Assert.Empty(BondPlan.Of(adhesive, Mounted(adhesive)).Tape);
        Assert.False(BondPlan.Of(smooth, Mounted(smooth)).Tape.IsEmpty);
    }

    /// <summary>Nine plies of 0.5 mm are 4.5 mm, over the 4 mm of eight; the mitre's five are not.</summary>
    [Fact]
    public void A_square_corner_is_a_caution_that_the_mitre_lifts()
    {
        var (square, mitred) = (CheckOf(CornerKind.Square), CheckOf(CornerKind.Mitred));

        Assert.Equal((Verdict.Caution, 4.5, 4), (square.Verdict, square.Measured.Value!.Value.Millimeters, square.Measured.Limit!.Value.Millimeters));
        Assert.Contains($"lowers it to {mitred.Measured.Value!.Value.Millimeters / 0.5:0} plies", square.Advice, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, mitred.Verdict);
    }

    private static CheckResult CheckOf(CornerKind corner)
    {
        var job = Job(corner, 25.4);
        return JobChecks.Of(PatternSet.Of(job, Mounted(job))).Single(check => check.Code == CheckCodes.SeamLayers && check.Subject == "Carrier, hems");
    }

    private static CarrierJob Job(CornerKind corner, double turnUnderMm) =>
        SampleJobs.Plain with { Carrier = SampleJobs.Carrier with { Corner = corner, Hem = new(SampleJobs.Mm(turnUnderMm), SampleJobs.Mm(25.4)) } };

    private static MountedShape Mounted(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)));

    private static ImmutableArray<SewnSeam> SeamsOf(CarrierJob job) => JobSeams.Of(PatternSet.Of(job, Mounted(job)));

    private static SewnSeam SeamOf(CarrierJob job, string name) => SeamsOf(job).Single(seam => seam.Name == name);
}
