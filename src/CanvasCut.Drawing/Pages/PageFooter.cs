using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing.Pages;

/// <summary>The strip at the foot of a page: its label, the piece, its number, and the job's own words.</summary>
internal static class PageFooter
{
    /// <summary>The strip's height.</summary>
    public const double HeightMm = 12;

    private const double UpperLineMm = 5.6;

    private const double LowerLineMm = 1;

    private const double LabelHeightMm = 4.2;

    private const double TitleHeightMm = 2.8;

    private const double SmallHeightMm = 2;

    private const double GapMm = 4;

    /// <summary>The strip's figures.</summary>
    /// <param name="strip">Where it is.</param>
    /// <param name="job">What stands on every page.</param>
    /// <param name="label">The page's label; empty where it has none.</param>
    /// <param name="title">What the page shows.</param>
    /// <param name="number">As in "page 3 of 12".</param>
    public static ImmutableArray<Figure> Of(Box strip, TileJob job, string label, string title, string number)
    {
        var upperMm = strip.Bottom + UpperLineMm;
        var titleAt = strip.Left + (label.Length == 0 ? 0 : TextWidth.Of(label, LabelHeightMm, isBold: true) + GapMm);
        var rightText = $"print at 100 %    {number}";
        var titleRoomMm = strip.Right - TextWidth.Of(rightText, TitleHeightMm, isBold: false) - GapMm - titleAt;
        return
        [
            Stroke.Open(LineRole.Note, new(strip.Left, strip.Top - 0.5), new(strip.Right, strip.Top - 0.5)),
            new Lettering(label, new(strip.Left, upperMm), LabelHeightMm, IsBold: true),
            new Lettering(TextWidth.Shortened(title, titleRoomMm, TitleHeightMm, isBold: true), new(titleAt, upperMm), TitleHeightMm, IsBold: true),
            new Lettering(rightText, new(strip.Right, upperMm), TitleHeightMm, TextAnchor.Right),
            .. JobLine(strip, job),
        ];
    }

    private static IEnumerable<Figure> JobLine(Box strip, TileJob job)
    {
        var yMm = strip.Bottom + LowerLineMm;
        var header = TextWidth.Shortened(job.Header, (strip.WidthMm - GapMm) * 0.6, SmallHeightMm, isBold: false);
        var footerRoomMm = strip.WidthMm - GapMm - TextWidth.Of(header, SmallHeightMm, isBold: false);
        yield return new Lettering(header, new(strip.Left, yMm), SmallHeightMm);
        yield return new Lettering(TextWidth.Shortened(job.Footer, footerRoomMm, SmallHeightMm, isBold: false), new(strip.Right, yMm), SmallHeightMm, TextAnchor.Right);
    }
}
