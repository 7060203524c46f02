using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Writes a folder of results whole, or tells why not.</summary>
internal static class FolderWriter
{
    /// <summary>The files written; null when they could not be, which is told.</summary>
    public static IReadOnlyList<ResultFile>? Write(string folder, JobRun outcome, Faces faces)
    {
        if (ResultFolder.Refusal(folder) is { } refusal)
        {
            faces.Errors.WriteLine(refusal);
            return null;
        }

        var files = ResultFiles.Of(outcome);
        try
        {
            ResultFolder.Write(folder, files);
            return files;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            faces.Errors.WriteLine(Say.Of($"{folder} cannot be written: {exception.Message} Earlier results there are whole."));
            return null;
        }
    }
}
