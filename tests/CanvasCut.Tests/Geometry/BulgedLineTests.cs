using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

public sealed class BulgedLineTests
{
    private static readonly Gen<(Box Box, double Radius)> AnyRounded = Gen
        .Select(Gen.Double[-2000, 2000], Gen.Double[-2000, 2000], Gen.Double[210, 1500], Gen.Double[210, 1500], Gen.Double[1, 100])
        .Select((x, y, width, height, radius) => (new Box(x, y, x + width, y + height), radius));

    /// <summary>A quarter circle on a chord of 100 mm: bulge 0.414213562, radius 70.710678 (ezdxf, bulge_radius).</summary>
    [Fact]
    public void The_bulge_of_a_quarter_circle_is_as_published()
    {
        var bulge = BulgedLine.BulgeOf(Math.PI / 2);

        Assert.Equal(0.414213562, bulge, 9);
        Assert.Equal(70.710678, 100 * (1 + (bulge * bulge)) / (4 * bulge), 6);
    }

    [Fact]
    public void The_four_corners_of_a_rounded_box_are_found_and_nothing_else() =>
        AnyRounded.Sample(given =>
        {
            var line = BulgedLine.Of(RoundedBox.Of(given.Box, given.Radius).Corners, isClosed: true);

            Assert.Equal(8, line.Runs.Length);
            Assert.All(line.Runs.Where((_, i) => i % 2 == 0), run => Assert.Equal(Math.Sqrt(2) - 1, run.Bulge, 9));
            Assert.All(line.Runs.Where((_, i) => i % 2 == 1), run => Assert.Equal((1, 0.0), (run.Edges, run.Bulge)));
        });

    /// <summary>The area under the arcs is the box less what the corners lack: (4 - pi) r².</summary>
    [Fact]
    public void The_arcs_enclose_the_area_of_the_true_rounded_box() =>
        AnyRounded.Sample(given =>
        {
            var line = BulgedLine.Of(RoundedBox.Of(given.Box, given.Radius).Corners, isClosed: true);
            var expected = (given.Box.WidthMm * given.Box.HeightMm) - ((4 - Math.PI) * given.Radius * given.Radius);

            Assert.Equal(expected, AreaMm2(line), 1e-3);
        });

    [Fact]
    public void A_line_that_begins_within_an_arc_keeps_its_area_and_all_its_edges() =>
        Gen.Select(AnyRounded, Gen.Int[0, 200]).Sample((given, shift) =>
        {
            var corners = RoundedBox.Of(given.Box, given.Radius).Corners;
            var line = BulgedLine.Of([.. corners.Skip(shift % corners.Length), .. corners.Take(shift % corners.Length)], isClosed: true);

            Assert.Equal(line.Points.Length, line.Runs.Sum(run => run.Edges));
            Assert.Equal(
                (given.Box.WidthMm * given.Box.HeightMm) - ((4 - Math.PI) * given.Radius * given.Radius),
                AreaMm2(line),
                2 * Math.PI * given.Radius * RoundedBox.SagittaMm);
        });

    [Theory]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(60)]
    public void A_circle_is_two_half_circles(double radius)
    {
        var line = BulgedLine.Of(RoundedBox.Circle(new(12, -7), radius).Corners, isClosed: true);

        Assert.Equal(2, line.Runs.Length);
        Assert.All(line.Runs, run => Assert.Equal(1, run.Bulge, 9));
        Assert.Equal(Math.PI * radius * radius, AreaMm2(line), 1e-6);
    }

    /// <summary>The corners of a rectangle lie on a circle, and those of an octagon too; they are corners all the same.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(24)]
    public void Corners_that_merely_lie_on_a_circle_stay_corners(int count)
    {
        var corners = Enumerable.Range(0, count).Select(i => new Point(100 * Math.Cos(i * Math.Tau / count), 100 * Math.Sin(i * Math.Tau / count)));

        Assert.All(BulgedLine.Of([.. corners], isClosed: true).Runs, run => Assert.Equal((1, 0.0), (run.Edges, run.Bulge)));
    }

    [Fact]
    public void An_arc_to_the_right_has_a_bulge_below_zero()
    {
        var arc = Enumerable.Range(0, 31).Select(i => Math.PI - (i * Math.PI / 60)).Select(angle => new Point(5 * Math.Cos(angle), 5 * Math.Sin(angle)));

        var run = Assert.Single(BulgedLine.Of([.. arc], isClosed: false).Runs);

        Assert.Equal(1 - Math.Sqrt(2), run.Bulge, 9);
    }

    [Fact]
    public void A_straight_line_through_many_points_has_no_arc() =>
        Assert.All(
            BulgedLine.Of([.. Enumerable.Range(0, 9).Select(i => new Point(i * 1.1, i * 0.3))], isClosed: false).Runs,
            run => Assert.Equal(0, run.Bulge));

    /// <summary>The area under chords and arcs: of a segment r²(angle - sin angle)/2, with angle = 4 atan bulge.</summary>
    private static double AreaMm2(BulgedLine line)
    {
        var ends = line.Runs.Select(run => (From: line.Points[run.Start], To: line.Points[(run.Start + run.Edges) % line.Points.Length]));
        var origin = line.Points[0];
        var area = ends.Sum(end => (end.From - origin).Cross(end.To - origin) / 2);
        foreach (var run in line.Runs.Where(run => run.Edges > 1))
        {
            var chord = line.Points[run.Start].DistanceMm(line.Points[(run.Start + run.Edges) % line.Points.Length]);
            var angle = 4 * Math.Atan(run.Bulge);
            var radius = chord / (2 * Math.Sin(Math.Abs(angle) / 2));
            area += radius * radius * (angle - Math.Sin(angle)) / 2;
        }

        return area;
    }
}
