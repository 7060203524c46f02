using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.JobFiles;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>What can be known of a job file, half filled in or whole.</summary>
/// <param name="Draft">What was read.</param>
/// <param name="Run">All that comes of it; null while there are problems.</param>
public sealed record JobReading(JobDraft Draft, JobRun? Run)
{
    /// <summary>What is wrong or missing, in the order of the file; none when there is a run.</summary>
    public ImmutableArray<Problem> Problems => Draft.Job.Problems;

    /// <summary>The top from above: with all that lies on it when the job is whole, bare before; null while the top is not known.</summary>
    public Sheet? Placement => Run?.Placement ?? (Draft.Top is { } top ? TopSheet.Of(top, Context) : null);

    private SheetContext Context => new(Draft.Name, JobRun.Version, Draft.Units, string.Empty);

    /// <summary>Reads a job file as far as it goes.</summary>
    /// <param name="text">The file's text; never throws for any.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <param name="settings">What else is to be known.</param>
    public static JobReading Of(string text, string fileName, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var draft = JobFile.ReadDraft(text, fileName, settings.Side);
        return new(draft, draft.Job.Value is { } job ? JobRun.Of(job, settings) : null);
    }
}
