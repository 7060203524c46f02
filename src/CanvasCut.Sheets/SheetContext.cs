using CanvasCut.Design;

namespace CanvasCut.Sheets;

/// <summary>What every sheet says about the job it belongs to.</summary>
/// <param name="JobName">The job's name.</param>
/// <param name="Version">The program's version.</param>
/// <param name="Units">Which units are printed.</param>
/// <param name="Warning">What every sheet warns of, such as checks that failed; empty for nothing.</param>
public sealed record SheetContext(string JobName, string Version, PrintUnits Units, string Warning)
{
    /// <summary>The paper of what is read and not cut: A4, or Letter for a job in inches, whatever paper the templates take.</summary>
    public (double WidthMm, double HeightMm) Paper => Units == PrintUnits.Imperial ? (215.9, 279.4) : (210.0, 297.0);

    /// <summary>The line at the foot of a page.</summary>
    public string Footer => $"{JobName} · CanvasCut {Version}{(Warning.Length > 0 ? $" · {Warning}" : string.Empty)}";
}
