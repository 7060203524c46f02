using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>The strip at the foot of a page: its label, the piece, its number, and the job's own words.</summary>
internal static class PageFooter
{
    /// <summary>The strip's height without a note.</summary>
    public const double HeightMm = 12;

    /// <summary>What a note adds to it.</summary>
    public const double NoteMm = 4;

    private const double UpperLineMm = 5.6;

    private const double LowerLineMm = 1;

    private const double LabelHeightMm = 4.2;

    private const double TitleHeightMm = 2.8;

    private const double SmallHeightMm = 2;

    private const double WrappedHeightMm = 1.8;

    private const double WrappedLineMm = 2.7;

    private const double GapMm = 4;

    /// <summary>The strip's figures.</summary>
    /// <param name="strip">Where it is.</param>
    /// <param name="job">What stands on every page.</param>
    /// <param name="label">The page's label; empty where it has none.</param>
    /// <param name="title">What the page shows.</param>
    /// <param name="number">As in "page 3 of 12".</param>
    public static ImmutableArray<Figure> Of(Box strip, TileJob job, string label, string title, string number)
    {
        if (job.Note.Length > 0)
        {
            var note = new Lettering(job.Note, strip.LowerLeft + new Step(0, LowerLineMm), SmallHeightMm, IsBold: true);
            return Of(strip with { Bottom = strip.Bottom + NoteMm }, job with { Note = string.Empty }, label, title, number).Add(note);
        }

        var upperMm = strip.Bottom + UpperLineMm;
        var titleAt = strip.Left + (label.Length == 0 ? 0 : TextWidth.Of(label, LabelHeightMm, isBold: true) + GapMm);
        var rightText = Say.Of($"print at 100 %    {number}");
        var titleRoomMm = strip.Right - TextWidth.Of(rightText, TitleHeightMm, isBold: false) - GapMm - titleAt;
        return
        [
            Stroke.Open(LineRole.Note, new(strip.Left, strip.Top - 0.5), new(strip.Right, strip.Top - 0.5)),
            new Lettering(label, new(strip.Left, upperMm), LabelHeightMm, IsBold: true),
            .. Title(title, new(titleAt, upperMm), titleRoomMm),
            new Lettering(rightText, new(strip.Right, upperMm), TitleHeightMm, TextAnchor.Right),
            .. JobLine(strip, job),
        ];
    }

    /// <summary>On one line, or smaller on two: a page of several pieces names them all.</summary>
    private static IEnumerable<Figure> Title(string title, Point at, double widthMm)
    {
        if (TextWidth.Of(title, TitleHeightMm, isBold: true) <= widthMm)
        {
            return [new Lettering(title, at, TitleHeightMm, IsBold: true)];
        }

        var lines = TextWrap.Lines(title, widthMm, WrappedHeightMm, isBold: true).ToList();
        var second = TextWidth.Shortened(string.Join(' ', lines.Skip(1)), widthMm, WrappedHeightMm, isBold: true);
        return
        [
            new Lettering(lines[0], at + new Step(0, WrappedLineMm), WrappedHeightMm, IsBold: true),
            new Lettering(second, at, WrappedHeightMm, IsBold: true),
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
