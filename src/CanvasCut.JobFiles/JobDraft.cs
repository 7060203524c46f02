using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>A job file as far as it can be read.</summary>
/// <param name="Name">The job's name; empty while it is missing.</param>
/// <param name="Units">Which units are printed.</param>
/// <param name="Top">The top; null while something of it is missing or wrong.</param>
/// <param name="Job">The whole job, or every problem in its way.</param>
public sealed record JobDraft(string Name, PrintUnits Units, TopCloth? Top, Checked<TopJob> Job);
