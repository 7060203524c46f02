using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

/// <summary>Distances from convex zones, against NetTopologySuite.</summary>
public sealed class ConvexZoneTests
{
    /// <summary>One corner on each side of a square: convex, and now and then nearly flat at a corner.</summary>
    private static readonly Gen<Outline> Area = Gen.Int[-99, 99].Array[4].Select(at => new Outline([new(at[0], -100), new(100, at[1]), new(at[2], 100), new(-100, at[3])]));

    [Fact]
    public void A_box_that_is_moved_lies_as_far_away_as_the_witness_says() =>
        Gen.Select(Area, Gen.Int[5, 60], Gen.Int[5, 60], Gen.Int[-300, 300], Gen.Int[-300, 300]).Sample((area, width, height, x, y) =>
        {
            var part = Box.Around(new(7, -3), width, height);
            var distance = ConvexZone.Around(area.Corners, part).DistanceMm(x, y);

            Assert.Equal(Witness.DistanceMm(area, Outline.Of(part.MovedBy(new(x, y)))), Math.Max(0, distance), 1e-6);
        });

    /// <summary>What lies on another thing is clear of it after a step so long in some direction, and after none shorter.</summary>
    [Fact]
    public void A_negative_distance_is_the_shortest_way_out() =>
        Gen.Select(Area, Gen.Int[-90, 90], Gen.Int[-90, 90]).Sample((area, x, y) =>
        {
            var zone = ConvexZone.Around(area.Corners, Box.Around(new(0, 0), 20, 30));
            var distance = zone.DistanceMm(x, y);
            if (distance < -1e-6)
            {
                var round = Enumerable.Range(0, 720).Select(i => (Math.Cos(i * Math.PI / 360), Math.Sin(i * Math.PI / 360))).ToList();
                Assert.All(round, way => Assert.True(zone.DistanceMm(x - (way.Item1 * distance * 0.999), y - (way.Item2 * distance * 0.999)) < 0));
                Assert.Contains(zone.Sides, side => zone.DistanceMm(x - (side.Outward.X * distance * 1.001), y - (side.Outward.Y * distance * 1.001)) > 0);
            }
        });

    /// <summary>Point and line: from (0, 0) to (300, 400), the point (100, 300) lies |100·400 − 300·300| / 500 = 100 away.</summary>
    [Fact]
    public void A_line_is_a_zone_without_breadth()
    {
        var line = ConvexZone.Of([new(0, 0), new(300, 400)]);

        Assert.Equal(100, line.DistanceMm(100, 300), 1e-9);
        Assert.Equal(50, line.DistanceMm(-30, -40), 1e-9);
        Assert.Equal(250, line.DistanceMm(450, 600), 1e-9);
        Assert.Equal(0, line.DistanceMm(150, 200), 1e-9);
    }
}
