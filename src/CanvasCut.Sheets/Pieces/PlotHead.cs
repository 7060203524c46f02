using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>The strip at the head of a sheet for a copy shop: the test squares, and beside them what the sheet is and how it is printed.</summary>
internal static class PlotHead
{
    /// <summary>The test squares with room for a few words.</summary>
    public const double LeastWidthMm = 220;

    private const double GapMm = 6;
    private const double TitleMm = 5;
    private const double TextMm = 3.5;
    private const double PitchFactor = 1.7;

    /// <summary>Makes the strip.</summary>
    /// <param name="title">What the sheet shows.</param>
    /// <param name="context">The job.</param>
    /// <param name="widthMm">How wide it may be.</param>
    public static Block Of(string title, SheetContext context, double widthMm)
    {
        const double LeftMm = TestSquares.InchSideMm + GapMm;
        var figures = TestSquares.At(new(0, 0)).ToList();
        var top = TestSquares.InchSideMm;
        foreach (var (text, height) in WordsOf(title, context))
        {
            foreach (var line in TextWrap.Lines(text, widthMm - LeftMm, height, isBold: height > TextMm))
            {
                figures.Add(new Lettering(line, new(LeftMm, top - height), height, IsBold: height > TextMm));
                top -= height * PitchFactor;
            }
        }

        var bottom = Math.Min(0, top);
        return new(Figures.Moved([.. figures], new Step(0, -bottom)), widthMm, TestSquares.InchSideMm - bottom);
    }

    private static IEnumerable<(string Text, double HeightMm)> WordsOf(string title, SheetContext context)
    {
        yield return (title, TitleMm);
        yield return (context.JobName, TextMm);
        yield return (Say.Of("Print at 100 % (\"actual size\"), never \"fit\". Measure the squares both ways before you cut: half a millimetre off in 100 mm is the most."), TextMm);
        yield return (Say.Of("Each piece is drawn once; its label says how often it is cut. Cut cloth by the thickest line only."), TextMm);
        yield return ($"CanvasCut {context.Version}", TextMm);
        if (context.Warning.Length > 0)
        {
            yield return (context.Warning, TitleMm);
        }
    }
}
