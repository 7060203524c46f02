using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Measuring;

/// <summary>What a measure is called.</summary>
public static class MeasureWords
{
    /// <summary>The measure's name, with the bow's.</summary>
    public static string Of(MeasuredTop top, TopMeasure measure) => measure.Kind switch
    {
        MeasureKind.OverallFromPort => Say.Of("overall, diagonal from port"),
        MeasureKind.OverallFromStarboard => Say.Of("overall, diagonal from starboard"),
        MeasureKind.TopLength => Say.Of("length of the top"),
        MeasureKind.TopWidth => Say.Of("width of the top"),
        _ => $"{top.Bows[measure.Bow].Name}, {Of(measure.Kind)}",
    };

    /// <summary>The reading's name: the measure's, and its number where there are several.</summary>
    public static string Of(MeasuredTop top, AdjustedReading reading) =>
        Of(top, reading.Measure) + (reading.Measure.Readings.Length > 1 ? Say.Of($", reading {reading.Number}") : string.Empty);

    private static string Of(MeasureKind kind) => kind switch
    {
        MeasureKind.Chord => Say.Of("chord"),
        MeasureKind.Girth => Say.Of("girth"),
        MeasureKind.Crown => Say.Of("crown"),
        MeasureKind.Port => Say.Of("port station"),
        MeasureKind.Starboard => Say.Of("starboard station"),
        MeasureKind.Station => Say.Of("station on the centreline"),
        MeasureKind.DiagonalFromPort => Say.Of("diagonal from port"),
        _ => Say.Of("diagonal from starboard"),
    };
}
