namespace CanvasCut.Cli;

/// <summary>Reads the files that are named on the command line.</summary>
internal static class InputText
{
    /// <summary>Larger than this, a file is something else.</summary>
    private const long MostBytes = 1 << 20;

    /// <summary>The text of a file; null when it cannot be read, which is told.</summary>
    /// <param name="path">The file.</param>
    /// <param name="kind">What it should be, as in "job".</param>
    /// <param name="faces">Where to complain.</param>
    public static string? Of(string path, string kind, Faces faces)
    {
        if (Directory.Exists(path))
        {
            faces.Errors.WriteLine($"{path} is a folder; name the {kind} file in it.");
            return null;
        }

        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
            {
                faces.Errors.WriteLine($"{path} is larger than a {kind} file can be; is it the right file?");
                return null;
            }

            return File.ReadAllText(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            var isMissing = exception is FileNotFoundException or DirectoryNotFoundException;
            var hint = kind == "job" ? $"; canvascut new {path} begins one" : string.Empty;
            faces.Errors.WriteLine(isMissing ? $"There is no file {path}{hint}." : $"{path} cannot be read: {exception.Message}");
            return null;
        }
    }
}
