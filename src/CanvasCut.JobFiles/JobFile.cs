using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Reads job files.</summary>
public static class JobFile
{
    /// <summary>The top and all that is mounted on it that a text describes, or every problem in it at once, in the order of the text.</summary>
    /// <param name="text">TOML, with the fields of docs/job-file.md.</param>
    /// <param name="fileName">As the user gave it; stands before each problem.</param>
    /// <returns>Never throws for any text.</returns>
    public static Checked<TopJob> Read(string text, string fileName) => Read(text, fileName, SideFiles.None);

    /// <summary>The same with the materials and prices that the job or the caller names.</summary>
    /// <param name="text">TOML, with the fields of docs/job-file.md.</param>
    /// <param name="fileName">As the user gave it; stands before each problem.</param>
    /// <param name="side">The other files; their problems come after the job's.</param>
    public static Checked<TopJob> Read(string text, string fileName, SideFiles side) => ReadDraft(text, fileName, side).Job;

    /// <summary>What can be known of a text that is perhaps half filled in: the bare top, when all of it is there and right.</summary>
    /// <param name="text">TOML, with the fields of docs/job-file.md.</param>
    /// <param name="fileName">As the user gave it; stands before each problem.</param>
    /// <param name="side">The other files; their problems come after the job's.</param>
    /// <returns>Never throws for any text.</returns>
    public static JobDraft ReadDraft(string text, string fileName, SideFiles side)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(side);
        var (log, materials, prices) = (new ProblemLog(), new ProblemLog(), new ProblemLog());
        var (root, isWhole) = TomlText.Read(text, fileName, log);
        new UnknownFields(fileName, log).Check(root, string.Empty);
        AcceptedFields.Check(root, fileName, log);
        var supplies = SupplyChoice.Read(root, fileName, side, (log, materials, prices));
        var jobs = new PanelJobs((root, isWhole), fileName, supplies, log).Read();
        log.Append(materials);
        log.Append(prices);
        return DraftReader.Of((root, isWhole), fileName, supplies, log.Finish(jobs.Build));
    }
}
