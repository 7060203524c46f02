using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Reads job files.</summary>
public static class JobFile
{
    /// <summary>The job that a text describes, or every problem in it at once, in the order of the text.</summary>
    /// <param name="text">TOML, with the fields of docs/job-file.md.</param>
    /// <param name="fileName">As the user gave it; stands before each problem.</param>
    /// <returns>Never throws for any text.</returns>
    public static Checked<CarrierJob> Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        var log = new ProblemLog();
        var (root, isWhole) = TomlText.Read(text, fileName, log);
        new UnknownFields(fileName, log).Check(root, string.Empty);
        AcceptedFields.Check(root, fileName, log);
        var reader = new FieldReader(root, fileName, log, isWhole);
        var values = reader.ReadAll();
        if (isWhole)
        {
            // Of half a file, rules between fields could only guess.
            JobRules.Check(values, log);
        }

        return log.Finish(() => JobBuilder.Build(values, [.. reader.Defaults]));
    }
}
