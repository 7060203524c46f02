using CanvasCut.Geometry;
using CanvasCut.Nesting;
using CanvasCut.Nesting.Rectangles;

namespace CanvasCut.Tests.Nesting.Bounds;

public sealed class LengthBoundsTests
{
    /// <summary>Worked by hand: two of 60 cannot lie beside each other in 100, so 30 + 2 + 40 follow each other, whatever lies beside them.</summary>
    [Fact]
    public void Pieces_too_wide_to_lie_side_by_side_add_up_with_their_gap()
    {
        var bound = Best(Tasks.Of(100, 2, Tasks.Rectangle(30, 60), Tasks.Rectangle(40, 60), Tasks.Rectangle(10, 10)), 90);

        Assert.Equal(72, bound.LengthMm, 0.01);
    }

    /// <summary>Worked by hand: within less than 1300 only 700 along fits, and twice 1300 is more than 1524.</summary>
    [Fact]
    public void A_turn_that_leaves_no_room_is_ruled_out() =>
        Assert.Equal(1300, Best(Tasks.Of(1524, 0, Tasks.Rectangle(1300, 700, 2, AllowedTurns.Quarter)), 1500).LengthMm, 0.01);

    /// <summary>
    /// Worked by hand: three bars of 60 by 40 in a strip of 100. Shorter than 120 no two follow each other, and three beside
    /// each other take 120; so 120, where two by area come to 72.
    /// </summary>
    [Fact]
    public void Pieces_too_long_to_follow_each_other_add_up_across()
    {
        var bound = Best(Tasks.Of(100, 0, Tasks.Rectangle(60, 40, 3)), 180);

        Assert.Equal(BoundKind.ChordsAcross, bound.Kind);
        Assert.Equal(120, bound.LengthMm, 0.01);
    }

    /// <summary>
    /// Worked by hand: a right triangle 100 along and as wide as the strip, and the same turned by half, make a rectangle
    /// of 100; turned no way, the second starts where the slope lets it: 100 after the first at its foot.
    /// </summary>
    [Theory]
    [InlineData(AllowedTurns.Half, 100)]
    [InlineData(AllowedTurns.None, 200)]
    public void Triangles_that_cannot_pass_each_other_lie_in_a_row(AllowedTurns turns, double bestMm)
    {
        var triangle = new Outline([new(0, 0), new(100, 0), new(0, 80)]);
        var bound = Best(Tasks.Of(80, 0, new NestingItem("triangle", triangle, 2, turns)), 250);

        Assert.Equal(bestMm, bound.LengthMm, 0.01);
    }

    /// <summary>
    /// Worked by hand, 8 across: beside the one 6 across nothing fits, so it takes 4 of the length alone. The others are 4, 3 and 4
    /// across, too much to lie side by side, so two of them follow each other, 5 + 3 at least: 12 in all. Chords tell 11.
    /// </summary>
    [Fact]
    public void What_no_sum_tells_is_tried_out()
    {
        var task = Tasks.Of(8, 0, Tasks.Rectangle(5, 4), Tasks.Rectangle(4, 6), Tasks.Rectangle(6, 3), Tasks.Rectangle(3, 4));
        var untried = new LengthBounds(task, new RectangleProof(mostSteps: 1));

        Assert.Equal(12, BruteForce.ShortestLength([(5, 4), (4, 6), (6, 3), (3, 4)], mayTurn: false, 8));
        Assert.Equal(new LengthBound(12 - LengthBounds.SameMm, BoundKind.Tried), Best(task, 12));
        Assert.Equal(BoundKind.Tried, new LengthBounds(task).RulesOut(11.9));
        Assert.Null(new LengthBounds(task).RulesOut(12));
        Assert.Null(untried.RulesOut(11.9));
        Assert.Equal(11, untried.Best(12).LengthMm, 0.01);
    }

    /// <summary>
    /// The same a hundred times as large, every corner mitred by 10. By hand, the largest rectangles inside are 480 by 400, 400 by 580,
    /// 580 by 300 and 300 by 380: again the second lies alone, and two of the others follow each other, 300 + 480 at least.
    /// </summary>
    [Fact]
    public void Of_mitred_pieces_the_rectangles_inside_are_tried_out()
    {
        var task = Tasks.Of(800, 0, Mitred(500, 400), Mitred(400, 600), Mitred(600, 300), Mitred(300, 400));
        var bounds = new LengthBounds(task);

        Assert.Equal(59, BruteForce.ShortestLength([(24, 20), (20, 29), (29, 15), (15, 19)], mayTurn: false, 40));
        Assert.Equal(BoundKind.Tried, bounds.RulesOut(59 * 20 - 0.01));
        Assert.Null(bounds.RulesOut(59 * 20));
        Assert.Null(new LengthBounds(task, new RectangleProof(mostSteps: 1)).RulesOut(59 * 20 - 0.01));
    }

    /// <summary>NetTopologySuite is the witness that it lies inside.</summary>
    [Fact]
    public void The_rectangle_inside_a_piece_lies_inside() => Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100]).Array[3, 9].Sample(
        points =>
        {
            var hull = ConvexHull.Of([new(40, 40), new(60, 40), new(50, 60), .. points.Select(point => new Point(point.Item1, point.Item2))]);
            var inside = InnerRectangles.LargestIn(hull);

            Assert.True(Witness.ToPolygon(hull).Buffer(1e-6).Covers(Witness.ToPolygon(Outline.Of(inside))));
            Assert.InRange(inside.WidthMm * inside.HeightMm, 1e-9, hull.AreaMm2);
        },
        iter: 200);

    private static NestingItem Mitred(double alongMm, double acrossMm) => new(
        $"{alongMm} x {acrossMm}, mitred",
        new([new(10, 0), new(alongMm - 10, 0), new(alongMm, 10), new(alongMm, acrossMm - 10), new(alongMm - 10, acrossMm), new(10, acrossMm), new(0, acrossMm - 10), new(0, 10)]),
        1,
        AllowedTurns.None);

    [Fact]
    public void A_task_without_room_has_no_bound() =>
        Assert.Throws<ArgumentException>(() => new LengthBounds(Tasks.Of(10, 0, Tasks.Rectangle(20, 20))));

    /// <summary>The area of chords against NetTopologySuite's union of the parts; half the gap round, less the corners cut off the circle.</summary>
    [Fact]
    public void The_chords_of_a_piece_with_a_dent_add_up_to_its_area()
    {
        var dented = new Outline([new(0, 0), new(50, 0), new(50, 40), new(30, 12), new(10, 35), new(0, 35)]);
        foreach (var gapMm in new[] { 0.0, 6 })
        {
            var parts = ConvexParts.Of(dented, gapMm);
            var union = parts.Select(Witness.ToPolygon).Aggregate<NetTopologySuite.Geometries.Geometry>((sum, part) => sum.Union(part));

            Assert.Equal(union.Area, ChordProfile.Of(parts).AreaMm2, 1e-6);
            Assert.True(union.Difference(Witness.ToPolygon(dented).Buffer(gapMm / 2, 64)).Area < 0.01);
        }

        Assert.Equal(dented.AreaMm2, ChordProfile.Of(ConvexParts.Of(dented, 0)).AreaMm2, 1e-9);
    }

    /// <summary>Brute force on a grid gives the shortest length; the bound must not pass it, and each smaller length that is ruled out must be out.</summary>
    [Fact]
    public void The_bound_never_passes_the_shortest_length() =>
        Gen.Select(Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6]).Array[2, 4], Gen.Bool).Sample(
            (sizes, turned) =>
            {
                var turns = turned ? AllowedTurns.Quarter : AllowedTurns.None;
                var task = Tasks.Of(7, 0, [.. sizes.Select(size => Tasks.Rectangle(size.Item1, size.Item2, 1, turns))]);
                var shortest = BruteForce.ShortestLength([.. sizes], turned, 7);
                var bounds = new LengthBounds(task);

                Assert.True(bounds.Best(shortest + 5).LengthMm <= shortest + 1e-6);
                Assert.Null(bounds.RulesOut(shortest + 1e-4));
            },
            iter: 150);

    /// <summary>Slanted and dented pieces with a gap, in layouts that the check has passed.</summary>
    [Fact]
    public void The_bound_never_passes_a_layout_that_was_found()
    {
        var corner = Gen.Double[5, 60];
        var shape = Gen.Select(corner, corner, corner, corner).Select((a, b, c, d) =>
            new Outline([new(0, 0), new(60 + a, 0), new(60 + a, 70 + b), new(30 + (c / 3), 5 + (d / 2)), new(0, 65 + d)]));
        Gen.Select(Gen.Select(shape, Gen.Int[1, 2], Gen.Int[0, 2]).Array[1, 4], Gen.Double[0, 12]).Sample(
            (items, gapMm) =>
            {
                var task = Tasks.Of(150, gapMm, [.. items.Select(item => new NestingItem("piece", item.Item1, item.Item2, (AllowedTurns)item.Item3))]);
                var foundMm = new BottomLeftSearch(5).Find(task)!.LengthMm;
                var bounds = new LengthBounds(task);

                Assert.True(bounds.Best(foundMm * 2).LengthMm <= foundMm + 1e-6);
                Assert.Null(bounds.RulesOut(foundMm + 1e-4));
            },
            iter: 60);
    }

    /// <summary>Poses beyond quarter turns, and mirrors: triangles of 45 degrees, in layouts that the check has passed.</summary>
    [Theory]
    [InlineData(AllowedTurns.Free, false)]
    [InlineData(AllowedTurns.Half, true)]
    public void The_bound_knows_every_pose(AllowedTurns turns, bool mayMirror) => Gen.Select(Gen.Double[20, 70], Gen.Double[20, 70], Gen.Int[1, 3]).Sample(
        (along, across, demand) =>
        {
            var triangle = new Outline([new(0, 0), new(along, 0), new(0, across)]);
            var task = Tasks.Of(80, 3, new NestingItem("triangle", triangle, demand, turns, mayMirror));
            var foundMm = new BottomLeftSearch(5).Find(task)!.LengthMm;

            Assert.True(new LengthBounds(task).Best(foundMm * 2).LengthMm <= foundMm + 1e-6);
        },
        iter: 20);

    private static LengthBound Best(NestingTask task, double foundMm) => new LengthBounds(task).Best(foundMm);
}
