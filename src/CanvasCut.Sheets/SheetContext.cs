using CanvasCut.Design;

namespace CanvasCut.Sheets;

/// <summary>What every sheet says about the job it belongs to.</summary>
/// <param name="JobName">The job's name.</param>
/// <param name="Version">The program's version.</param>
/// <param name="Units">Which units are printed.</param>
/// <param name="Warning">What every sheet warns of, such as checks that failed; empty for nothing.</param>
public sealed record SheetContext(string JobName, string Version, PrintUnits Units, string Warning)
{
    /// <summary>The line at the foot of a page.</summary>
    public string Footer => $"{JobName} · CanvasCut {Version}{(Warning.Length > 0 ? $" · {Warning}" : string.Empty)}";
}
