namespace CanvasCut.JobFiles;

/// <summary>The text of a file and what messages call it.</summary>
/// <param name="Name">As the user would find it.</param>
/// <param name="Text">All of it.</param>
public sealed record NamedText(string Name, string Text);

/// <summary>Where the files come from that a job names, and those named instead of them.</summary>
/// <param name="Beside">Reads a file that the job file names, relative to it; null when it cannot be read.</param>
/// <param name="Materials">Taken in place of the job's materials; null for what the job says.</param>
/// <param name="Prices">Taken in place of the job's prices; null for what the job says.</param>
public sealed record SideFiles(Func<string, NamedText?> Beside, NamedText? Materials, NamedText? Prices)
{
    /// <summary>No files at all: what a job names cannot be read.</summary>
    public static SideFiles None { get; } = new(_ => null, null, null);
}
