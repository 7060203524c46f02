using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class NestingProblemsTests
{
    [Fact]
    public void What_cannot_be_placed_is_told_in_one_line_each()
    {
        var bowTie = new Outline([new(0, 0), new(10, 10), new(10, 0), new(0, 12)]);
        var task = Tasks.Of(
            25,
            0,
            Tasks.Rectangle(20, 30),
            Tasks.Rectangle(40, 30),
            new NestingItem("fixed", Outline.Of(new(0, 0, 1, 1)), 1, []),
            new NestingItem("bow tie", bowTie, 1, AllowedTurns.None));

        Assert.Equal(
            [
                "20 x 30: it is 30 mm across and the strip 25 mm; turned by 90 degrees it would fit.",
                "40 x 30: it is 30 mm across and the strip 25 mm; it fits in no turn and needs a seam, or a wider strip.",
                "fixed: no turn is allowed; allow at least one.",
                "bow tie: its outline crosses or touches itself; draw it so that no edge meets another.",
            ],
            NestingProblems.Of(task));
    }

    [Fact]
    public void An_endless_zone_and_the_repeat_are_kept()
    {
        var task = new NestingTask([Tasks.Rectangle(20, 30, 3)], 100, 0, [new(double.NegativeInfinity, 40, double.PositiveInfinity, 50)], 25);
        var layout = new BottomLeftSearch().Find(task)!;

        Assert.Empty(LayoutCheck.Faults(layout));
        Assert.Equal(45, layout.LengthMm, 1e-9);
    }
}
