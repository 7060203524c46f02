using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

public sealed class MinkowskiSumTests
{
    /// <summary>A small triangle is always in it, so that it is never flat.</summary>
    private static readonly Gen<Outline> Convex =
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y) => new Point(x, y)).Array[1, 12]
            .Select(points => ConvexHull.Of([new(0, 0), new(3, 1), new(1, 4), .. points]));

    [Fact]
    public void Boxes_add_up_to_a_box_exactly()
    {
        var sum = MinkowskiSum.OfConvex(Outline.Of(new(0, 0, 0.1, 0.2)), Outline.Of(new(0.1, 0.2, 0.3, 0.7)));

        Assert.Equal([new(0.1, 0.2), new(0.1 + 0.3, 0.2), new(0.1 + 0.3, 0.2 + 0.7), new(0.1, 0.2 + 0.7)], sum.Corners);
    }

    [Fact]
    public void A_square_and_a_triangle_add_up_to_a_pentagon()
    {
        var sum = MinkowskiSum.OfConvex(Outline.Of(new(0, 0, 2, 2)), new([new(0, 0), new(1, 0), new(0, 1)]));

        Assert.Equal([new(0, 0), new(3, 0), new(3, 2), new(2, 3), new(0, 3)], sum.Corners);
    }

    /// <summary>The definition: the hull of all sums of two corners.</summary>
    [Fact]
    public void The_sum_is_the_hull_of_all_sums_of_corners() =>
        Gen.Select(Convex, Convex).Sample((first, second) =>
        {
            var all = ConvexHull.Of(first.Corners.SelectMany(p => second.Corners, (p, q) => new Point(p.X + q.X, p.Y + q.Y)));

            Assert.Equal(all.AreaMm2, MinkowskiSum.OfConvex(first, second).AreaMm2, 1e-6);
        });
}
