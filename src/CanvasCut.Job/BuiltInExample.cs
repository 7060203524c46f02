using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>The job that runs when none is named.</summary>
public static class BuiltInExample
{
    /// <summary>What messages call its file.</summary>
    public static string FileName => Say.Of("built-in example");

    /// <summary>Its job file.</summary>
    public static string Text
    {
        get
        {
            using var stream = typeof(BuiltInExample).Assembly.GetManifestResourceStream("example.toml")
                ?? throw new InvalidOperationException("The built-in example is missing from the program.");
            using var reader = new StreamReader(stream);
            return reader.ReadToEnd();
        }
    }
}
