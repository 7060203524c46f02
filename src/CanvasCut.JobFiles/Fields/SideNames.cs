namespace CanvasCut.JobFiles;

/// <summary>Tables with a value for each side, which may also be written as one value for all.</summary>
internal static class SideNames
{
    public static string[] All { get; } = ["forward", "aft", "port", "starboard"];

    /// <summary>Whether one value may stand for this whole table.</summary>
    public static bool Is(string table) => table is "carrier.border" or "carrier.keep_room" or "carrier.edges" or "panel.dead_border" or "weather_strip.sewn_to";
}
