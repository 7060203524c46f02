using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Tests.Patterns;
using CanvasCut.Tests.Placing;

namespace CanvasCut.Tests.Design;

/// <summary>The outline of a top from its measures; areas by NetTopologySuite against hand calculations.</summary>
public sealed class TopOutlineTests
{
    /// <summary>Curves are held as points no more than this from the curve.</summary>
    private const double SagittaMm = 0.1;

    [Fact]
    public void A_taper_has_the_area_of_its_trapezium()
    {
        var outline = Outlined(new(SampleJobs.Mm(2000), [SampleTops.At(0, 800, 800), SampleTops.At(2000, 1000, 1100)]));

        // (1600 + 2100) / 2 x 2000
        Assert.Equal(3_700_000, AreaOf(outline), 1e-3);
        Assert.Equal((900, 950), Halves(outline, 1000));
    }

    [Fact]
    public void Before_the_first_width_and_behind_the_last_the_sides_run_straight_on()
    {
        var outline = Outlined(new(SampleJobs.Mm(2000), [SampleTops.At(500, 800, 800), SampleTops.At(1500, 900, 900)]));

        // 500 x 1600 + 1000 x 1700 + 500 x 1800
        Assert.Equal(3_400_000, AreaOf(outline), 1e-3);
        Assert.Equal((800, 800), Halves(outline, 100));
        Assert.Equal((900, 900), Halves(outline, 1999));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(-25)]
    public void A_hollow_takes_the_segment_of_a_circle_off_each_side(double hollow)
    {
        var outline = Outlined(new(SampleJobs.Mm(2000), [SampleTops.At(0, 900, 900, hollow), SampleTops.At(2000, 900, 900)]));

        // R = c²/8s + s/2; the segment's area is R²(θ − sin θ)/2 with sin(θ/2) = c/2R.
        var (chord, rise) = (2000.0, Math.Abs(hollow));
        var radius = (chord * chord / (8 * rise)) + (rise / 2);
        var angle = 2 * Math.Asin(chord / (2 * radius));
        var segment = radius * radius * (angle - Math.Sin(angle)) / 2 * Math.Sign(hollow);
        Assert.Equal(3_600_000 - (2 * segment), AreaOf(outline), SagittaMm * 2 * 2000);
        Assert.Equal(900 - hollow, Halves(outline, 1000).Port, SagittaMm);
    }

    [Fact]
    public void A_rounded_corner_takes_a_square_less_a_quarter_circle_and_a_cut_one_a_triangle()
    {
        var shape = new TopShape(SampleJobs.Mm(1000), [SampleTops.At(0, 600, 600)])
        {
            Corners = new(new(SampleJobs.Mm(100), IsCut: false), new(SampleJobs.Mm(60), IsCut: true), TopCorner.Sharp, new(SampleJobs.Mm(200), IsCut: false)),
        };

        // r²(1 − π/4) for 100 and 200, and 60²/2.
        var taken = ((100 * 100) + (200 * 200)) * (1 - (Math.PI / 4));
        Assert.Equal(1_200_000 - taken - 1800, AreaOf(Outlined(shape)), SagittaMm * Math.PI / 2 * 300);
    }

    /// <summary>By hand: the arc touches both edges where the corner's half angle says, r / tan(half) from the corner.</summary>
    [Fact]
    public void A_corner_that_is_not_square_is_rounded_to_where_the_arc_touches()
    {
        // Starboard runs from (300, 0) to (700, -400): 45 degrees, so that the forward corner has 135 degrees inside.
        var shape = new TopShape(SampleJobs.Mm(400), [SampleTops.At(0, 300, 300), SampleTops.At(400, 300, 700)])
        {
            Corners = TopCorners.Sharp with { ForwardStarboard = new(SampleJobs.Mm(50), IsCut: false) },
        };
        var forward = Outlined(shape).LineOf(Side.Forward);

        var touch = 300 - (50 / Math.Tan(135 / 2.0 * Math.PI / 180));
        Assert.Contains(forward, point => Math.Abs(point.Y) < 1e-6 && Math.Abs(point.X - touch) < 1e-6);
    }

    [Fact]
    public void A_skew_edge_runs_from_end_to_end_and_a_round_one_through_its_middle()
    {
        var skew = Outlined(new(SampleJobs.Mm(1000), [SampleTops.At(0, 500, 500)]) { Aft = SampleTops.Ends(-50, 50) });
        var round = Outlined(new(SampleJobs.Mm(1000), [SampleTops.At(0, 500, 500)]) { Forward = SampleTops.Ends(80, 80, isRound: true) });

        Assert.Equal([new(-500, -950), new(500, -1050)], skew.LineOf(Side.Aft));
        Assert.Equal(1_000_000, AreaOf(skew), 1e-3);

        // Chord 1000, rise 80: R = 1000²/640 + 40 = 1602.5; every point lies so far from (0, -1602.5).
        Assert.All(round.LineOf(Side.Forward), point => Assert.Equal(1602.5, point.DistanceMm(new(0, -1602.5)), 1e-6));
        Assert.Contains(round.LineOf(Side.Forward), point => point.DistanceMm(new(0, 0)) < 1e-6);
    }

    [Fact]
    public void One_width_and_right_angles_are_the_rectangle_of_before()
    {
        var top = new TopCloth(SampleJobs.Mm(2000), SampleJobs.Mm(1800), new(SampleJobs.Mm(25), SampleJobs.Mm(0)), [], []);

        Assert.True(top.Outline.IsRectangle);
        Assert.Equal(new Box(-900, -2000, 900, 0), top.Outline.Shape.Bounds);
        Assert.Equal(top.Outline.Shape.Corners, Outlined(TopShape.Rectangle(SampleJobs.Mm(2000), SampleJobs.Mm(1800))).Shape.Corners);
    }

    /// <summary>Every side is one line, and the four make up the outline.</summary>
    [Fact]
    public void The_four_sides_make_up_the_outline()
    {
        var outline = Outlined(SampleTops.Crooked(1500));
        var sides = new[] { Side.Forward, Side.Aft, Side.Port, Side.Starboard };

        Assert.True(Witness.IsValid(outline.Shape));
        Assert.Equal(outline.Shape.PerimeterMm, sides.Sum(side => outline.LineOf(side).Zip(outline.LineOf(side).Skip(1), (from, to) => from.DistanceMm(to)).Sum()), 1e-6);
        Assert.True(outline.LineOf(Side.Port)[0].Y < outline.LineOf(Side.Port)[^1].Y);
        Assert.True(outline.LineOf(Side.Aft)[0].X < outline.LineOf(Side.Aft)[^1].X);
    }

    [Fact]
    public void Measures_that_make_no_outline_are_told()
    {
        Assert.Equal(OutlineFault.Crosses, FaultOf(new(SampleJobs.Mm(1000), [SampleTops.At(0, 200, 200, 300), SampleTops.At(1000, 200, 200)])));
        Assert.Equal(OutlineFault.EndBeyond, FaultOf(new(SampleJobs.Mm(1000), [SampleTops.At(0, 500, 500)]) { Forward = SampleTops.Ends(1100, 0) }));
        Assert.Equal(OutlineFault.AftStarboard, FaultOf(new(SampleJobs.Mm(1000), [SampleTops.At(0, 500, 500)]) { Corners = TopCorners.Sharp with { AftStarboard = new(SampleJobs.Mm(1001), IsCut: true) } }));
    }

    private static OutlineFault? FaultOf(TopShape shape) => new TopOutlineDrawing(shape).Fault;

    private static TopOutline Outlined(TopShape shape) => TopOutline.Of(shape)!;

    private static double AreaOf(TopOutline outline) => Witness.ToPolygon(outline.Shape).Area;

    private static (double Port, double Starboard) Halves(TopOutline outline, double station)
    {
        var (port, starboard) = outline.HalvesAt(SampleJobs.Mm(station));
        return (Math.Round(port.Millimeters, 9), Math.Round(starboard.Millimeters, 9));
    }
}
