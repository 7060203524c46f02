using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Reads measures files: a top as the tape found it.</summary>
public static class MeasuresFile
{
    /// <summary>The measured top that a text describes, or every problem in it at once, in the order of the text.</summary>
    /// <param name="text">TOML, with the fields of docs/measuring.md.</param>
    /// <param name="fileName">As the user gave it; stands before each problem.</param>
    /// <returns>Never throws for any text.</returns>
    public static Checked<MeasuredTop> Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        var log = new ProblemLog();
        var (root, isWhole) = TomlText.Read(text, fileName, log);
        var reader = new MeasuresReader(root, fileName, log);
        var values = reader.ReadAll();
        if (isWhole)
        {
            MeasureRules.Check(values, log);
        }

        return log.Finish(() => new MeasuredTopBuilder(values, root).Build());
    }
}
