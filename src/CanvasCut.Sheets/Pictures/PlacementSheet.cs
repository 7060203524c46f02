using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The top from above with all that lies on it, and the table of marks.</summary>
public static class PlacementSheet
{
    private const double PictureMm = 240;
    private const double TallestMm = 220;
    private const double RoomBelowMm = 22;
    private const double RoomAboveMm = 16;
    private const double HeadMm = 32;
    private const double MarginMm = 12;
    private const double TableMm = 168;

    /// <summary>Draws the placement with the table of marks.</summary>
    public static Sheet Of(PatternSet patterns, SheetContext context) => Of([patterns], context);

    /// <summary>Draws everything that is mounted on a top, with the table of all marks.</summary>
    public static Sheet Of(ImmutableArray<PatternSet> mounted, SheetContext context)
    {
        var picture = Picture(mounted, context);
        var corner = new Point(PictureMm, -MarginMm - 2);
        var marks = MarksTable(context, TableMm).At(corner, mounted.SelectMany(patterns => Named(patterns, Marks(patterns, context))));
        var diagonals = DiagonalsTable(context, TableMm).At(corner - new Step(0, marks.HeightMm + 4), mounted.SelectMany(patterns => Named(patterns, Diagonals(patterns, context))));
        var height = Math.Max(picture.HeightMm, marks.HeightMm + diagonals.HeightMm + 6 + (2 * MarginMm));
        return picture with
        {
            WidthMm = PictureMm + TableMm + MarginMm,
            HeightMm = height,
            Figures = Figures.Moved(picture.Figures, new(0, height - picture.HeightMm))
                .AddRange(Figures.Moved(marks.Figures.AddRange(diagonals.Figures), new(0, height))),
        };
    }

    /// <summary>The picture alone.</summary>
    public static Sheet Picture(PatternSet patterns, SheetContext context) => Picture([patterns], context);

    /// <summary>The picture of everything that is mounted on a top.</summary>
    internal static Sheet Picture(ImmutableArray<PatternSet> mounted, SheetContext context)
    {
        var top = Plan.Of(mounted[0].Job.Top);
        var view = View.Fitting(top, new Box(MarginMm + 18, 0, PictureMm - 20, TallestMm));
        var (low, high) = (view.Of(top).Bottom - RoomBelowMm, view.Of(top).Top + RoomAboveMm);
        ImmutableArray<Figure> figures =
        [
            .. new TopPicture(mounted[0], view, context.Units).Figures(mounted.RemoveAt(0)),
            .. Figures.Moved([.. Head(mounted[0].Job.Top, context, view)], new(0, high + HeadMm)),
        ];
        return new("placement", Say.Of($"Placement, {context.JobName}"), PictureMm, high + HeadMm - low, Figures.Moved(figures, new(0, -low)));
    }

    /// <summary>The marks, as rows for <see cref="MarksTable"/>.</summary>
    internal static IEnumerable<ImmutableArray<string>> Marks(PatternSet patterns, SheetContext context) =>
        TopMarks.Of(patterns.Mounted).Select(mark => ImmutableArray.Create(
            mark.Name, LengthText.Of(mark.Place.Station, context.Units), OffsetText.Of(mark.Place.Offset, context.Units)));

    /// <summary>The diagonals, as rows for <see cref="DiagonalsTable"/>.</summary>
    internal static IEnumerable<ImmutableArray<string>> Diagonals(PatternSet patterns, SheetContext context) =>
        TopMarks.Diagonals(patterns.Mounted).Select(diagonal => ImmutableArray.Create(diagonal.Name, LengthText.Of(diagonal.Distance, context.Units)));

    /// <summary>Rows whose first cell says whose they are, where a top carries several.</summary>
    internal static IEnumerable<ImmutableArray<string>> Named(PatternSet patterns, IEnumerable<ImmutableArray<string>> rows) =>
        patterns.Job.Mounting.IsOnly ? rows : rows.Select(row => row.SetItem(0, $"{patterns.Job.Mounting}: {row[0]}"));

    /// <summary>The heads of the table of marks.</summary>
    internal static Table MarksTable(SheetContext context, double widthMm) =>
        new([new(Say.Of("Mark on the top"), widthMm - (2 * MeasureMm(context))), new(Say.Of("Station"), MeasureMm(context)), new(Say.Of("Offset"), MeasureMm(context))], 1.8);

    /// <summary>The heads of the table of diagonals.</summary>
    internal static Table DiagonalsTable(SheetContext context, double widthMm) =>
        new([new(Say.Of("Equal in pairs when the marks are square"), widthMm - MeasureMm(context)), new(Say.Of("Diagonal"), MeasureMm(context))], 1.8);

    private static double MeasureMm(SheetContext context) => context.Units == PrintUnits.Both ? 42 : 28;

    /// <summary>Title and scale, hanging from the top of the sheet.</summary>
    private static IEnumerable<Figure> Head(TopCloth top, SheetContext context, View view)
    {
        yield return new Lettering(Say.Of($"Placement: {context.JobName}"), new(MarginMm, -MarginMm - 5), 5, IsBold: true);
        yield return new Lettering(
            BareTopPicture.HowToRead(top, view),
            new(MarginMm, -MarginMm - 11),
            2.5);
        if (context.Warning.Length > 0)
        {
            yield return new Lettering(context.Warning, new(MarginMm, -MarginMm - 17), 3, IsBold: true);
        }
    }
}
