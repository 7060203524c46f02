using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class NestingTaskTests
{
    private static readonly Outline Shape = Outline.Of(new(0, 0, 30, 20));

    [Theory]
    [InlineData(" ", 1, AllowedTurns.None)]
    [InlineData("piece", 0, AllowedTurns.None)]
    [InlineData("piece", 1, (AllowedTurns)4)]
    public void An_item_needs_a_name_a_copy_and_a_known_rule_of_turns(string name, int demand, AllowedTurns turns) =>
        Assert.ThrowsAny<ArgumentException>(() => new NestingItem(name, Shape, demand, turns));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(double.PositiveInfinity, 0)]
    [InlineData(100, -1)]
    [InlineData(100, double.NaN)]
    public void A_strip_has_a_width_and_a_gap_is_not_negative(double widthMm, double gapMm) =>
        Assert.ThrowsAny<ArgumentException>(() => new NestingTask([new("piece", Shape, 1, AllowedTurns.None)], widthMm, gapMm));

    [Fact]
    public void A_task_has_items()
    {
        Assert.Throws<ArgumentException>(() => new NestingTask([], 100, 0));
        Assert.Throws<ArgumentException>(() => new NestingTask(default, 100, 0));
    }

    [Fact]
    public void A_layout_places_items_of_its_task()
    {
        var task = Tasks.Of(100, 0, new NestingItem("piece", Shape, 1, AllowedTurns.None));

        Assert.Throws<ArgumentException>(() => new NestingLayout(task, []));
        Assert.Throws<ArgumentException>(() => new NestingLayout(task, [new(1, 0, 0, new(0, 0))]));
    }

    [Fact]
    public void A_placed_outline_is_turned_first_and_moved_then()
    {
        var task = Tasks.Of(100, 0, new NestingItem("piece", Shape, 1, AllowedTurns.Quarter));
        var layout = new NestingLayout(task, [new(0, 0, 1, new(25, 5))]);

        Assert.Equal(new(5, 5, 25, 35), layout.PlacedOutline(0).Bounds);
        Assert.Equal(25, layout.LengthMm);
        Assert.Equal(600.0 / 2500, layout.Use, 1e-12);
    }

    [Fact]
    public void An_item_that_fits_in_no_turn_is_named()
    {
        var task = Tasks.Of(
            25,
            0,
            new NestingItem("fits as it is", Shape, 1, AllowedTurns.None),
            new NestingItem("fits when turned", Shape.Turned(1), 1, AllowedTurns.Quarter),
            new NestingItem("too wide", Shape.Turned(1), 1, AllowedTurns.Half));

        Assert.Equal([2], NestingFit.ItemsTooWide(task));
        Assert.Null(new BottomLeftSearch().Find(task));
        Assert.Throws<ArgumentException>(() => LowerBound.LengthMm(task));
    }
}
