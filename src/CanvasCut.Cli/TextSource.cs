using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Reads a file that a person wrote, or tells why not.</summary>
internal static class TextSource
{
    /// <summary>A job file larger than this is something else.</summary>
    public const long MostBytes = 1 << 20;

    /// <summary>The file's text; null when it cannot be had, which is told.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="what">What it should be, as in "job file".</param>
    /// <param name="beginning">How to begin one.</param>
    /// <param name="faces">Where to complain.</param>
    public static string? Read(string path, string what, string beginning, Faces faces)
    {
        if (Directory.Exists(path))
        {
            faces.Errors.WriteLine(Say.Of($"{path} is a folder; name the {what} in it."));
            return null;
        }

        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
            {
                faces.Errors.WriteLine(Say.Of($"{path} is larger than a {what} can be; is it the right file?"));
                return null;
            }

            return File.ReadAllText(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            var isMissing = exception is FileNotFoundException or DirectoryNotFoundException;
            faces.Errors.WriteLine(isMissing ? Say.Of($"There is no file {path}; {beginning}.") : Say.Of($"{path} cannot be read: {exception.Message}"));
            return null;
        }
    }
}
