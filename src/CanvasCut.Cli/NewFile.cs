using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Writes a file, never over one that exists.</summary>
internal static class NewFile
{
    /// <summary>Whether it was written; else it is told why not.</summary>
    public static bool Write(string path, ReadOnlySpan<byte> bytes, Faces faces)
    {
        try
        {
            // CreateNew refuses a file that exists in the same breath as it makes one that does not.
            using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            stream.Write(bytes);
            return true;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            faces.Errors.WriteLine(File.Exists(path) ? Say.Of($"{path} exists and is left as it is; name another file with --out.") : Say.Of($"{path} cannot be written: {exception.Message}"));
            return false;
        }
    }
}
