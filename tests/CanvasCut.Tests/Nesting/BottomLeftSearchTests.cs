using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class BottomLeftSearchTests
{
    private static readonly BottomLeftSearch Search = new();

    /// <summary>Side by side across 1524 both reach 1300; 2 · 1300 · 700 / (1524 · 1300) = 0.91864: worked by hand.</summary>
    [Theory]
    [InlineData(AllowedTurns.None)]
    [InlineData(AllowedTurns.Half)]
    [InlineData(AllowedTurns.Quarter)]
    public void Two_long_rectangles_lie_side_by_side(AllowedTurns turns)
    {
        var layout = Found(Tasks.Of(1524, 0, Tasks.Rectangle(1300, 700, 2, turns)));

        Assert.Equal(1300, layout.LengthMm);
        Assert.Equal(0.9186, layout.Use, 5e-5);
    }

    /// <summary>Two widths and the gap just fit across; one hair more and they lie behind one another, the gap apart.</summary>
    [Theory]
    [InlineData(124, 1300)]
    [InlineData(124.01, 2724.01)]
    public void Rectangles_lie_exactly_the_gap_apart(double gapMm, double lengthMm)
    {
        var layout = Found(Tasks.Of(1524, gapMm, Tasks.Rectangle(1300, 700, 2)));

        Assert.Equal(lengthMm, layout.LengthMm, 1e-9);
        Assert.Equal(gapMm, Witness.DistanceMm(layout.PlacedOutline(0), layout.PlacedOutline(1)), 1e-9);
    }

    /// <summary>A square cut along its diagonal: turned by half the one half completes the other.</summary>
    [Fact]
    public void Two_halves_of_a_square_make_a_square()
    {
        var half = new NestingItem("half", new([new(0, 0), new(100, 0), new(0, 100)]), 2, AllowedTurns.Half);

        Assert.Equal(100, Found(Tasks.Of(100, 0, half)).LengthMm, 1e-9);
    }

    /// <summary>
    /// The diagonals lie the gap apart: the second half is moved by the gap times √2 along the strip, or up to that
    /// much along both, and there is no room across. Worked by hand.
    /// </summary>
    [Fact]
    public void Slanted_edges_lie_exactly_the_gap_apart()
    {
        var half = new NestingItem("half", new([new(0, 0), new(100, 0), new(0, 100)]), 2, AllowedTurns.Half);

        Assert.Equal(100 + (6 * Math.Sqrt(2)), Found(Tasks.Of(100, 6, half)).LengthMm, 1e-9);
    }

    /// <summary>Four equal pieces of 30 by 10 around a hole of 20 by 20, into which a fifth fits with nothing to spare.</summary>
    [Fact]
    public void A_piece_is_found_the_one_place_where_it_fits_exactly()
    {
        var task = Tasks.Of(40, 0, Tasks.Rectangle(30, 10, 4, AllowedTurns.Quarter), Tasks.Rectangle(20, 20));

        Assert.Equal(40, Found(task).LengthMm);
    }

    [Fact]
    public void A_piece_that_is_not_convex_is_placed_as_well()
    {
        var angle = new NestingItem("angle", new([new(0, 0), new(50, 0), new(50, 10), new(10, 10), new(10, 50), new(0, 50)]), 3, AllowedTurns.Quarter);

        Assert.InRange(Found(Tasks.Of(60, 3, angle)).LengthMm, 50, 156);
    }

    [Fact]
    public void A_piece_alone_lies_in_the_lower_left_corner_wherever_it_was_drawn()
    {
        var item = new NestingItem("piece", Outline.Of(new(-70, 15, -40, 35)), 1, AllowedTurns.None);

        Assert.Equal(new(0, 0, 30, 20), Found(Tasks.Of(100, 5, item)).PlacedOutline(0).Bounds);
    }

    /// <summary>The longest piece may not turn, so nothing can be shorter; all the others find room beside it.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(12.5)]
    public void Twenty_pieces_of_many_shapes_reach_no_further_than_the_longest(double gapMm)
    {
        var task = Tasks.Of(
            1524,
            gapMm,
            new NestingItem("cut corners", CutCorners(1310.7, 742.3, 30.1), 1, AllowedTurns.Half),
            new NestingItem("large triangle", new([new(0, 0), new(260.3, 0), new(0, 260.3)]), 4, AllowedTurns.Half),
            new NestingItem("small triangle", new([new(0, 0), new(133.3, 0), new(0, 133.3)]), 3, AllowedTurns.Half),
            new NestingItem("round corners", RoundedBox.Of(new(0, 0, 200, 140), 20), 4, AllowedTurns.Half),
            Tasks.Rectangle(1250, 91.4, 2, AllowedTurns.Half),
            Tasks.Rectangle(300.2, 80.1, 6, AllowedTurns.Half));

        Assert.Equal(1310.7, Found(task).LengthMm, 1e-9);
    }

    [Fact]
    public void A_search_cannot_try_fewer_than_no_orders() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BottomLeftSearch(-1));

    [Fact]
    public void A_piece_as_wide_as_the_strip_fits() =>
        Assert.Equal(5, Found(Tasks.Of(0.1 + 0.2, 0, Tasks.Rectangle(5, 0.3))).LengthMm);

    private static Outline CutCorners(double alongMm, double acrossMm, double cutMm)
    {
        var (right, top) = (alongMm - cutMm, acrossMm - cutMm);
        return new(
            [new(cutMm, 0), new(right, 0), new(alongMm, cutMm), new(alongMm, top), new(right, acrossMm), new(cutMm, acrossMm), new(0, top), new(0, cutMm)]);
    }

    private static NestingLayout Found(NestingTask task)
    {
        var layout = Search.Find(task);

        Assert.NotNull(layout);
        Assert.Empty(LayoutCheck.Faults(layout));
        return layout;
    }
}
