using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>How a set is printed and joined, in words.</summary>
internal static class PrintingRules
{
    /// <summary>The paragraphs, headings bold.</summary>
    public static IEnumerable<(string Text, bool IsBold)> Of(PageLayout layout)
    {
        yield return (Say.Of("Print"), true);
        yield return (Say.Of($"{layout.Paper.Name} paper, scale 100 % (\"actual size\"). Never \"fit\", never \"shrink\"."), false);
        yield return (Say.Of("Print this page first and measure the squares, both ways. Half a millimetre off in 100 mm is the most; if they are off by more, do not cut."), false);
        yield return (Say.Of("Join"), true);
        yield return (Say.Of("Letters name rows from the top, numbers columns from the left."), false);
        yield return (Say.Of("Cut each page along the thin full line at its right and lower edge. Lay it on the next page up to that page's dashed line, halves of the numbered diamonds together, and glue."), false);
        yield return (Say.Of("Join the pages of a row first, then the rows. Then measure the long scales across the joins."), false);
        yield return (Say.Of("Cut cloth by the thickest line only."), false);
    }
}
