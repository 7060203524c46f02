using CanvasCut.Design;
using CanvasCut.JobFiles;

namespace CanvasCut.Job;

/// <summary>What a run is told besides its job.</summary>
public sealed record RunSettings
{
    /// <summary>Nothing besides.</summary>
    public static RunSettings Usual { get; } = new();

    /// <summary>What the printer makes of the 100 mm square; null for what the job file says.</summary>
    public PrintReadings? Readings { get; init; }

    /// <summary>Materials and prices that the job or the user names.</summary>
    public SideFiles Side { get; init; } = SideFiles.None;

    /// <summary>Told how it gets on; null when nobody listens.</summary>
    public IRunWatch? Watch { get; init; }

    /// <summary>Ends the run: what is not worked out by then never is, and asking for it throws.</summary>
    public CancellationToken Cancellation { get; init; }
}
