using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

public sealed class FoldedSheetTests
{
    private static readonly FoldedSheet Square = FoldedSheet.Of([Outline.Of(new(0, 0, 100, 100))]);

    /// <summary>Folding loses no cloth: the plies' areas add up to the sheet's.</summary>
    [Fact]
    public void Folding_keeps_the_area() => Gen.Select(Gen.Double[-50, 150], Gen.Double[-50, 150], Gen.Double[0, 6.28], Gen.Double[0, 6.28]).Sample((x, y, first, second) =>
    {
        var folded = Square.Folded([Line(x, y, first), Line(y, x, second)]);

        Assert.Equal(10_000, folded.Plies.Sum(ply => ply.AreaMm2), 1e-4);
    });

    /// <summary>A sheet folded in half twice has four plies (paper in the hand).</summary>
    [Fact]
    public void Folded_in_half_twice_it_has_four_plies()
    {
        var quarter = Square.Folded([new(new(50, 0), new(0, 1)), new(new(0, 50), new(1, 0))]);

        Assert.Equal(4, quarter.CountAt(new(25, 75)));
        Assert.Equal(0, quarter.CountAt(new(75, 75)));
        Assert.Equal(0, quarter.CountAt(new(25, 25)));
    }

    /// <summary>Two hems of three layers crossing make nine: "Sailors should sew", SailNet, 2000.</summary>
    [Fact]
    public void Two_triple_hems_cross_in_nine_layers()
    {
        var hemmed = Square.Folded([Above(20), Above(30), LeftOf(80), LeftOf(70)]);

        Assert.Equal(1, hemmed.CountAt(new(30, 70)));
        Assert.Equal(3, hemmed.CountAt(new(30, 25)));
        Assert.Equal(3, hemmed.CountAt(new(75, 70)));
        Assert.Equal(9, hemmed.CountAt(new(75, 25)));
    }

    private static HalfPlane Above(double y) => new(new(0, y - 10), new(1, 0));

    private static HalfPlane LeftOf(double x) => new(new(x + 10, 0), new(0, 1));

    private static HalfPlane Line(double x, double y, double angle) => new(new(x, y), new(Math.Cos(angle), Math.Sin(angle)));
}
