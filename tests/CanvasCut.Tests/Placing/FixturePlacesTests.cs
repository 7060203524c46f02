using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Placing;

/// <summary>What is on the top already and the boom over it: by hand, and by NetTopologySuite.</summary>
public sealed class FixturePlacesTests
{
    private static readonly TopCloth Bare = new(SampleJobs.Mm(1800), SampleJobs.Mm(1800), new(SampleJobs.Mm(25), SampleJobs.Mm(0)), [], []);

    /// <summary>
    /// By hand: a window with corners (600, -300), (800, -300) and (800, -700). Of a carrier of 1000 by 500 round (0, -900) all that is mounted lies in a box; nearest to
    /// it is the slanted edge from (600, -300) to (800, -700), 447.2136 long, and of the box its forward starboard corner (x, y): the cross product of (200, -400) with
    /// (x - 600, y + 300) over that length.
    /// </summary>
    [Fact]
    public void Nothing_lies_on_a_window_of_three_corners()
    {
        var window = Fixture(FixtureKind.Window, null, (300, 600), (300, 800), (700, 800));
        var (job, mounted) = Mounted(window, 900);

        var clearance = Assert.Single(Clearances.Of(job, mounted), each => each.Kind == ClearanceKind.Fixture);

        var triangle = Witness.ToPolygon(new Outline([new(600, -300), new(800, -300), new(800, -700)]));
        Assert.Equal(mounted.Bounds.Min(box => triangle.Distance(Witness.ToPolygon(Outline.Of(box)))), clearance.Distance.Millimeters, 1e-6);
        Assert.Equal((PartKey.Fixture(1), 15.0), (clearance.To, clearance.Needed.Millimeters));
        Assert.Null(clearance.Of);
    }

    /// <summary>By hand: an area like an L leaves its notch free, and what stands in the notch is as far away as from the nearer leg.</summary>
    [Fact]
    public void An_area_that_is_not_convex_leaves_its_notch_free()
    {
        var patch = Fixture(FixtureKind.Window, null, (100, -850), (100, -750), (1500, -750), (1500, 850), (1600, 850), (1600, -850));
        var (job, mounted) = Mounted(patch, 850);

        // The legs end at x = -750 and at y = -1500.
        var clearance = Assert.Single(Clearances.Of(job, mounted), each => each.Kind == ClearanceKind.Fixture);
        Assert.Equal(Math.Min(mounted.Extent.Left + 750, mounted.Extent.Bottom + 1500), clearance.Distance.Millimeters, 1e-6);
        Assert.True(clearance.Distance > Length.Zero);
    }

    /// <summary>A seam of the top may be crossed by rows but not sewn along: one fore and aft concerns the pockets' legs along the boat alone.</summary>
    [Fact]
    public void Only_rows_along_a_seam_keep_off_it()
    {
        var (job, mounted) = Mounted(Fixture(FixtureKind.Seam, 16, (0, 100), (1800, 100)), 900);

        var clearances = Clearances.Of(job, mounted).Where(each => each.Kind == ClearanceKind.Fixture).ToList();

        Assert.Equal(4, clearances.Count);
        Assert.All(clearances, each => Assert.Equal(PieceKind.Pocket, each.Of!.Piece!.Kind));

        // By hand: from the leg that lies at x to the seam's skin, |x - 100| - 8.
        var legs = mounted.Fastened.Pockets.Select(pocket => Math.Abs(pocket.At.X - 100) - 8).Order();
        Assert.Equal(legs.Select(leg => Math.Round(leg, 6)), clearances.Select(each => Math.Round(each.Distance.Millimeters, 6)).Order());
    }

    [Theory]
    [InlineData(Forbidden.Cells, 1)]
    [InlineData(Forbidden.HardEdges, 10)]
    [InlineData(Forbidden.Stitches, 11)]
    public void What_a_fixture_forbids_is_what_keeps_off_it(Forbidden forbidden, int parts)
    {
        // Hard: four edges, two zippers, four pockets. Stitches: two zippers, one strip's seam, eight legs.
        var (job, mounted) = Mounted(Fixture(FixtureKind.Patch, null, (1700, -800), (1750, 800)) with { Forbids = [forbidden] }, 900);

        Assert.Equal(parts, Clearances.Of(job, mounted).Count(each => each.Kind == ClearanceKind.Fixture));
    }

    [Fact]
    public void The_search_leaves_what_is_on_the_top_alone()
    {
        var window = Fixture(FixtureKind.Window, null, (500, -200), (1100, 300));
        var job = Job(Bare, 700, 300) with { Top = With([window], null) };

        Assert.True(FitChoice.For(Job(With([], null), 700, 300)).Mounted.Extent.DistanceMm(new Box(-200, -1100, 300, -500)) < 0);
        Assert.True(FitChoice.For(job).Mounted.Extent.DistanceMm(new Box(-200, -1100, 300, -500)) >= 15);
    }

    /// <summary>By hand: 30 degrees to each side of a pivot at 600 mm forward of the top, 2000 mm long: half as wide as long at 30 degrees.</summary>
    [Fact]
    public void The_swing_is_a_sector_drawn_outside_its_arc()
    {
        var swing = Plan.SwingOf(Boom(400));

        Assert.Equal(new Point(0, 600), swing.Corners.MaxBy(corner => corner.Y));
        Assert.InRange(Witness.ToPolygon(swing).Area, 2000.0 * 2000 * Math.PI / 6, 2000.0 * 2000 * Math.PI / 6 * 1.001);
        Assert.True(swing.Surrounds(new(999, -1131)));
        Assert.False(swing.Surrounds(new(1010, -1140)));
    }

    /// <summary>
    /// By hand: carrier cloth 2 mm (from memory), foam tape 1 mm where the sample's bond has it, panel 2.5 mm, box 20 mm above it: 22 mm more than the panel. With 50 mm
    /// of clearance a boom at 60 mm passes over the panel and not over the box.
    /// </summary>
    [Fact]
    public void What_is_too_high_for_the_boom_lies_beside_its_swing()
    {
        var fittings = SampleJobs.Plain.Panel.Fittings with { JunctionBox = new(SampleJobs.Mm(300), SampleJobs.Mm(30), SampleJobs.Mm(100), SampleJobs.Mm(60), SampleJobs.Mm(20)) };
        CarrierJob With(double? height) => Job(FixturePlacesTests.With([], Boom(height)), 700, 300) with { Panel = SampleJobs.Panel(700, 300) with { Fittings = fittings } };
        var mounted = MountedShape.Of(With(60), LongSide.Athwart).At(new(SampleJobs.Mm(700), SampleJobs.Mm(0)));

        var parts = BoomRoom.PartsOf(With(60), mounted);
        Assert.Equal(20, (parts[1].Height - parts[0].Height).Millimeters, 1e-9);
        Assert.InRange(parts[0].Height.Millimeters, 4.5, 10);

        var results = ResultsOf(With(60), mounted);
        Assert.Equal(Verdict.Pass, results[0].Verdict);
        Assert.Equal((60 - parts[0].Height.Millimeters, 50), (results[0].Measured.Value!.Value.Millimeters, results[0].Measured.Limit!.Value.Millimeters));
        Assert.Equal(Verdict.Fail, results[1].Verdict);

        Assert.All(ResultsOf(With(200), mounted), result => Assert.Equal(Verdict.Pass, result.Verdict));
        Assert.All(ResultsOf(With(null), mounted), result => Assert.Equal(Verdict.NotChecked, result.Verdict));
        Assert.Equal(Verdict.Caution, Assert.Single(JobChecks.Of(PatternSet.Of(With(200), mounted)), result => result.Code == CheckCodes.BoomShade).Verdict);
    }

    /// <summary>A boom too low for everything is a keep-out: by hand the swing at 45 degrees to each side leaves room beside it only forward.</summary>
    [Fact]
    public void A_low_boom_keeps_all_out_of_its_swing()
    {
        var top = With([], new(SampleJobs.Mm(700), SampleJobs.Mm(1800), Angle.FromDegrees(80), SampleJobs.Mm(30), SampleJobs.Mm(50)));
        var mounted = FitChoice.For(Job(top, 700, 300)).Mounted;
        var swing = Witness.ToPolygon(Plan.SwingOf(top.Boom!));

        Assert.True(mounted.Bounds.All(box => swing.Distance(Witness.ToPolygon(Outline.Of(box))) >= 50));
    }

    private static List<CheckResult> ResultsOf(CarrierJob job, MountedShape mounted) =>
        [.. JobChecks.Of(PatternSet.Of(job, mounted)).Where(result => result.Code == CheckCodes.Boom).OrderBy(result => result.Verdict == Verdict.Fail)];

    private static (CarrierJob Job, MountedShape Mounted) Mounted(TopFixture fixture, double station)
    {
        var job = Job(With([fixture], null), 1000, 474.6);
        return (job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(station), SampleJobs.Mm(0))));
    }

    private static TopFixture Fixture(FixtureKind kind, double? width, params (double Station, double Offset)[] places) => new(
        "old one",
        kind,
        [.. places.Select(place => new TopPlace(SampleJobs.Mm(place.Station), SampleJobs.Mm(place.Offset)))],
        width is { } wide ? SampleJobs.Mm(wide) : null,
        TopFixture.UsualOf(kind),
        SampleJobs.Mm(15));

    private static TopBoom Boom(double? height) =>
        new(SampleJobs.Mm(-600), SampleJobs.Mm(1400), Angle.FromDegrees(30), height is { } high ? SampleJobs.Mm(high) : null, SampleJobs.Mm(50));

    private static TopCloth With(ImmutableArray<TopFixture> fixtures, TopBoom? boom) => new(Bare.Length, Bare.Outline, Bare.Edges) { Fixtures = fixtures, Boom = boom };

    private static CarrierJob Job(TopCloth top, double length, double width) => SampleJobs.Plain with { Top = top, Panel = SampleJobs.Panel(length, width) };
}
