using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Checks;

/// <summary>Bending, worked by hand from the published formulas that docs/how-patterns-are-made.md names.</summary>
public sealed class BendingChecksTests
{
    /// <summary>
    /// The cloth falls 60 in 600 to both sides of the middle bow. The panel's edges lie 275 along it: 27.5 below the bow and
    /// 275·√(1 − 0.1²) = 273.62 from it on the level. Roark, table 8.1, case 1e: R = L²/12d = 547.24²/(12·27.5) = 907.5.
    /// </summary>
    [Theory]
    [InlineData(500, Verdict.Pass)]
    [InlineData(610, Verdict.Fail)]
    public void A_panel_over_a_ridge_is_held_to_the_middle_loaded_beam(double allowed, Verdict verdict)
    {
        var check = Single(ResultsOf(Limited(Ridged(60), allowed)), CheckCodes.BendAlong, "bend along over bow 2");

        Assert.Equal(907.5, check.Measured.Value!.Value.Millimeters, 0.05);
        Assert.Equal((allowed * 1.5, verdict), (check.Measured.Limit!.Value.Millimeters, check.Verdict));
    }

    [Fact]
    public void A_panel_over_a_valley_does_not_touch_its_tube()
    {
        var check = Single(ResultsOf(Ridged(-60)), CheckCodes.BendAlong, "bend along over bow 2");

        Assert.Equal(Verdict.Pass, check.Verdict);
        Assert.Contains("does not touch this tube but stands 27.5 mm", check.Advice, StringComparison.Ordinal);
    }

    /// <summary>A drop of 8 mm over 400 mm is w/EI = 8·8/400⁴ = 2.5e-9 (Roark, case 2a); 550 mm of cloth that may hang 0.025 of 1480 (chord 1477.5, R = 7393) are 549.87 from edge to edge, and over that it is bent to 8/(2.5e-9·549.87²) = 10 584 mm (case 2e).</summary>
    [Fact]
    public void A_panel_between_two_bows_hangs_by_its_weight()
    {
        var job = Plain with { Top = Top(1600, 1800, [BowWith(60, 0), BowWith(1540, 0)]), Panel = Drooping(8) };
        var check = Single(ResultsOf(job), CheckCodes.BendAlong, "sharpest bend along between the tubes");

        Assert.Equal(10584, check.Measured.Value!.Value.Millimeters, 1.0);
    }

    /// <summary>The cloth hangs 0.1 % of 1480 and a limp panel lies down on it: nowhere lower, and gentler than it would hang freely.</summary>
    [Fact]
    public void A_limp_panel_rests_on_the_cloth()
    {
        var job = Plain with
        {
            Top = Top(1600, 1800, [BowWith(60, 0), BowWith(1540, 0)]),
            Panel = Drooping(100),
            Limits = Plain.Limits with { Shape = Plain.Limits.Shape with { ClothSag = 0.001 } },
        };
        var mounted = MountedOf(job);
        var profile = PanelProfile.Of(job, mounted, TopSurface.Hanging(job.Top, 0.001).Surface!)[1];

        Assert.NotEmpty(profile.Strip.Contacts);
        Assert.Equal(profile.ClothAt(800).HeightMm, profile.Strip.HeightAt(275), 0.02);
        Assert.True(profile.Strip.Sharpest.RadiusMm > 8 / (8 * 100 / Math.Pow(400, 4) * 550 * 550));
    }

    /// <summary>
    /// A fall of 195 in 200 and then a rise of 795 in 840: the third bow lies behind the panel's forward edge, seen along the line
    /// between its edges, at (39, -171)·(0.66, 0.75) = -102. Such a top was never sewn, but it is worked out.
    /// </summary>
    [Fact]
    public void A_bow_behind_the_panels_edge_carries_nothing()
    {
        var job = Plain with { Top = Top(1600, 1800, [BowWith(60, 0), BowWith(500, 400), BowWith(700, 205), BowWith(1540, 1000)]) };
        var profile = PanelProfile.Of(job, MountedOf(job), TopSurface.Of(job.Top).Surface!)[1];

        Assert.Equal(-102, profile.ClothAt(700).AtMm, 3.0);
        Assert.Empty(profile.Tubes);
        Assert.NotEmpty(ResultsOf(job));
    }

    /// <summary>30 degrees over 1050 mm is 2005 mm, 248 degrees 243 mm, 150 degrees 401 mm: R = length/angle, by hand.</summary>
    [Theory]
    [InlineData(30, 2005)]
    [InlineData(248, 243)]
    [InlineData(150, 401)]
    public void Degrees_are_turned_into_a_radius_with_their_length(double degrees, double radius) =>
        Assert.Equal(radius, new BendArc(Angle.FromDegrees(degrees), Mm(1050)).Radius.Millimeters, 0.5);

    [Fact]
    public void Of_a_radius_and_degrees_the_gentler_counts()
    {
        var arc = new BendArc(Angle.FromDegrees(30), Mm(1050));

        Assert.Equal(arc.Radius, new PanelLimits(Mm(500), BendAxis.Either, false, null, arc).SmallestRadius);
        Assert.Equal(Mm(3000), new PanelLimits(Mm(3000), BendAxis.Either, false, null, arc).SmallestRadius);
        Assert.Null(new PanelLimits(null, BendAxis.Either, false, null).SmallestRadius);
    }

    [Fact]
    public void A_limit_that_is_not_known_is_told_before_everything_else()
    {
        var job = Plain with { Panel = Plain.Panel with { Limits = Plain.Panel.Limits with { MinBendRadius = null } } };

        Assert.StartsWith("BEND LIMIT NOT KNOWN: 2000 mm", Assert.Single(JobNotices.Of(job)), StringComparison.Ordinal);
        Assert.Empty(JobNotices.Of(Plain));
    }

    [Fact]
    public void A_side_that_must_not_be_curved_must_be_nearly_straight()
    {
        var job = Ridged(60);
        var forbidden = job with { Panel = job.Panel with { Limits = job.Panel.Limits with { Bends = BendAxis.Length } } };
        var check = Single(ResultsOf(forbidden), CheckCodes.BendAlong, "bend along over bow 2");

        Assert.Equal((Verdict.Fail, 10000), (check.Verdict, check.Measured.Limit!.Value.Millimeters));
    }

    /// <summary>A panel of 600 by 1000 on arcs of 8 m along it and 3 m across: the gap w²/8R = 5.625 mm is the rise of the arc along, and Kw²/12 = 0.125 % (Airy's equation, worked by hand).</summary>
    [Fact]
    public void A_flat_panel_stands_off_a_top_curved_both_ways()
    {
        var curve = new DoubleCurve(AcrossRadius: Mm(3000), AlongRadius: Mm(8000), AlongRise: Mm(5.625), Across: Mm(1000), Along: Mm(600));

        Assert.Equal(5.625, curve.EdgeGap.Millimeters, 1e-9);
        Assert.Equal(1.25e-3, curve.EdgeStrain, 1e-12);
    }

    /// <summary>Along: 27.5 over the straight line. Across: 1100² over eight times the radius of chord 1750 and crown 90, 4298.5: 35.2. The panel follows the latter.</summary>
    [Fact]
    public void The_gap_is_that_of_the_shallower_curve()
    {
        var check = Single(ResultsOf(Ridged(60)), CheckCodes.BendDouble, "panel on a top curved both ways");

        Assert.Equal(Verdict.Caution, check.Verdict);
        Assert.Equal(27.6, check.Measured.Value!.Value.Millimeters, 0.2);
    }

    /// <summary>
    /// Over the ridge the bent panel has 907.5 (see above), not the 547.24²/(8·27.5) = 1361 of a circle of the same rise. With 4298.5
    /// across and the narrower side of 550: 550²/(907.5·4298.5·12) = 0.646 %. The circle would give 0.431 %.
    /// </summary>
    [Fact]
    public void The_strain_is_worked_from_the_radius_that_the_bending_check_finds()
    {
        var check = Single(ResultsOf(Ridged(60)), CheckCodes.BendDouble, "panel on a top curved both ways");

        Assert.Contains("shortened by 0.646 %", check.Advice, StringComparison.Ordinal);
        Assert.Contains("stretched by 0.323 %", check.Advice, StringComparison.Ordinal);
    }

    /// <summary>
    /// Cloth of 1000 between two level bows hangs 25: R = c²/8s + s/2 with a chord of 998.33 is 4996. A panel of 550 in its middle, of
    /// which a part of 400 drops 300 over a table's edge, lies in it with edges, middle and all: over its own 550 the cloth is lower by
    /// 550²/(8·4996) = 7.57 only. Were its edges held at the straight line, 25·(1 − 0.55²) = 17.4 above the cloth beside them, it
    /// would have to come down that far at once.
    /// </summary>
    [Fact]
    public void The_edges_of_a_panel_lie_on_the_same_slack_cloth_as_its_middle()
    {
        var job = Plain with { Top = Top(1600, 1800, [BowWith(300, 0), BowWith(1300, 0)]), Panel = Drooping(300) };
        var profile = PanelProfile.Of(job, MountedOf(job), TopSurface.Hanging(job.Top, 0.025).Surface!)[1];
        var radius = Single(ResultsOf(job), CheckCodes.BendAlong, "sharpest bend along between the tubes").Measured.Value!.Value.Millimeters;

        Assert.Equal(-7.57, profile.Strip.HeightAt(profile.Strip.LengthMm / 2), 0.02);
        Assert.InRange(radius, 4000, 5000);
    }

    /// <summary>
    /// The cloth stays as long as it is: 550 of it on R = 4996 are a chord of 549.72, and the panel that lies down in it is 550 again, so that
    /// the carrier is neither short nor long. On the straight line with the middle hanging it came out longer by what the sag takes, 8s²/3L.
    /// </summary>
    [Fact]
    public void On_slack_cloth_a_limp_carrier_is_as_long_as_its_way()
    {
        var job = Plain with { Top = Top(1600, 1800, [BowWith(300, 0), BowWith(1300, 0)]), Panel = Drooping(300) };
        var check = Assert.Single(ResultsOf(job), each => each.Code == CheckCodes.ClosingPath);

        Assert.InRange(check.Measured.Value!.Value.Millimeters, 0, 0.02);
    }

    /// <summary>The ridge of 907.5 on cloth that may hang 0.025 of 600, so 15: the edges lie 27.5 + 15·(1 − (25/300)²) = 42.4 low, and R = 547²/(12·42.4) = 588 misses 900. Measured as taut it holds: the advice asks for the sag.</summary>
    [Fact]
    public void A_sag_that_was_only_assumed_fails_no_panel_over_a_ridge()
    {
        var check = Single(ResultsOf(Ridged(60) with { Limits = Plain.Limits }), CheckCodes.BendAlong, "bend along over bow 2");

        Assert.Equal(588, check.Measured.Value!.Value.Millimeters, 10.0);
        Assert.Equal(Verdict.Caution, check.Verdict);
        Assert.Contains("sag_aft", check.Advice, StringComparison.Ordinal);
    }

    /// <summary>Halves of 4298.5 and 1889.6 mm radius: chord 1750 with a crown of 90 and of 210, R = c²/8s + s/2.</summary>
    [Fact]
    public void The_sharper_half_of_an_uneven_bow_counts()
    {
        var halves = new BowHalves(CircularArc.FromChordAndRise(1750, 90), CircularArc.FromChordAndRise(1750, 210));
        var job = Plain with { Top = Top(1600, 1800, [new(Mm(60), Mm(25), halves, Mm(0), Mm(0)), new(Mm(1540), Mm(25), halves, Mm(50), Mm(0))]) };
        var checks = ResultsOf(job);

        Assert.True(AthwartStations >= 10);
        Assert.Equal(1927.9, Single(checks, CheckCodes.BendAthwart, "arc across at bow 1").Measured.Value!.Value.Millimeters, 0.1);
        Assert.Equal(1927.9, Single(checks, CheckCodes.BendAthwart, $"arc across under the panel, {AthwartStations} stations").Measured.Value!.Value.Millimeters, 0.1);
    }

    [Fact]
    public void Between_unequal_bows_the_radius_lies_between_theirs()
    {
        var job = Plain with { Top = Top(1600, 1800, [BowWith(60, 0, 90), BowWith(1540, 40, 180)]) };
        var radius = Single(ResultsOf(job), CheckCodes.BendAthwart, $"arc across under the panel, {AthwartStations} stations").Measured.Value!.Value.Millimeters;

        Assert.InRange(radius, 2216.5, 4298.5);
    }

    [Fact]
    public void Without_heights_what_depends_on_them_names_them()
    {
        var checks = ResultsOf(Plain);

        Assert.All(
            new[] { CheckCodes.BendAlong, CheckCodes.BendDouble, CheckCodes.ClosingPath },
            code => Assert.Contains("top.bow[2].height", Assert.Single(checks, check => check.Code == code).Advice, StringComparison.Ordinal));
    }

    private static int AthwartStations => 13;

    /// <summary>Three bows 600 apart on taut cloth, the middle one higher, and a panel too stiff to hang.</summary>
    internal static CarrierJob Ridged(double rise) => Plain with
    {
        Limits = Taut(Plain.Limits),
        Top = Top(1600, 1800, [BowWith(200, 0), BowWith(800, rise), BowWith(1400, 0)]),
        Panel = Drooping(1e-4),
    };

    private static LimitSpec Taut(LimitSpec limits) => limits with { Shape = limits.Shape with { ClothSag = 0 } };

    internal static Bow BowWith(double station, double height, double crown = 90) =>
        new(Mm(station), Mm(25.4), BowHalves.Even(CircularArc.FromChordAndRise(1750, crown)), Mm(height), Mm(0));

    internal static MountedShape MountedOf(CarrierJob job) => MountedShape.Of(job, LongSide.Athwart).At(new(Mm(800), Mm(0)));

    internal static ImmutableArray<CheckResult> ResultsOf(CarrierJob job) => JobChecks.Of(PatternSet.Of(job, MountedOf(job)));

    internal static CheckResult Single(IEnumerable<CheckResult> checks, string code, string subject) =>
        Assert.Single(checks, check => check.Code == code && check.Subject == subject);

    private static SolarPanel Drooping(double drop)
    {
        var panel = Plain.Panel;
        return panel with { Body = panel.Body with { Droop = new(Mm(400), Mm(drop)) } };
    }

    private static CarrierJob Limited(CarrierJob job, double radius) =>
        job with { Panel = job.Panel with { Limits = job.Panel.Limits with { MinBendRadius = Mm(radius) } } };
}
