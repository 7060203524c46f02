using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The bare top from above, before it is known what lies on it.</summary>
public static class TopSheet
{
    private const double WidthMm = 240;
    private const double TallestMm = 220;
    private const double RoomBelowMm = 22;
    private const double RoomAboveMm = 16;
    private const double HeadMm = 26;
    private const double MarginMm = 12;

    /// <summary>Draws it.</summary>
    public static Sheet Of(TopCloth top, SheetContext context)
    {
        var whole = Plan.Of(top);
        var view = View.Fitting(whole, new Box(MarginMm + 18, 0, WidthMm - 20, TallestMm));
        var (low, high) = (view.Of(whole).Bottom - RoomBelowMm, view.Of(whole).Top + RoomAboveMm);
        ImmutableArray<Figure> figures =
        [
            .. new BareTopPicture(top, view, context.Units).Alone(),
            .. Figures.Moved([.. Head(top, context, view)], new(0, high + HeadMm)),
        ];
        return new("top", Say.Of($"Top, {context.JobName}"), WidthMm, high + HeadMm - low, Figures.Moved(figures, new(0, -low)));
    }

    /// <summary>Title and scale, hanging from the top of the sheet.</summary>
    private static IEnumerable<Figure> Head(TopCloth top, SheetContext context, View view)
    {
        yield return new Lettering(Say.Of($"The top: {context.JobName}"), new(MarginMm, -MarginMm - 5), 5, IsBold: true);
        yield return new Lettering(
            BareTopPicture.HowToRead(top, view),
            new(MarginMm, -MarginMm - 11),
            2.5);
    }
}
