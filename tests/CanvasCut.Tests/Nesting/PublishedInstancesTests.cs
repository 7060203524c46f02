using System.Globalization;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

/// <summary>
/// Published sets of rectangles that tile a sheet of the strip's width, so that its height is the best length there is,
/// turned or not. C1 to C3: E. Hopper, B. Turton, European Journal of Operational Research 128 (2001). N1, N2: E. Burke,
/// G. Kendall, G. Whitwell, Operations Research 52 (2004). T1a, n1b: E. Hopper, PhD thesis, Cardiff (2000).
/// </summary>
public sealed class PublishedInstancesTests
{
    /// <summary>How much longer than the best our length may be. The bottom-left rule itself promises no better than 3.</summary>
    private const double Factor = 1.15;

    private const string C11 = "2x12 7x12 8x6 3x6 3x5 5x5 3x12 3x7 5x7 2x6 3x2 4x2 3x4 4x4 9x2 11x2";
    private const string C13 = "4x14 5x2 2x2 9x7 5x5 2x5 7x7 3x5 6x5 3x2 6x2 4x6 6x3 6x3 10x3 10x3";
    private const string C21 = "7x5 14x5 14x5 14x8 4x8 21x13 7x11 14x11 4x5 18x3 21x3 17x11 4x11 7x4 5x4 6x7 18x5 18x5 3x5 7x3 5x3 18x4 3x4 12x2 6x2 21x5 17x3 4x3";
    private const string C31 = "11x3 11x3 13x3 9x2 7x2 9x3 7x3 11x2 11x2 13x2 11x4 13x4 3x5 3x5 2x2 2x3 5x4 6x4 12x2 1x2 13x5 12x4 1x4 5x2 6x2";
    private const string N1 = "7x6 7x6 40x16 5x20 24x24 7x4 4x4 7x8 4x20 5x4";
    private const string N2 = "23x9 19x4 12x21 6x4 6x4 7x13 9x4 4x6 4x6 23x6 16x6 4x14 14x6 6x6 5x4 7x6 14x11 4x7 8x4 14x4";
    private const string T1A = "82x38 37x13 81x22 16x25 21x64 29x55 52x178 98x39 102x37 46x103 29x86 10x37 63x26 50x11 13x40 60x29 119x20";
    private const string N1B = "29x137 11x31 75x22 22x107 63x132 44x9 31x27 55x18 28x74 58x58 80x16 70x14 38x36 24x27 39x68 99x22 161x41";

    [Theory]
    [InlineData(20, 20, C11, AllowedTurns.None)]
    [InlineData(20, 20, C11, AllowedTurns.Quarter)]
    [InlineData(20, 20, C13, AllowedTurns.None)]
    [InlineData(40, 40, N1, AllowedTurns.None)]
    [InlineData(30, 50, N2, AllowedTurns.None)]
    [InlineData(30, 50, N2, AllowedTurns.Quarter)]
    [InlineData(200, 200, T1A, AllowedTurns.None)]
    [InlineData(200, 200, N1B, AllowedTurns.Quarter)]
    public void Our_length_is_not_below_the_best_and_not_far_above(double widthMm, double bestMm, string rectangles, AllowedTurns turns)
    {
        var task = TaskOf(widthMm, rectangles, turns);
        var layout = new BottomLeftSearch().Find(task)!;

        Assert.Equal(bestMm, LowerBound.LengthMm(task), 1e-9);
        Assert.InRange(layout.LengthMm, bestMm, bestMm * Factor);
        Assert.Empty(LayoutCheck.Faults(layout));
    }

    [Fact]
    public void Ten_rectangles_are_laid_as_short_as_can_be() =>
        Assert.Equal(40, new BottomLeftSearch().Find(TaskOf(40, N1, AllowedTurns.None))!.LengthMm);

    [Theory]
    [InlineData(20, 20, C11, AllowedTurns.None)]
    [InlineData(20, 20, C11, AllowedTurns.Quarter)]
    [InlineData(20, 20, C13, AllowedTurns.None)]
    [InlineData(60, 30, C21, AllowedTurns.None)]
    [InlineData(40, 15, C31, AllowedTurns.None)]
    [InlineData(40, 40, N1, AllowedTurns.Quarter)]
    public void Rectangles_alone_are_laid_as_short_as_can_be(double widthMm, double bestMm, string rectangles, AllowedTurns turns)
    {
        var layout = new ThoroughSearch().Find(TaskOf(widthMm, rectangles, turns), new(NestingBudget.OfSteps(20_000_000)))!;

        Assert.Equal(bestMm, layout.LengthMm, 1e-9);
        Assert.Empty(LayoutCheck.Faults(layout));
    }

    /// <summary>The sources give the width across the strip first, then the height along it.</summary>
    private static NestingTask TaskOf(double widthMm, string rectangles, AllowedTurns turns) =>
        Tasks.Of(widthMm, 0, [.. rectangles.Split(' ').Select(text => RectangleOf(text, turns))]);

    private static NestingItem RectangleOf(string text, AllowedTurns turns)
    {
        var sides = text.Split('x').Select(side => double.Parse(side, CultureInfo.InvariantCulture)).ToArray();
        return Tasks.Rectangle(sides[1], sides[0], 1, turns);
    }
}
