using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class SearchPropertyTests
{
    private const double WidthMm = 200;

    /// <summary>Short, for many tasks; what it tries it tries as the usual search does.</summary>
    private static readonly BottomLeftSearch Search = new(mostVaried: 20);

    private static readonly Gen<AllowedTurns> Turns = Gen.Int[0, 2].Select(turns => (AllowedTurns)turns);

    private static readonly Gen<Outline> Rectangle =
        Gen.Select(Gen.Double[5, 190], Gen.Double[5, 190], (along, across) => Outline.Of(new(0, 0, along, across)));

    /// <summary>Three or four corners, never in one line, anywhere along the strip.</summary>
    private static readonly Gen<Outline> Slanted =
        Gen.Select(Gen.Double[0, 150], Gen.Double[0, 150], Gen.Double[0, 150], Gen.Double[-300, 300])
            .Select((a, b, c, x) => new Outline([new(x + a, -7), new(x + 160, b), new(x - 1, c), new(x + (a / 2), c + 10)]))
            .Select(outline => ConvexHull.Of(outline.Corners));

    private static readonly Gen<NestingTask> Task =
        Gen.Select(
            Gen.Select(Gen.OneOf(Rectangle, Slanted), Gen.Int[1, 3], Turns, (shape, demand, turns) => new NestingItem("piece", shape, demand, turns)).Array[1, 4],
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 25]),
            (items, gapMm) => Tasks.Of(WidthMm, gapMm, items));

    /// <summary>The search itself refuses a layout with faults; the check is asked again all the same.</summary>
    [Fact]
    public void A_layout_has_no_fault_is_never_below_the_bound_and_is_the_same_every_time() =>
        Task.Sample(
            task =>
            {
                var layout = Search.Find(task);
                var again = Search.Find(task);

                Assert.NotNull(layout);
                Assert.NotNull(again);
                Assert.Empty(LayoutCheck.Faults(layout));
                Assert.True(layout.LengthMm >= LowerBound.LengthMm(task) - 1e-6);
                Assert.Equal(layout.Placements.AsEnumerable(), again.Placements);
            },
            iter: 150);

    /// <summary>
    /// By brute force on a grid, which misses nothing: in a layout pushed left and down each coordinate is a sum of
    /// sides of other pieces (the normal patterns of N. Christofides and C. Whitlock, Operations Research 25, 1977).
    /// </summary>
    [Fact]
    public void Up_to_three_rectangles_lie_as_short_as_can_be() =>
        Gen.Select(Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6]).Array[2, 3], Gen.Bool).Sample(
            (sizes, turned) =>
            {
                var turns = turned ? AllowedTurns.Quarter : AllowedTurns.None;
                var task = Tasks.Of(7, 0, [.. sizes.Select(size => Tasks.Rectangle(size.Item1, size.Item2, 1, turns))]);

                Assert.Equal(BruteForce.ShortestLength([.. sizes], turned, 7), Search.Find(task)!.LengthMm, 1e-9);
            },
            iter: 100);
}
