using CanvasCut.Geometry;
using NetTopologySuite.Algorithm.Distance;

namespace CanvasCut.Tests.Geometry;

public sealed class ClosedLineTests
{
    private static readonly Gen<Outline> Triangle = Gen.Int[1, 999].Array[3].Select(s => new Outline([new(s[0], 0), new(1000, s[1]), new(0, s[2] + 100)]));

    /// <summary>NetTopologySuite's discrete Hausdorff distance looks at corners too, by code of its own.</summary>
    [Fact]
    public void The_distance_is_that_of_NetTopologySuite() => Gen.Select(Triangle, Triangle).Sample((one, other) =>
        Assert.Equal(
            DiscreteHausdorffDistance.Distance(Witness.ToPolygon(one).Boundary, Witness.ToPolygon(other).Boundary),
            ClosedLine.DistanceMm(one.Corners, other.Corners),
            1e-9));

    [Fact]
    public void A_corner_that_one_line_lacks_is_seen() =>
        Assert.Equal(5, ClosedLine.DistanceMm([new(0, 0), new(100, 0), new(100, 100), new(0, 100)], [new(0, 0), new(50, -5), new(100, 0), new(100, 100), new(0, 100)]), 1e-9);
}
