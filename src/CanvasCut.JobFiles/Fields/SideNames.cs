namespace CanvasCut.JobFiles;

/// <summary>Tables with a value for each side or corner, which may also be written as one value for all.</summary>
internal static class SideNames
{
    public static string[] All { get; } = ["forward", "aft", "port", "starboard"];

    /// <summary>The corners of the top.</summary>
    public static string[] Corners { get; } = ["forward_port", "forward_starboard", "aft_port", "aft_starboard"];

    /// <summary>Whether one value may stand for this whole table.</summary>
    public static bool Is(string table) => table is "carrier.border" or "carrier.keep_room" or "carrier.edges" or "panel.dead_border" or "top.corners.rounded" or "top.corners.cut" or "weather_strip.sewn_to";
}
