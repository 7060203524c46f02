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
    public void A_piece_as_wide_as_the_strip_fits() =>
        Assert.Equal(5, Found(Tasks.Of(0.1 + 0.2, 0, Tasks.Rectangle(5, 0.3))).LengthMm);

    private static NestingLayout Found(NestingTask task)
    {
        var layout = Search.Find(task);

        Assert.NotNull(layout);
        Assert.Empty(LayoutCheck.Faults(layout));
        return layout;
    }
}
