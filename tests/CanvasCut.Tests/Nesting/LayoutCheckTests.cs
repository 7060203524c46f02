using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

public sealed class LayoutCheckTests
{
    private static readonly NestingTask Task = Tasks.Of(50, 2, Tasks.Rectangle(30, 20, 2));

    [Fact]
    public void Pieces_just_the_gap_apart_are_without_fault() => Assert.Empty(Faults(Placed(0, 0, 0), Placed(1, 0, 22)));

    [Theory]
    [InlineData(0, 19, "30 x 20 (copy 1) and 30 x 20 (copy 2) overlap by 30 mm2.")]
    [InlineData(0, 21, "30 x 20 (copy 1) and 30 x 20 (copy 2) lie only 1 mm apart.")]
    [InlineData(31, 21, "30 x 20 (copy 1) and 30 x 20 (copy 2) lie only 1.414214 mm apart.")]
    [InlineData(0, 20, "30 x 20 (copy 1) and 30 x 20 (copy 2) lie only 0 mm apart.")]
    [InlineData(-0.01, 22, "30 x 20 (copy 2) lies outside the strip.")]
    [InlineData(0, 30.01, "30 x 20 (copy 2) lies outside the strip.")]
    public void A_piece_in_the_wrong_place_is_a_fault(double x, double y, string fault) =>
        Assert.Equal([fault], Faults(Placed(0, 0, 0), Placed(1, x, y)));

    [Fact]
    public void A_piece_inside_another_is_a_fault()
    {
        var task = Tasks.Of(50, 0, Tasks.Rectangle(30, 20), Tasks.Rectangle(2, 2));
        var layout = new NestingLayout(task, [new(0, 0, 0, new(0, 0)), new(1, 0, 0, new(5, 5))]);

        Assert.Equal(["30 x 20 (copy 1) and 2 x 2 (copy 1) overlap by 4 mm2."], LayoutCheck.Faults(layout));
    }

    [Fact]
    public void Missing_doubled_and_surplus_copies_are_faults()
    {
        const string fault = "The copies of 30 x 20 are not each placed once.";

        Assert.Equal([fault], Faults(Placed(0, 0, 0)));
        Assert.Equal([fault], Faults(Placed(0, 0, 0), Placed(0, 0, 22)));
        Assert.Equal([fault], Faults(Placed(0, 0, 0), Placed(1, 0, 22), Placed(2, 40, 0)));
    }

    [Fact]
    public void A_turn_that_is_not_allowed_is_a_fault() =>
        Assert.Equal(
            ["30 x 20 (copy 2) is turned by 90 degrees, which is not allowed."],
            Faults(Placed(0, 0, 0), new(0, 1, 1, new(60, 0))));

    [Fact]
    public void A_piece_that_is_mirrored_unasked_is_a_fault() =>
        Assert.Equal(
            ["30 x 20 (copy 2) is mirrored and turned by 0 degrees, which is not allowed."],
            Faults(Placed(0, 0, 0), new(0, 1, new Pose(0, isMirrored: true), new(60, 22))));

    [Fact]
    public void A_piece_in_a_barred_zone_or_off_the_repeat_is_a_fault()
    {
        var task = new NestingTask([Tasks.Rectangle(30, 20, 2)], 50, 0, [new(double.NegativeInfinity, 45, double.PositiveInfinity, 50)], 25);
        var layout = new NestingLayout(task, [Placed(0, 0, 25), Placed(1, 50, 26)]);
        var shifted = new NestingLayout(task, [Placed(0, 0, 25), Placed(1, 50.5, 0)]);

        Assert.Equal(["30 x 20 (copy 2) lies in a barred zone."], LayoutCheck.Faults(layout));
        Assert.Equal(["30 x 20 (copy 2) starts off the repeat."], LayoutCheck.Faults(shifted));
    }

    private static ImmutableArray<string> Faults(params NestingPlacement[] placements) =>
        LayoutCheck.Faults(new(Task, [.. placements]));

    private static NestingPlacement Placed(int copy, double x, double y) => new(0, copy, 0, new Step(x, y));
}
