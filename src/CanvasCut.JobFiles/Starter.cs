namespace CanvasCut.JobFiles;

/// <summary>The job file that a new user fills in.</summary>
public static class Starter
{
    private const string Resource = "starter.toml";

    /// <summary>TOML with a blank ("") for every required field and a note on how to measure it; the rest stands in comments.</summary>
    public static string Text { get; } = Read();

    private static string Read()
    {
        using var stream = typeof(Starter).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
