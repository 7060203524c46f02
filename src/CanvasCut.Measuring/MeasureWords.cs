using CanvasCut.Design;

namespace CanvasCut.Measuring;

/// <summary>What a measure is called.</summary>
public static class MeasureWords
{
    /// <summary>The measure's name, with the bow's.</summary>
    public static string Of(MeasuredTop top, TopMeasure measure) => measure.Kind switch
    {
        MeasureKind.OverallFromPort => "overall, diagonal from port",
        MeasureKind.OverallFromStarboard => "overall, diagonal from starboard",
        _ => $"{top.Bows[measure.Bow].Name}, {Of(measure.Kind)}",
    };

    /// <summary>The reading's name: the measure's, and its number where there are several.</summary>
    public static string Of(MeasuredTop top, AdjustedReading reading) =>
        Of(top, reading.Measure) + (reading.Measure.Readings.Length > 1 ? FormattableString.Invariant($", reading {reading.Number}") : string.Empty);

    private static string Of(MeasureKind kind) => kind switch
    {
        MeasureKind.Chord => "chord",
        MeasureKind.Girth => "girth",
        MeasureKind.Crown => "crown",
        MeasureKind.Port => "port station",
        MeasureKind.Starboard => "starboard station",
        MeasureKind.DiagonalFromPort => "diagonal from port",
        _ => "diagonal from starboard",
    };
}
