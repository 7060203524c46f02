using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

public sealed class OutsetTests
{
    private static readonly Gen<double> Allowance = Gen.Double[0, 90];

    /// <summary>One corner on each side of a square: convex, lopsided, and sometimes nearly flat at a corner.</summary>
    private static readonly Gen<Outline> Quadrilateral =
        Gen.Double[1, 2999].Array[4].Select(s => new Outline([new(s[0], 0), new(3000, s[1]), new(s[2], 3000), new(0, s[3])]));

    [Fact]
    public void Both_ends_of_a_moved_edge_lie_its_distance_outside() =>
        Gen.Select(Quadrilateral, Allowance.Array[4]).Sample((outline, distances) =>
        {
            if (Outset.By(outline, [.. distances]) is { } moved)
            {
                for (var i = 0; i < 4; i++)
                {
                    Assert.Equal(distances[i], OutsideMm(moved[i], outline, i), 1e-6);
                    Assert.Equal(distances[i], OutsideMm(moved[i + 1], outline, i), 1e-6);
                }
            }
        });

    /// <summary>NetTopologySuite: valid, and the outline lies inside what was set out.</summary>
    [Fact]
    public void An_outline_set_out_holds_the_outline() =>
        Gen.Select(Quadrilateral, Allowance.Array[4]).Sample((outline, distances) =>
        {
            if (Outset.By(outline, [.. distances]) is { } moved)
            {
                Assert.True(Witness.IsValid(moved));
                Assert.True(Witness.OutsideMm2(outline, moved) < 1e-3);
            }
        });

    /// <summary>
    /// With one distance all round it is NetTopologySuite's own mitred buffer, as long as that does not cut a sharp tip:
    /// its mitre limit is set far beyond any corner here.
    /// </summary>
    [Fact]
    public void With_one_distance_it_is_the_mitred_buffer_of_another_library() =>
        Gen.Select(Gen.Double[200, 2800].Array[4], Allowance).Sample((s, distance) =>
        {
            var outline = new Outline([new(s[0], 0), new(3000, s[1]), new(s[2], 3000), new(0, s[3])]);
            var parameters = new NetTopologySuite.Operation.Buffer.BufferParameters(
                8, NetTopologySuite.Operation.Buffer.EndCapStyle.Square, NetTopologySuite.Operation.Buffer.JoinStyle.Mitre, 1000);
            var theirs = Witness.ToPolygon(outline).Buffer(distance + 0.01, parameters);
            var ours = Witness.ToPolygon(Outset.By(outline, distance + 0.01)!);

            Assert.True(ours.SymmetricDifference(theirs).Area < 1e-3, $"{ours.SymmetricDifference(theirs).Area}");
        });

    [Fact]
    public void No_distance_changes_nothing() =>
        Quadrilateral.Sample(outline => Outset.By(outline, 0)!.Corners.SequenceEqual(outline.Corners));

    [Fact]
    public void A_concave_outline_keeps_its_shape()
    {
        // An L, worked by hand: each edge 10 outward.
        var outline = new Outline([new(0, 0), new(100, 0), new(100, 40), new(40, 40), new(40, 100), new(0, 100)]);
        var moved = Outset.By(outline, 10)!;

        Assert.Equal([new(-10, -10), new(110, -10), new(110, 50), new(50, 50), new(50, 110), new(-10, 110)], moved.Corners.Select(Rounded));
    }

    [Fact]
    public void An_edge_passed_by_its_neighbours_gives_no_outline()
    {
        var trapezium = new Outline([new(0, 0), new(100, 0), new(52, 50), new(48, 50)]);

        Assert.Null(Outset.By(trapezium, -20));
        Assert.Null(Outset.By(trapezium, [0, 0, 60, 0]));
    }

    [Fact]
    public void Two_edges_in_one_line_need_one_distance()
    {
        var outline = new Outline([new(0, 0), new(50, 0), new(100, 0), new(100, 50), new(0, 50)]);

        Assert.Equal(new Point(50, -5), Outset.By(outline, 5)![1]);
        Assert.Null(Outset.By(outline, [5, 6, 5, 5, 5]));
    }

    [Fact]
    public void A_distance_for_every_edge_is_asked_for() =>
        Assert.Throws<ArgumentException>(() => Outset.By(Outline.Of(new Box(0, 0, 1, 1)), ImmutableArray.Create(1.0)));

    /// <summary>How far a point lies outside an edge, by another formula than the code's own.</summary>
    private static double OutsideMm(Point point, Outline outline, int edge)
    {
        var (start, end) = (outline[edge], outline[edge + 1]);
        var (dx, dy) = (end.X - start.X, end.Y - start.Y);
        return ((dy * (point.X - start.X)) - (dx * (point.Y - start.Y))) / Math.Sqrt((dx * dx) + (dy * dy));
    }

    private static Point Rounded(Point point) => new(Math.Round(point.X, 9), Math.Round(point.Y, 9));
}
