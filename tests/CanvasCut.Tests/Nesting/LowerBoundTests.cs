using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class LowerBoundTests
{
    /// <summary>2 · 1300 · 700 / 1524 = 1194.2257; turned, each reaches 700 along and fits across: worked by hand.</summary>
    [Fact]
    public void Two_long_rectangles_need_their_area_over_the_width() =>
        Assert.Equal(1194.2257, LowerBound.LengthMm(Tasks.Of(1524, 0, Tasks.Rectangle(1300, 700, 2, AllowedTurns.Quarter))), 5e-5);

    [Fact]
    public void A_piece_that_may_not_turn_needs_its_own_length() =>
        Assert.Equal(1300, LowerBound.LengthMm(Tasks.Of(1524, 0, Tasks.Rectangle(1300, 700, 2, AllowedTurns.Half))));

    [Fact]
    public void A_turn_that_does_not_fit_across_shortens_nothing() =>
        Assert.Equal(1600, LowerBound.LengthMm(Tasks.Of(1524, 0, Tasks.Rectangle(1600, 10, 1, AllowedTurns.Quarter))));
}
