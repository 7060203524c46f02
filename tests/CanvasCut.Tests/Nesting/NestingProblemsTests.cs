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

    /// <summary>A bar that lies slanting is level, and so narrow enough, when it is turned by 135 degrees.</summary>
    [Fact]
    public void A_turn_between_the_quarters_is_named_where_it_helps()
    {
        var slanting = new Outline([new(0, 0), new(100, 100), new(95, 105), new(-5, 5)]);

        Assert.Equal(
            ["bar: it is 105 mm across and the strip 20 mm; turned by 135 degrees it would fit."],
            NestingProblems.Of(Tasks.Of(20, 0, new NestingItem("bar", slanting, 1, AllowedTurns.Quarter))));
    }

    /// <summary>Two endless zones leave 30, 20 and 10 across; one that ends somewhere bars nothing.</summary>
    [Fact]
    public void Zones_that_leave_no_room_are_told()
    {
        Box[] zones = [Endless(30, 50), Endless(70, 90), new(0, 0, 500, 100)];
        var task = new NestingTask([Tasks.Rectangle(50, 31), Tasks.Rectangle(50, 30)], 100, 0, [.. zones]);

        Assert.Equal(["50 x 31: the barred zones leave no room for it across the strip; they leave 30 mm at most."], NestingProblems.Of(task));
        Assert.Null(new ThoroughSearch().Find(task));
    }

    [Fact]
    public void An_outline_without_area_cannot_be_made() =>
        Assert.Contains("no area", Assert.Throws<ArgumentException>(() => new Outline([new(0, 0), new(10, 0), new(20, 0)])).Message, StringComparison.Ordinal);

    [Fact]
    public void An_endless_zone_and_the_repeat_are_kept()
    {
        var task = new NestingTask([Tasks.Rectangle(20, 30, 3)], 100, 0, [new(double.NegativeInfinity, 40, double.PositiveInfinity, 50)], 25);
        var layout = new BottomLeftSearch().Find(task)!;

        Assert.Empty(LayoutCheck.Faults(layout));
        Assert.Equal(45, layout.LengthMm, 1e-9);
    }

    private static Box Endless(double bottom, double top) => new(double.NegativeInfinity, bottom, double.PositiveInfinity, top);
}
