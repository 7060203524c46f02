using System.Text;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>A person's file that is changed in place: whole or not at all, and with what its bytes begin with.</summary>
internal sealed class EditedFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private readonly string _path;
    private readonly bool _hasMark;

    private EditedFile(string path, string text, bool hasMark) => (_path, Text, _hasMark) = (path, text, hasMark);

    /// <summary>Its text, without a byte order mark.</summary>
    public string Text { get; }

    /// <summary>Reads a file; null when it cannot be had, which is told.</summary>
    public static EditedFile? Read(string path, Faces faces)
    {
        if (TextSource.Read(path, Say.Of("job file"), Say.Of($"canvascut new {path} begins one"), faces) is null)
        {
            return null;
        }

        try
        {
            var bytes = File.ReadAllBytes(path);
            var hasMark = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble);
            return new(path, Strict.GetString(bytes.AsSpan(hasMark ? Encoding.UTF8.Preamble.Length : 0)), hasMark);
        }
        catch (DecoderFallbackException)
        {
            faces.Errors.WriteLine(Say.Of($"{path} is not written in UTF-8, and would lose letters; save it so in an editor first."));
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            faces.Errors.WriteLine(Say.Of($"{path} cannot be read: {exception.Message}"));
            return null;
        }
    }

    /// <summary>Puts a new text in the file's place in one step; whether it is there, else it is told why not and the old file is whole.</summary>
    public bool Exchange(string text, Faces faces)
    {
        try
        {
            // Behind a link the file itself is exchanged, and the link stays.
            var full = File.ResolveLinkTarget(_path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(_path);
            var fresh = $"{full}.new";
            using (var stream = new FileStream(fresh, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(_hasMark ? Encoding.UTF8.Preamble : []);
                stream.Write(Strict.GetBytes(text));
            }

            Replace(full, fresh);
            return true;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            faces.Errors.WriteLine(Say.Of($"{_path} cannot be written: {exception.Message}"));
            return false;
        }
    }

    private static void Replace(string full, string fresh)
    {
        try
        {
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(fresh, File.GetUnixFileMode(full));
            }

            File.Move(fresh, full, overwrite: true);
        }
        catch
        {
            File.Delete(fresh);
            throw;
        }
    }
}
