using CanvasCut.Drawing.Pages;

namespace CanvasCut.Tests.Drawing;

public sealed class TilePlanTests
{
    private static readonly Gen<PaperSize> AnyPaper = Gen.Int[0, PaperSize.Standard.Length - 1].Select(i => PaperSize.Standard[i]);

    /// <summary>Worked by hand: (1300 − 10)/(190 − 10) = 7.17 and (700 − 10)/(277 − 10) = 2.58.</summary>
    [Fact]
    public void A_carrier_takes_eight_by_three_upright_pages_A4()
    {
        var plan = TilePlan.Of(new(1300, 700), new(PaperSize.A4, 10, 10), isLandscape: false, isTurned: false);

        Assert.Equal((8, 3), (plan.Columns, plan.Rows));
    }

    /// <summary>Worked by hand, and fewer than with the piece upright: (1300 − 10)/(277 − 10) = 4.83 and (700 − 10)/(190 − 10) = 3.83.</summary>
    [Fact]
    public void The_same_carrier_turned_takes_four_by_five()
    {
        var plan = TilePlan.For(1300, 700, new(PaperSize.A4, 10, 10));

        Assert.Equal((IsLandscape: false, IsTurned: true), (plan.IsLandscape, plan.IsTurned));
        Assert.Equal((4, 5), (plan.Columns, plan.Rows));
    }

    [Fact]
    public void No_other_way_round_takes_fewer_pages() =>
        Gen.Select(Gen.Double[1, 3000], Gen.Double[1, 3000], AnyPaper, Gen.Double[0, 15], Gen.Double[0, 20]).Sample((widthMm, heightMm, paper, marginMm, overlapMm) =>
        {
            var plan = TilePlan.For(widthMm, heightMm, new(paper, marginMm, overlapMm));
            int[] counts =
            [
                Counted(widthMm, heightMm, paper.WidthMm - (2 * marginMm), paper.HeightMm - (2 * marginMm), overlapMm),
                Counted(heightMm, widthMm, paper.WidthMm - (2 * marginMm), paper.HeightMm - (2 * marginMm), overlapMm),
                Counted(widthMm, heightMm, paper.HeightMm - (2 * marginMm), paper.WidthMm - (2 * marginMm), overlapMm),
                Counted(heightMm, widthMm, paper.HeightMm - (2 * marginMm), paper.WidthMm - (2 * marginMm), overlapMm),
            ];

            Assert.Equal(counts.Min(), plan.PageCount);
            Assert.Equal(Array.IndexOf(counts, counts.Min()), (plan.IsLandscape ? 2 : 0) + (plan.IsTurned ? 1 : 0));
        });

    [Theory]
    [InlineData(100, 10)]
    [InlineData(10, 185)]
    [InlineData(-1, 10)]
    public void Paper_too_small_for_its_margins_is_refused(double marginMm, double overlapMm)
    {
        var layout = new PageLayout(PaperSize.A4, marginMm, overlapMm, 12);

        Assert.False(layout.IsPossible);
        Assert.Contains("A4", Assert.Throws<ArgumentException>(() => TilePlan.For(500, 500, layout)).Message, StringComparison.Ordinal);
    }

    /// <summary>ISO 216; ANSI/ASME Y14.1 A to E (8.5 x 11, 11 x 17, 17 x 22, 22 x 34, 34 x 44 in); the American Arch D and E.</summary>
    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("a3", 297, 420)]
    [InlineData("A2", 420, 594)]
    [InlineData("A1", 594, 841)]
    [InlineData("A0", 841, 1189)]
    [InlineData("Letter", 8.5 * 25.4, 11 * 25.4)]
    [InlineData("tabloid", 11 * 25.4, 17 * 25.4)]
    [InlineData("ANSI C", 17 * 25.4, 22 * 25.4)]
    [InlineData("ANSI D", 22 * 25.4, 34 * 25.4)]
    [InlineData("ANSI E", 34 * 25.4, 44 * 25.4)]
    [InlineData("Arch D", 24 * 25.4, 36 * 25.4)]
    [InlineData("Arch E", 36 * 25.4, 48 * 25.4)]
    public void Paper_has_its_published_size(string name, double widthMm, double heightMm)
    {
        var paper = PaperSize.Named(name);

        Assert.NotNull(paper);
        Assert.Equal(widthMm, paper.WidthMm, 1e-9);
        Assert.Equal(heightMm, paper.HeightMm, 1e-9);
    }

    /// <summary>Lays pages down one by one until the length is covered.</summary>
    private static int Counted(double widthMm, double heightMm, double windowWidthMm, double windowHeightMm, double overlapMm)
    {
        return Along(widthMm, windowWidthMm) * Along(heightMm, windowHeightMm);

        int Along(double lengthMm, double windowMm)
        {
            var pages = 1;
            for (var coveredMm = windowMm; coveredMm < lengthMm - 1e-6; coveredMm += windowMm - overlapMm)
            {
                pages++;
            }

            return pages;
        }
    }
}
