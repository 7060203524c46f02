using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

public sealed class ZipperChoiceTests
{
    /// <summary>Worked by hand on stock of 24, 36, 48 and 60 in with 1 in setbacks.</summary>
    [Theory]
    [InlineData(49, 47, 48, 1)]
    [InlineData(50, 48, 48, 1)]
    [InlineData(50.1, 48.1, 60, 1)]
    [InlineData(66, 60, 60, 3)]
    public void The_shortest_stock_that_reaches_is_taken_else_the_longest(double edge, double run, double buy, double setback)
    {
        var choice = ZipperChoice.For(Length.FromInches(edge), SampleJobs.Zipper);

        Assert.Equal(run, choice.Run.Inches, 1e-9);
        Assert.Equal(buy, choice.Buy.Inches, 1e-9);
        Assert.Equal(setback, choice.Setback.Inches, 1e-9);
        Assert.Equal(setback > 1, choice.IsShort);
    }

    [Fact]
    public void A_continuous_zipper_has_a_tail_at_each_end()
    {
        var choice = ZipperChoice.For(SampleJobs.Mm(1100), SampleJobs.Zipper with { Kind = ZipperKind.Continuous });

        Assert.Equal(1100 - 50.8, choice.Run.Millimeters, 1e-9);
        Assert.Equal(1100 - 50.8 + 50, choice.Buy.Millimeters, 1e-9);
    }

    [Fact]
    public void Ticks_stand_every_200_millimetres_from_the_middle_and_inside_the_run() =>
        Gen.Double[120, 3000].Sample(edge =>
        {
            var choice = ZipperChoice.For(SampleJobs.Mm(edge), SampleJobs.Zipper);
            var ticks = choice.Ticks.Select(tick => tick.Millimeters).ToList();

            Assert.Contains(0, ticks);
            Assert.All(ticks, tick => Assert.InRange(Math.Abs(tick), 0, choice.Run.Millimeters / 2));
            Assert.All(ticks.Zip(ticks.Skip(1)), pair => Assert.Equal(200, pair.Second - pair.First, 1e-9));
            Assert.True(ticks[^1] + 200 >= (choice.Run.Millimeters / 2) - 1e-6);
        });

    [Fact]
    public void Run_and_setbacks_make_up_the_edge() =>
        Gen.Select(Gen.Double[120, 3000], Gen.Bool).Sample((edge, isContinuous) =>
        {
            var kind = isContinuous ? ZipperKind.Continuous : ZipperKind.Separating;
            var choice = ZipperChoice.For(SampleJobs.Mm(edge), SampleJobs.Zipper with { Kind = kind });
            Assert.Equal(edge, (choice.Run + (choice.Setback * 2)).Millimeters, 1e-6);
            Assert.True(choice.Buy.Millimeters >= choice.Run.Millimeters - 1e-9);
        });

    [Fact]
    public void The_chain_lies_the_reveal_outside_the_carrier_and_the_tape_half_its_width_further()
    {
        var mounted = MountedShape.Of(SampleJobs.Plain, LongSide.Athwart);
        var (forward, aft) = (mounted.Fastened.Zippers[0], mounted.Fastened.Zippers[1]);

        Assert.Equal(9.5, forward.ChainY - mounted.CarrierBox.Top, 1e-9);
        Assert.Equal(9.5, mounted.CarrierBox.Bottom - aft.ChainY, 1e-9);
        Assert.Equal(9.5 + 19.05, forward.Band.Top - mounted.CarrierBox.Top, 1e-9);
    }
}
