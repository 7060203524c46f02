using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>Takes a results file from the disk.</summary>
internal static class ResultsPath
{
    /// <summary>What it is called in a folder.</summary>
    public const string FileName = "results.json";

    /// <summary>No results.json is so large.</summary>
    private const int MostBytes = 64 << 20;

    /// <summary>The text of a file, or of the results.json of a folder; null and one problem when it cannot be had.</summary>
    public static ResultsText? Read(string path, ProblemLog log)
    {
        var file = Directory.Exists(path) ? Path.Combine(path, FileName) : path;
        return BytesOf(file, log) is { } bytes ? new(bytes, file) : null;
    }

    private static byte[]? BytesOf(string file, ProblemLog log)
    {
        void Report(string message) => log.Report(ResultsCode.Missing, new(file, 1, 1, string.Empty), message);
        try
        {
            if (BoundedFile.Read(file, MostBytes) is { } bytes)
            {
                return bytes;
            }

            Report(Say.Of("is larger than a results.json can be; name the one that make wrote."));
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            Report(Say.Of("is not there; name the results.json that make wrote for the job that is sewn, or its folder."));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Report(Say.Of($"cannot be read: {exception.Message}"));
        }

        return null;
    }
}
