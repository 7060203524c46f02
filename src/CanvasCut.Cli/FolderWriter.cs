using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Writes a folder of results whole, or tells why not.</summary>
internal static class FolderWriter
{
    /// <summary>The files written; null when they could not be, which is told.</summary>
    public static IReadOnlyList<ResultFile>? Write(string folder, JobRun outcome, Faces faces) => Write(folder, () => ResultFiles.Of(outcome), faces);

    /// <summary>The same of a whole top.</summary>
    public static IReadOnlyList<ResultFile>? Write(string folder, TopRun top, Faces faces) => Write(folder, () => TopFiles.Of(top), faces);

    private static IReadOnlyList<ResultFile>? Write(string folder, Func<IReadOnlyList<ResultFile>> make, Faces faces)
    {
        if (ResultFolder.Refusal(folder) is { } refusal)
        {
            faces.Errors.WriteLine(refusal);
            return null;
        }

        var files = make();
        try
        {
            if (ResultFolder.Write(folder, files) is { } left)
            {
                faces.Errors.WriteLine(Say.Of($"{folder} is new and whole. {left} holds what CanvasCut did not write, or could not remove, of what stood there before; look into it."));
            }

            return files;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            faces.Errors.WriteLine(Say.Of($"{folder} cannot be written: {exception.Message} Earlier results there are whole."));
            return null;
        }
    }
}
