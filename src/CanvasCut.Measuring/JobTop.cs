using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.Measuring;

/// <summary>What an adjusted top is in a job file: its figures by the names of the job's fields, in the units they were read in.</summary>
/// <param name="Top">Of the table top; what was not measured is missing.</param>
/// <param name="Bows">Of the tables top.bow, from forward to aft; an edge without a tube is none.</param>
public sealed record JobTop(ImmutableArray<JobFigure> Top, ImmutableArray<JobBow> Bows)
{
    /// <summary>The figures of an adjustment.</summary>
    public static JobTop Of(MeasureAdjustment adjustment) => new(
        [.. OfTop(adjustment)],
        [.. adjustment.Top.Bows.Index().Where(bow => !bow.Item.Middle.IsBare).Select(bow => new JobBow(bow.Item.Name, [.. OfBow(adjustment, bow.Index)]))]);

    private static IEnumerable<JobFigure> OfTop(MeasureAdjustment adjustment)
    {
        var last = adjustment.Top.Bows.Length - 1;
        var length = Adjusted(adjustment, MeasureKind.TopLength, 0, "length");
        if (length is null && adjustment.Top.Bows[last].Middle.IsBare && adjustment.Stations[last] is { } edge)
        {
            length = new("length", FormAt(adjustment, last).Write(edge));
        }

        return Present(length, Adjusted(adjustment, MeasureKind.TopWidth, 0, "width"));
    }

    private static IEnumerable<JobFigure> OfBow(MeasureAdjustment adjustment, int bow)
    {
        var middle = adjustment.Top.Bows[bow].Middle;
        return Present(
            adjustment.Stations[bow] is { } station ? new("station", FormAt(adjustment, bow).Write(station)) : null,
            AsWritten("diameter", middle.Diameter),
            Adjusted(adjustment, MeasureKind.Girth, bow, "girth"),
            Adjusted(adjustment, MeasureKind.Chord, bow, "chord"),
            Adjusted(adjustment, MeasureKind.Crown, bow, "crown"),
            AsWritten("height", middle.Height),
            AsWritten("sag_aft", middle.SagAft));
    }

    /// <summary>How stations are written: that of the bow, or any, or else as its chord.</summary>
    private static LengthForm FormAt(MeasureAdjustment adjustment, int bow) =>
        (adjustment.Top.Of(MeasureKind.Station, bow)
            ?? adjustment.Top.Measures.FirstOrDefault(measure => measure.Kind == MeasureKind.Station)
            ?? adjustment.Top.Of(MeasureKind.Chord, bow)!).Form;

    private static JobFigure? Adjusted(MeasureAdjustment adjustment, MeasureKind kind, int bow, string field) =>
        adjustment.Readings.FirstOrDefault(reading => reading.Measure.Kind == kind && reading.Measure.Bow == bow) is { } reading
            ? new(field, reading.Measure.Form.Write(reading.Adjusted))
            : null;

    private static JobFigure? AsWritten(string field, WrittenLength? length) => length is null ? null : new(field, length.Form.Write(length.Value));

    private static IEnumerable<JobFigure> Present(params JobFigure?[] figures) => figures.OfType<JobFigure>();
}

/// <summary>A bow of a job file.</summary>
/// <param name="Name">What the measures call it.</param>
/// <param name="Figures">What is known of it.</param>
public sealed record JobBow(string Name, ImmutableArray<JobFigure> Figures);

/// <summary>A field of a job file and its value.</summary>
/// <param name="Field">Its own name within its table.</param>
/// <param name="Value">A length as a person writes it.</param>
public sealed record JobFigure(string Field, string Value);
