using System.Text;
using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Reads a file that a person wrote, or tells why not.</summary>
internal static class TextSource
{
    /// <summary>A job file larger than this is something else.</summary>
    public const int MostBytes = 1 << 20;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file's text; null when it cannot be had, which is told.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="what">What it should be, as in "job file".</param>
    /// <param name="beginning">How to begin one.</param>
    /// <param name="faces">Where to complain.</param>
    public static string? Read(string path, string what, string beginning, Faces faces) =>
        ReadBytes(path, what, beginning, faces) is { } bytes ? TextOf(bytes) : null;

    /// <summary>The bytes of the same, which are a text in UTF-8.</summary>
    public static byte[]? ReadBytes(string path, string what, string beginning, Faces faces)
    {
        if (Directory.Exists(path))
        {
            faces.Errors.WriteLine(Say.Of($"{path} is a folder; name the {what} in it."));
            return null;
        }

        try
        {
            var bytes = BoundedFile.Read(path, MostBytes);
            if (bytes is null)
            {
                faces.Errors.WriteLine(Say.Of($"{path} is larger than a {what} can be; is it the right file?"));
            }
            else if (FirstOdd(bytes) is { } odd)
            {
                faces.Errors.WriteLine(Say.Of($"{path} is not written in UTF-8: line {odd.Line} has the byte {odd.Byte}. Save it in UTF-8 in an editor first."));
                return null;
            }

            return bytes;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            var isMissing = exception is FileNotFoundException or DirectoryNotFoundException;
            faces.Errors.WriteLine(isMissing ? Say.Of($"There is no file {path}; {beginning}.") : Say.Of($"{path} cannot be read: {exception.Message}"));
            return null;
        }
    }

    /// <summary>A file beside another; null when it cannot be had or is no text in UTF-8.</summary>
    public static string? ReadQuietly(string path)
    {
        try
        {
            return BoundedFile.Read(path, MostBytes) is { } bytes && FirstOdd(bytes) is null ? TextOf(bytes) : null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    private static string TextOf(byte[] bytes) => Strict.GetString(bytes.AsSpan(bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0));

    /// <summary>The first byte that is in no letter of UTF-8, and its line; null when there is none.</summary>
    private static (int Line, string Byte)? FirstOdd(byte[] bytes)
    {
        for (ReadOnlySpan<byte> rest = bytes; !rest.IsEmpty;)
        {
            if (Rune.DecodeFromUtf8(rest, out _, out var length) != System.Buffers.OperationStatus.Done)
            {
                var at = bytes.Length - rest.Length;
                return (bytes.AsSpan(0, at).Count((byte)'\n') + 1, FormattableString.Invariant($"0x{bytes[at]:X2}"));
            }

            rest = rest[length..];
        }

        return null;
    }
}
