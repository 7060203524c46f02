namespace CanvasCut.Export.Exchange;

/// <summary>The layers of a pattern exchange file, by number, as ASTM D6673 and ANSI/AAMA-292 use them.</summary>
internal static class ExchangeLayers
{
    public const int Boundary = 1;
    public const int TurnPoints = 2;
    public const int CurvePoints = 3;
    public const int Notches = 4;
    public const int Grain = 7;
    public const int InternalLines = 8;
    public const int DrillHoles = 13;
    public const int StitchLines = 14;
    public const int Annotation = 15;

    /// <summary>The layer that repeats the lines of another for the receiver to compare its curves with.</summary>
    public static int TwinOf(int layer) => layer switch
    {
        Boundary => 84,
        InternalLines => 85,
        _ => 87,
    };
}
