using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>One page by which a printer is measured before anything is printed on it.</summary>
public static class ScaleSheet
{
    private const double RulerRoomMm = 2 * (Ruler.SideMm + 1);
    private const double TitleHeightMm = 5;
    private const double TextHeightMm = 2.6;
    private const double LineMm = 4.6;
    private const double BlankMm = 28;
    private const double ColumnMm = 78;
    private const double WidestTextMm = 190;

    /// <summary>The page.</summary>
    /// <param name="layout">The paper and its margin, from <see cref="TilePages.LayoutOf"/>.</param>
    /// <param name="footer">What stands at its foot.</param>
    public static Sheet Of(PageLayout layout, string footer)
    {
        var (body, job) = (BodyOf(layout), new TileJob(Say.Of("Scale test"), Say.Of($"{layout.Paper.Name} paper"), footer, layout.Correction.Words));
        var (across, up) = RulersIn(body);
        var squares = body.LowerLeft + new Step(RulerRoomMm + 4, RulerRoomMm + 4);
        var words = new Box(squares.X, squares.Y + TestSquares.InchSideMm + 6, Math.Min(body.Right, squares.X + WidestTextMm), body.Top);
        return layout.SheetOf(("scale-test", job.Title), isLandscape: false,
        [
            .. across.At(body.LowerLeft + new Step(RulerRoomMm, RulerRoomMm / 2), new(1, 0)),
            .. up.At(body.LowerLeft + new Step(RulerRoomMm / 2, RulerRoomMm), new(0, 1)),
            .. TestSquares.At(squares),
            .. Words(words, across, up),
            .. PageFooter.Of(layout.FooterOf(isLandscape: false), job, string.Empty, job.Title, Say.Of("page 1 of 1")),
        ]);
    }

    private static Box BodyOf(PageLayout layout)
    {
        var printable = layout.PrintableOf(isLandscape: false);
        return printable with { Bottom = printable.Bottom + layout.FooterMm };
    }

    /// <summary>As long as the page allows, in whole centimetres.</summary>
    private static (Ruler Across, Ruler Up) RulersIn(Box body)
    {
        return (new(PageLayout.AcrossName(isLandscape: false), LengthIn(body.WidthMm)), new(PageLayout.UpName(isLandscape: false), LengthIn(body.HeightMm)));

        static double LengthIn(double extentMm) => Math.Min(Ruler.LongestMm, Math.Floor((extentMm - RulerRoomMm - 1) / 10) * 10);
    }

    private static IEnumerable<Figure> Words(Box area, Ruler across, Ruler up)
    {
        yield return new Lettering(Say.Of("Scale test"), area.LowerLeft with { Y = area.Top - TitleHeightMm }, TitleHeightMm, IsBold: true);
        var y = area.Top - TitleHeightMm - LineMm;
        foreach (var line in ScaleRules.Before.SelectMany(text => TextWrap.Lines(text, area.WidthMm, TextHeightMm, isBold: false)))
        {
            y -= LineMm;
            yield return new Lettering(line, new(area.Left, y), TextHeightMm);
        }

        foreach (var (i, (name, of)) in Form(across, up).Index())
        {
            y -= i % 2 == 0 ? LineMm * 1.8 : 0;
            foreach (var figure in Blank(name, of, new(area.Left + (i % 2 * ColumnMm), y)))
            {
                yield return figure;
            }
        }

        y -= LineMm;
        foreach (var line in ScaleRules.After.SelectMany(text => TextWrap.Lines(text, area.WidthMm, TextHeightMm, isBold: false)))
        {
            y -= LineMm;
            yield return new Lettering(line, new(area.Left, y), TextHeightMm);
        }
    }

    private static IEnumerable<(string Name, string Of)> Form(Ruler across, Ruler up) =>
    [
        (Say.Of("Square x"), Say.Of("of 100 mm")),
        (Say.Of("Square y"), Say.Of("of 100 mm")),
        (Say.Of("Long scale x"), Say.Of($"of {across.LengthMm:0} mm")),
        (Say.Of("Long scale y"), Say.Of($"of {up.LengthMm:0} mm")),
        (Say.Of("Printer"), string.Empty),
        (Say.Of("Paper"), string.Empty),
    ];

    private static IEnumerable<Figure> Blank(string name, string of, Point at)
    {
        var fromMm = TextWidth.Of(Say.Of("Long scale x"), TextHeightMm, isBold: true) + 2;
        yield return new Lettering(name, at, TextHeightMm, IsBold: true);
        yield return Stroke.Open(LineRole.Note, at + new Step(fromMm, -0.5), at + new Step(fromMm + BlankMm, -0.5));
        yield return new Lettering(of, at + new Step(fromMm + BlankMm + 2, 0), TextHeightMm);
    }
}
