using CanvasCut.Geometry;
using NetTopologySuite.Geometries;
using Point = CanvasCut.Geometry.Point;

namespace CanvasCut.Tests.Geometry;

public sealed class ConvexHullTests
{
    private static readonly Gen<Point[]> Points =
        Gen.Select(Gen.Int[-20, 20], Gen.Int[-20, 20], (x, y) => new Point(x, y)).Array[5, 30];

    [Fact]
    public void A_hull_leaves_out_what_lies_inside_or_on_an_edge()
    {
        var hull = ConvexHull.Of([new(2, 0), new(4, 0), new(1, 1), new(4, 4), new(0, 4), new(0, 0), new(0, 2), new(0, 0)]);

        Assert.Equal([new(0, 0), new(4, 0), new(4, 4), new(0, 4)], hull.Corners);
    }

    [Fact]
    public void Points_on_one_line_have_no_hull() =>
        Assert.Throws<ArgumentException>(() => ConvexHull.Of([new(0, 0), new(1, 1), new(2, 2)]));

    [Fact]
    public void A_hull_is_the_one_that_NetTopologySuite_finds() =>
        Points.Sample(points =>
        {
            var witness = new MultiPoint([.. points.Select(p => new NetTopologySuite.Geometries.Point(p.X, p.Y))]).ConvexHull();
            if (witness is Polygon)
            {
                var hull = ConvexHull.Of(points);

                Assert.Equal(witness.Area, hull.AreaMm2, 1e-9);
                Assert.Equal(witness.NumPoints - 1, hull.Count);
            }
        });
}
