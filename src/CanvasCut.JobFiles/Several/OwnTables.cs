namespace CanvasCut.JobFiles;

/// <summary>The tables that all panels share, and that a panel of a list may have of its own under its name.</summary>
internal static class OwnTables
{
    /// <summary>Their names.</summary>
    public static string[] Names { get; } = ["carrier", "zipper", "pocket", "weather_strip", "chafe", "mount", "bonding"];

    /// <summary>The path in a job of one panel that a path such as panel[2].carrier.border stands for; other paths as they are.</summary>
    public static string Shared(string path)
    {
        if (!path.StartsWith("panel[", StringComparison.Ordinal) || path.IndexOf(']', StringComparison.Ordinal) is var end && end < 0)
        {
            return path;
        }

        var inner = path[(end + 1)..].TrimStart('.');
        return Names.Contains(inner.Split('.')[0], StringComparer.Ordinal) ? inner : inner.Length == 0 ? "panel" : $"panel.{inner}";
    }
}
