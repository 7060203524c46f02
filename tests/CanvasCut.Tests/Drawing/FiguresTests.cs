using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Drawing;

public sealed class FiguresTests
{
    private static readonly ImmutableArray<Figure> Inner =
    [
        Stroke.Open(LineRole.Cut, new(1, 2), new(7, 3), new(5, 9)),
        new Tint(Outline.Of(new(2, 2, 4, 5)), 0.3),
        new Lettering("Grain", new(3, 4), 2, TextAnchor.Middle, 30),
    ];

    private static readonly ImmutableArray<Figure> All = [.. Inner, new Inset(Inner, new(0, 1, 8, 10), new(20, 5), 0.5)];

    [Fact]
    public void Four_quarter_turns_bring_everything_back()
    {
        var turned = Enumerable.Range(0, 4).Aggregate(All, (figures, _) => Figures.Turned(figures, 1));

        Assert.Equal(Figures.BoundsOf(All), Figures.BoundsOf(turned));
        Assert.Equal(((Stroke)All[0]).Points, ((Stroke)turned[0]).Points);
        Assert.Equal(All[2], turned[2]);
        Assert.Equal(((Inset)All[3]).At, ((Inset)turned[3]).At);
    }

    [Fact]
    public void Each_figure_turns_with_its_box() => Gen.Int[-5, 5].Sample(quarters =>
        Assert.All(All, figure =>
        {
            var expected = Outline.Of(Figures.BoundsOf(figure)).Turned(quarters).Bounds;
            AssertSame(expected, Figures.BoundsOf(Figures.Turned([figure], quarters)));
        }));

    [Fact]
    public void Each_figure_moves_with_its_box()
    {
        var step = new Step(3, -4);

        Assert.All(All, figure => AssertSame(Figures.BoundsOf(figure).MovedBy(step), Figures.BoundsOf(Figures.Moved([figure], step))));
    }

    [Fact]
    public void A_text_stands_between_its_anchors()
    {
        var left = new Lettering("Mouth", new(10, 20), 3);
        var box = Figures.BoundsOf(left);
        var widthMm = TextWidth.Of(left);

        Assert.Equal((10, 10 + widthMm), (box.Left, box.Right));
        Assert.Equal(23, box.Top, 1e-12);
        Assert.Equal(10 - (widthMm / 2), Figures.BoundsOf(left with { Anchor = TextAnchor.Middle }).Left, 1e-12);
        Assert.Equal(10 - widthMm, Figures.BoundsOf(left with { Anchor = TextAnchor.Right }).Left, 1e-12);
    }

    private static void AssertSame(Box expected, Box actual)
    {
        Assert.Equal(expected.Left, actual.Left, 1e-9);
        Assert.Equal(expected.Bottom, actual.Bottom, 1e-9);
        Assert.Equal(expected.Right, actual.Right, 1e-9);
        Assert.Equal(expected.Top, actual.Top, 1e-9);
    }
}
