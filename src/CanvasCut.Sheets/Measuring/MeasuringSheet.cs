using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>One page to take to the boat: what to measure, in the order of work, with blanks to fill in.</summary>
public static class MeasuringSheet
{
    private const double FormMm = 186;
    private const double MarginMm = 10;
    private const double TitleMm = 5;
    private const double TextMm = 1.9;
    private const double PitchMm = 3.3;
    private const double HeadingMm = 2.5;
    private const double HeadingRoomMm = 6.3;

    private static ImmutableArray<string> First =>
    [
        Say.Of("1. Frame as it will stand: straps tight, nothing leaning on it. Mind your footing; do not stand on the frame."),
        Say.Of("2. Datum: the top's forward edge on the centreline. Mark the ends of every bow where the cloth ends, P to port and S to starboard. An edge without a tube counts as a bow, its tube is 0. Bow 1 is the forward one."),
        Say.Of("3. Centreline: mark half the girth on every bow and stretch a string from bow 1 to the last. Where a mark is off the string, write how far. Stations there run along the cloth, from the top's forward edge to the middle of each tube."),
        Say.Of("4. Take the measures below. Read every one twice, the crown three times, and take the tape off in between: one reading cannot show that it is wrong. A steel tape, one unit, and do not copy the first reading."),
        Say.Of("5. Height: of the tube's middle on the centreline, over any level common to all bows, such as a string from the coaming; to 5 mm. Sag aft: below a straight line, halfway to the next bow."),
    ];

    /// <summary>The page.</summary>
    /// <param name="paper">A4, Letter or larger.</param>
    /// <param name="footer">What stands at its foot.</param>
    public static Sheet Of(PaperSize paper, string footer)
    {
        var (left, top) = ((paper.WidthMm - FormMm) / 2, paper.HeightMm - MarginMm);
        var figures = ImmutableArray.CreateBuilder<Figure>();
        figures.AddRange(Head(new(left, top)));
        figures.AddRange(Paragraphs(new(left, top - TitleMm - 14), FormMm - MeasuringSketch.WidthMm - 4));
        figures.AddRange(Figures.Moved(MeasuringSketch.Figures, new(left + FormMm - MeasuringSketch.WidthMm, top - 4 - MeasuringSketch.HeightMm)));
        var y = top - 4 - MeasuringSketch.HeightMm;
        foreach (var (heading, grid, names) in Grids)
        {
            figures.Add(new Lettering(heading, new(left, y - HeadingRoomMm + 1.6), HeadingMm, IsBold: true));
            figures.AddRange(grid.At(new(left, y - HeadingRoomMm), names));
            y -= HeadingRoomMm + BlankGrid.HeightOf(names.Length);
        }

        figures.Add(new Lettering(Say.Of("Then: canvascut measure, with the readings in a file as docs/measuring.md shows. Nothing checks 8 to 10: measure those twice."), new(left, y - 4), TextMm));
        figures.Add(new Lettering(footer, new(left + FormMm, MarginMm - 3), TextMm, TextAnchor.Right));
        return new("measuring-sheet", Say.Of("Measuring sheet"), paper.WidthMm, paper.HeightMm, figures.ToImmutable());
    }

    private static ImmutableArray<(string Heading, BlankGrid Grid, ImmutableArray<string> Names)> Grids =>
    [
        (Say.Of("6. Bow by bow, and on the centreline from the forward edge"), Grid(("", 11), (Say.Of("girth"), 16.5), ("", 16.5), (Say.Of("chord"), 16.5), ("", 16.5), (Say.Of("crown"), 13), ("", 13), ("", 13), (Say.Of("station"), 16.5), ("", 16.5), (Say.Of("height"), 14), (Say.Of("tube"), 11), (Say.Of("sag aft"), 12)), [Say.Of("bow 1"), Say.Of("bow 2"), Say.Of("bow 3"), Say.Of("bow 4"), Say.Of("bow 5")]),
        (Say.Of("7. From bow 1 along each edge, and the diagonals of each bay"), Grid(("", 14), (Say.Of("port station"), 21.5), ("", 21.5), (Say.Of("starboard station"), 21.5), ("", 21.5), (Say.Of("P before to S here"), 21.5), ("", 21.5), (Say.Of("S before to P here"), 21.5), ("", 21.5)), [Say.Of("bow 2"), Say.Of("bow 3"), Say.Of("bow 4"), Say.Of("bow 5")]),
        (Say.Of("Overall: bow 1 to the last; the top's length and width along the cloth; the string"), Grid(("", 14), (Say.Of("P1 to last S"), 17), ("", 17), (Say.Of("S1 to last P"), 17), ("", 17), (Say.Of("length of the top"), 17), ("", 17), (Say.Of("width of the top"), 17), ("", 17), (Say.Of("string off, bow 2 to 5"), 36)), [Say.Of("overall")]),
        (Say.Of("8. Keep-outs, from both sides"), Grid((Say.Of("what"), 42), (Say.Of("station from, to"), 24), ("", 24), (Say.Of("from port edge, to"), 24), ("", 24), (Say.Of("from starboard edge, to"), 24), ("", 24)), ["", "", ""]),
        (Say.Of("9. Panel, measured, not from its data sheet"), Grid(("", 14), (Say.Of("length, both edges"), 21.5), ("", 21.5), (Say.Of("width, both edges"), 21.5), ("", 21.5), (Say.Of("both diagonals"), 21.5), ("", 21.5), (Say.Of("thickness"), 21.5), (Say.Of("corner radius"), 21.5)), [Say.Of("outline")]),
        (Say.Of("10. Edge of the panel to the first cell; junction box and cable exit"), Grid((Say.Of("forward"), 16.5), (Say.Of("aft"), 16.5), (Say.Of("port"), 16.5), (Say.Of("starboard"), 16.5), (Say.Of("box from port, forward"), 18), ("", 18), (Say.Of("box length, width, height"), 16), ("", 16), ("", 16), (Say.Of("cable from port, forward"), 18), ("", 18)), [""]),
    ];

    private static BlankGrid Grid(params (string Head, double WidthMm)[] columns) => new([.. columns.Select(column => new Column(column.Head, column.WidthMm))]);

    private static IEnumerable<Figure> Head(Point corner)
    {
        yield return new Lettering(Say.Of("Measuring sheet"), corner - new Step(0, TitleMm), TitleMm, IsBold: true);
        var label = new Lettering(Say.Of("Boat, date, who, unit:"), corner - new Step(0, TitleMm + 6), TextMm);
        yield return label;
        yield return Stroke.Open(LineRole.Note, corner - new Step(-Math.Max(27, TextWidth.Of(label) + 1), TitleMm + 6.5), corner - new Step(MeasuringSketch.WidthMm + 4 - FormMm, TitleMm + 6.5));
    }

    private static IEnumerable<Figure> Paragraphs(Point corner, double widthMm)
    {
        var y = corner.Y;
        foreach (var paragraph in First)
        {
            foreach (var line in TextWrap.Lines(paragraph, widthMm, TextMm, isBold: false))
            {
                yield return new Lettering(line, new(corner.X, y), TextMm);
                y -= PitchMm;
            }

            y -= 1.5;
        }
    }
}
