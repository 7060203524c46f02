using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The form to fill in when the panel is tested for the first time, with room for the years after; one page.</summary>
internal static class FirstDayForm
{
    private const double TextMm = 2.4;
    private const double RowMm = 8.6;
    private const double LabelMm = 46;

    private static ImmutableArray<string> Readings =>
    [
        Say.Of("Date and time of day"), Say.Of("Sky; sun clear of rig and clouds"), Say.Of("Air temperature"), Say.Of("Panel's temperature, on its face"), Say.Of("Battery before: voltage, charge"),
        Say.Of("Open voltage, nothing connected"), Say.Of("Charging current"), Say.Of("Power the controller shows"), Say.Of("Measured by"),
    ];

    /// <summary>Adds the form.</summary>
    public static void Add(Flow flow, PatternSet patterns, SheetContext context)
    {
        var (job, box) = (patterns.Job, patterns.Mounted.CarrierBox);
        string Size(double mm) => LengthText.Of(Length.FromMillimeters(mm), job.Units);
        flow.Title(Say.Of("Form for the first day"));
        flow.Text(Say.Of($"{context.JobName}. Keep it with the panel's papers; what the six-month and yearly checks find is held against it."));
        flow.Block([], 3);
        Rows(flow, (Say.Of("Fitted on"), Written(job.Care.Fitted)), (Say.Of("Fitted by"), string.Empty));
        Rows(flow, (Say.Of("Panel: maker and type"), string.Empty), (Say.Of("Serial number"), string.Empty));
        Rows(flow, (Say.Of("On its label: open voltage"), string.Empty), (Say.Of("Short-circuit current"), string.Empty));
        Row(flow, Say.Of("Carrier, finished"), Say.Of($"{Size(box.WidthMm)} athwart, {Size(box.HeightMm)} fore and aft"));
        Row(flow, Say.Of("Cloth and its lot"), job.Workshop.Cloth.Name);
        Row(flow, Say.Of("Thread and its lot"), job.Workshop.Sewing.Thread);
        Rows(flow, (job.Fastenings.Mount.Uses(MountKind.Zipper) ? Say.Of("Zippers: make and size") : Say.Of("Fastenings: make and size"), string.Empty), (Say.Of("Bonding tape and its lot"), string.Empty));
        Rows(flow, (Say.Of("Surface warmth at bonding"), string.Empty), (Say.Of("Dew point then"), string.Empty));
        Rows(flow, (Say.Of("Bonded on, at"), string.Empty), (Say.Of("Cure ended on, at"), string.Empty));
        flow.Heading(Say.Of("Readings"));
        flow.Text(Say.Of("Clear noon, the battery at least half discharged (Practical Sailor, \"Solar panel self-destruction\"); later years in the same weeks."));
        flow.Block([], 2);
        var names = Math.Max(LabelMm + 12, Readings.Max(reading => TextWidth.Of(reading, TextMm, isBold: false)) + 3);
        var column = (flow.WidthMm - names) / 3;
        Grid(flow, ["", Say.Of("First day"), Say.Of("After one year"), Say.Of("After two years")], [names, column, column, column]);
        foreach (var reading in Readings)
        {
            Grid(flow, [reading, "", "", ""], [names, column, column, column]);
        }

        flow.Block([], 3);
        flow.List(
        [
            Say.Of("A panel in light is live: cover it before you touch a contact, and never part connectors under load."),
            Say.Of("Polarity is checked before anything is connected. Local codes and the makers' sheets go first; ask a licensed electrician where they require one."),
        ]);
    }

    private static string Written(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? string.Empty;

    /// <summary>Two labels, each with a line to write on and what is known already.</summary>
    private static void Rows(Flow flow, (string Label, string Known) left, (string Label, string Known) right)
    {
        var half = (flow.WidthMm - 6) / 2;
        flow.Block([.. Line(left, 0, half), .. Line(right, half + 6, half)], RowMm);
    }

    /// <summary>A label with a line across the page.</summary>
    private static void Row(Flow flow, string label, string known) => flow.Block([.. Line((label, known), 0, flow.WidthMm)], RowMm);

    private static IEnumerable<Figure> Line((string Label, string Known) row, double leftMm, double widthMm)
    {
        const double BaseMm = -5.6;
        var labelMm = Math.Max(LabelMm, TextWidth.Of(row.Label, TextMm, isBold: false) + 1.5);
        var lineFrom = leftMm + labelMm;
        yield return new Lettering(row.Label, new(leftMm, BaseMm), TextMm);
        yield return Stroke.Open(LineRole.Note, new(lineFrom, BaseMm - 1), new(leftMm + widthMm, BaseMm - 1));
        if (row.Known.Length > 0)
        {
            var known = TextWidth.Shortened(row.Known, widthMm - labelMm - 1, TextMm, isBold: false);
            yield return new Lettering(known, new(lineFrom + 0.5, BaseMm), TextMm);
        }
    }

    private static void Grid(Flow flow, string[] cells, double[] widthsMm)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var left = 0.0;
        foreach (var (cell, width) in cells.Zip(widthsMm))
        {
            if (cell.Length > 0)
            {
                figures.Add(new Lettering(cell, new(left + 1.5, -5.6), TextMm));
            }

            figures.Add(Stroke.Open(LineRole.Note, new(left, 0), new(left, -RowMm)));
            left += width;
        }

        figures.Add(Stroke.Open(LineRole.Note, new(left, 0), new(left, -RowMm)));
        figures.Add(Stroke.Open(LineRole.Note, new(0, 0), new(left, 0)));
        figures.Add(Stroke.Open(LineRole.Note, new(0, -RowMm), new(left, -RowMm)));
        flow.Block(figures.ToImmutable(), RowMm);
    }
}
