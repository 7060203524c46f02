using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Reads once more, and by itself, what can be known of a job that is not whole; what is wrong is reported by the reading of the whole.</summary>
internal static class DraftReader
{
    public static JobDraft Of((TomlTable Root, bool IsWhole) file, string fileName, SupplyChoice supplies, Checked<TopJob> job)
    {
        if (job.Value?.First is { } whole)
        {
            return new(whole.Name, whole.Units, whole.Top, job);
        }

        var head = new FieldReader(file, fileName, supplies, new()).ReadAll(TopFields.Head);
        return new(
            head.Text("name") ?? string.Empty,
            head.Text("prints") is { } prints ? GivenValues.WordOf<PrintUnits>(prints) : PrintUnits.Both,
            TopOf(file, fileName, supplies),
            job);
    }

    /// <summary>The top by its own fields and rules, whatever is still wrong elsewhere.</summary>
    private static TopCloth? TopOf((TomlTable Root, bool IsWhole) file, string fileName, SupplyChoice supplies)
    {
        var log = new ProblemLog();
        var reader = new FieldReader(file, fileName, supplies, log);
        var values = reader.ReadAll(TopFields.Top);
        JobRules.CheckTop(values, new(values, log));
        return log.IsEmpty && reader.HasAll(TopFields.Top) ? TopBuilder.Build(new(values)) : null;
    }
}
