namespace CanvasCut.JobFiles;

/// <summary>The codes of what can be wrong with a forecast file; docs/weather.md explains each. A code never changes its meaning.</summary>
public static class ForecastCode
{
    /// <summary>A column is missing or there twice.</summary>
    public const string Columns = "CC170";

    /// <summary>A row has too few or too many fields, or a quotation mark stands astray.</summary>
    public const string Row = "CC171";

    /// <summary>A field is no number or no time.</summary>
    public const string Unreadable = "CC172";

    /// <summary>A value cannot be.</summary>
    public const string Impossible = "CC173";

    /// <summary>A row is not one hour after the row before.</summary>
    public const string Hours = "CC174";

    /// <summary>There is no row.</summary>
    public const string Empty = "CC175";
}
