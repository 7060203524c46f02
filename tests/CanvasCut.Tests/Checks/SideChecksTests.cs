using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Checks;

/// <summary>Held sides and rods, worked by hand for the plain job: carrier 1100 by 575.4, wind 35 kn.</summary>
public sealed class SideChecksTests
{
    private static readonly Gen<(double Width, double Length, bool Port, bool Starboard)> AnyCarrier =
        Gen.Select(Gen.Double[200, 2500], Gen.Double[200, 2500], Gen.Bool, Gen.Bool);

    /// <summary>
    /// Points on a grid are given each to the held edge they lie nearest to, and what is lifted there must be what the loads on
    /// the edges add up to.
    /// </summary>
    [Fact]
    public void Each_edge_bears_the_part_that_lies_nearest_to_it() => AnyCarrier.Sample(
        each =>
        {
            const int Tries = 200;
            var job = SampleJobs.Plain.HeldAtSides(each.Port ? MountKind.HookAndLoop : null, each.Starboard ? MountKind.HookAndLoop : null);
            job = job with { Panel = SampleJobs.Panel(each.Width, each.Length), Carrier = SampleJobs.Carrier with { Border = Sides.All(SampleJobs.Mm(0)) } };
            var mounted = MountedShape.Of(job, LongSide.Athwart);
            var (hold, wind) = (HoldDown.Of(job, mounted), Speed.FromKnots(35));
            double OutTo(Side side, double x, double y) => side switch
            {
                Side.Forward => y,
                Side.Aft => each.Length - y,
                Side.Port => x,
                _ => each.Width - x,
            };
            var nearest = Enumerable.Range(0, Tries * Tries)
                .Select(i => (X: each.Width * ((i % Tries) + 0.5) / Tries, Y: each.Length * ((i / Tries) + 0.5) / Tries))
                .GroupBy(point => mounted.Fastened.Edges.MinBy(edge => OutTo(edge.Side, point.X, point.Y))!.Side)
                .ToDictionary(group => group.Key, group => group.Count() / (double)(Tries * Tries));

            Assert.All(mounted.Fastened.Edges, edge => Assert.Equal(nearest.GetValueOrDefault(edge.Side), hold.UprightAt(wind, edge) / hold.UpliftAt(wind), 0.02));
        },
        iter: 40);

    /// <summary>
    /// By hand: 198.57 Pa x 1.4 on 1.1 x 0.5754 m² lift 175.96 N. The starboard triangle is 0.5754²/4 = 0.082771 m² of 0.63294,
    /// 23.01 N, on 0.5754 m 39.99 N/m. The flap is 575.4 - 50.8 = 524.6 long and its snaps 524.6 - 127 = 397.6 apart; by 101.6 3.91, so 5.
    /// There is no border: the snaps' middle lies 12.7 out at 562.7, 337.3 from the top's edge. Nothing holds the port side, so only a
    /// stiff panel counts: T^3 x 2 x 350 / 12.7 / 40000 = 39.99^2, T = 105.09; with 2 x 39.99 132.06 N/m, and 0.5754 / 5 of a metre 15.20 N.
    /// </summary>
    [Fact]
    public void A_snap_at_a_side_bears_what_was_worked_out_by_hand()
    {
        var hold = HoldDown.Of(Strong(), InTheMiddle(Strong())).Holds.Single(part => part.Code == CheckCodes.WindFastener);

        Assert.Equal("starboard snaps", hold.Subject);
        Assert.Equal(15.197, ((Force)hold.Load.Reading!.Value).Newtons, 0.005);
    }

    /// <summary>
    /// By hand: 79.98 N/m. The rod lies 19.2945 out, the chain 9.5: 604.19 apart, 264.76 Pa. The rod is at 800 - 306.99, 433.01 from bow 1, the chain
    /// 442.8 from bow 2: 54.19 + 875.81 = 930 mm stretch. T^3 x 0.93 / 40000 = 264.76^2 x 0.60419^3 / 24 = 644.2, T = 302.6; with 159.96 upright
    /// 342.3 N/m of 1.1 m, which pass through the top's five lugs of 89.032: 845.8 N/m.
    /// </summary>
    [Fact]
    public void Lugs_bear_what_was_worked_out_by_hand()
    {
        var job = SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper);
        var hold = HoldDown.Of(job, InTheMiddle(job));
        var part = hold.Holds.Single(part => part.Code == CheckCodes.WindSleeve);

        Assert.Equal(845.8, ((ForcePerLength)part.Load.Reading!.Value).NewtonsPerMeter, 0.2);
        Assert.Empty(hold.UnknownFasteners);
    }

    /// <summary>
    /// The plain top's arc has R = 1750²/720 + 45 = 4298.5 mm; a rod of 9.525 may be bent to 952.5. By hand: I = π 9.525⁴/64 =
    /// 404.0 mm⁴, so each end presses with 3 x 40000 x 404.0 / (4298.5 x 1049.2) = 10.751 N. Straight, they
    /// stand 1049.2² / (8 x 4298.5) = 32.0 mm off.
    /// </summary>
    [Fact]
    public void The_rod_is_held_against_the_arc()
    {
        var check = Of(OnLevelTop(SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper)), CheckCodes.MountRod);

        Assert.Equal(Verdict.Pass, check.Verdict);
        Assert.Equal(4298.5, check.Measured.Value!.Value.Millimeters, 0.5);
        Assert.Equal(952.5, check.Measured.Limit!.Value.Millimeters, 1e-6);
        Assert.Contains(" 10.8 N ", check.Advice, StringComparison.Ordinal);
        Assert.Contains(" 32 mm ", check.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(CheckCodes.MountRod, 43, 12.7, 101.6)]
    [InlineData(CheckCodes.MountEdge, 9.525, 1, 101.6)]
    [InlineData(CheckCodes.MountRoom, 9.525, 12.7, 26)]
    public void A_sleeve_of_the_wrong_size_fails(string code, double rod, double ease, double segment)
    {
        var job = OnLevelTop(SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper));
        var mount = job.Fastenings.Mount;
        var sleeve = new SleeveSpec(SampleJobs.Mm(rod), SampleJobs.Mm(ease), SampleJobs.Mm(segment), SampleJobs.Mm(6.35), null);
        job = job with { Fastenings = job.Fastenings with { Mount = mount with { Figures = mount.Figures with { Sleeve = sleeve } } } };

        Assert.Equal(Verdict.Fail, Of(job, code).Verdict);
    }

    /// <summary>A pocket over the rod's end bars its way out; between its end and the corner it does not.</summary>
    [Fact]
    public void A_pocket_over_the_rod_fails()
    {
        var job = SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper);
        var clear = job with
        {
            Fastenings = job.Fastenings with
            {
                Pocket = SampleJobs.Pocket with { OverZipper = false, Leg = SampleJobs.Mm(60) },
                Mount = job.Fastenings.Mount with { Setback = SampleJobs.Mm(100) },
            },
        };

        Assert.Equal(Verdict.Fail, Of(job, CheckCodes.MountReach).Verdict);
        Assert.Equal(Verdict.Pass, Of(clear, CheckCodes.MountReach).Verdict);
    }

    /// <summary>A zipper along a side passes over the middle bow; snaps are looked at one by one, and the nearest is told.</summary>
    [Fact]
    public void A_side_over_a_tube_is_told()
    {
        var top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(800), SampleJobs.BowAt(1540)]);
        var checks = ChecksOf(SampleJobs.Plain.HeldAtSides(MountKind.Zipper, MountKind.Snaps) with { Top = top, Carrier = SampleJobs.Carrier with { Position = new(SampleJobs.Mm(800), SampleJobs.Mm(0)) } });

        Assert.Equal(Verdict.Caution, Assert.Single(checks, check => check.Subject == "port zipper over bow 2").Verdict);

        // The middle one of five snaps lies on the carrier's middle, on the tube: 12.7 and 7.5 overlap by 20.2.
        var snap = Assert.Single(checks, check => check.Subject == "nearest of starboard snaps and bow 2");
        Assert.Equal((Verdict.Fail, -20.2), (snap.Verdict, Math.Round(snap.Measured.Value!.Value.Millimeters, 6)));
    }

    /// <summary>By hand: the cloth turns by 2 x asin(100/740) = 0.27102 over the middle bow; two cloths of 0.5 apart: 0.271 mm.</summary>
    [Fact]
    public void Halves_of_a_side_zipper_differ_by_what_the_ridge_turns()
    {
        var top = SampleJobs.Top(1600, 1800, [At(60, 0), At(800, 100), At(1540, 0)]);
        var check = Assert.Single(ChecksOf(SampleJobs.Plain.HeldAtSides(MountKind.Zipper, null) with { Top = top, Carrier = SampleJobs.Carrier with { Position = new(SampleJobs.Mm(800), SampleJobs.Mm(0)) } }), check => check is { Code: CheckCodes.ClosingMatch, Subject: "halves of the port zipper" });

        Assert.Equal(0.271, check.Measured.Value!.Value.Millimeters, 0.001);
    }

    /// <summary>
    /// Along a side the rod bends over the ridge beside the panel of 550: it rises 275 x 100/740 = 37.16 over 2 x 272.48 = 544.96,
    /// and a beam loaded in the middle has R = 544.96² / (12 x 37.16) = 666 there, 1.5015e-3 of curvature. The panel's weight, 29.4 Pa on
    /// 3 GPa x 2.5³/12 mm, adds 7.53e-9 x 272.48² / 8 = 0.0699e-3 over the middle support of two spans: 1 / 1.5714e-3 = 636.
    /// </summary>
    [Fact]
    public void A_rod_at_a_side_is_held_against_the_ridge()
    {
        var top = SampleJobs.Top(1600, 1800, [At(60, 0), At(800, 100), At(1540, 0)]);
        var check = Of(SampleJobs.Plain.HeldAtSides(MountKind.Sleeve, null) with { Top = top, Carrier = SampleJobs.Carrier with { Position = new(SampleJobs.Mm(800), SampleJobs.Mm(0)) } }, CheckCodes.MountRod);

        Assert.Equal(636, check.Measured.Value!.Value.Millimeters, 8.0);
        Assert.Equal(Verdict.Fail, check.Verdict);
    }

    private static Bow At(double station, double height) =>
        new(SampleJobs.Mm(station), SampleJobs.Mm(25.4), BowHalves.Even(CircularArc.FromChordAndRise(1750, 90)), SampleJobs.Mm(height), SampleJobs.Mm(0));

    private static MountedShape InTheMiddle(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)));

    private static CarrierJob OnLevelTop(CarrierJob job) => job with { Top = SampleJobs.Top(1600, 1800, [At(60, 0), At(1540, 0)]) };

    private static CarrierJob Strong()
    {
        var job = SampleJobs.Plain.HeldAtSides(null, MountKind.Snaps);
        var figures = job.Fastenings.Mount.Figures;
        return job with
        {
            Fastenings = job.Fastenings with { Mount = job.Fastenings.Mount with { Figures = figures with { Snaps = figures.Snaps with { Strength = Force.FromNewtons(80) } } } },
        };
    }

    private static CheckResult Of(CarrierJob job, string code) => Assert.Single(ChecksOf(job), check => check.Code == code);

    private static ImmutableArray<CheckResult> ChecksOf(CarrierJob job) => JobChecks.Of(PatternSet.Of(job, FitChoice.For(job).Mounted));
}
