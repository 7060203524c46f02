using System.Text;
using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>A person's file that is changed in place: whole or not at all, and with what its bytes begin with.</summary>
internal sealed class EditedFile
{
    private const string FreshName = "text";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private readonly string _path;
    private readonly bool _hasMark;
    private readonly byte[] _before;

    private EditedFile(string path, byte[] bytes)
    {
        (_path, _before, _hasMark) = (path, bytes, bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble));
        Text = Strict.GetString(bytes.AsSpan(_hasMark ? Encoding.UTF8.Preamble.Length : 0));
    }

    /// <summary>Its text, without a byte order mark.</summary>
    public string Text { get; }

    /// <summary>Reads a file; null when it cannot be had, which is told.</summary>
    public static EditedFile? Read(string path, Faces faces)
    {
        return TextSource.ReadBytes(path, Say.Of("job file"), Say.Of($"canvascut new {path} begins one"), faces) is { } bytes ? new(path, bytes) : null;
    }

    /// <summary>Puts a new text in the file's place in one step; whether it is there, else it is told why not and the old file is whole.</summary>
    public bool Exchange(string text, Faces faces)
    {
        try
        {
            // Behind a link the file itself is exchanged, and the link stays.
            var full = File.ResolveLinkTarget(_path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(_path);
            using var making = MakingFolder.Beside(full);
            making.Write(FreshName, [.. _hasMark ? Encoding.UTF8.Preamble : [], .. Strict.GetBytes(text)]);
            if (!File.ReadAllBytes(full).AsSpan().SequenceEqual(_before))
            {
                faces.Errors.WriteLine(Say.Of($"{_path} was changed by somebody else at the same time; nothing was written. Do it once more."));
                return false;
            }

            Replace(full, making.PathOf(FreshName));
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
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(fresh, File.GetUnixFileMode(full));
        }

        File.Move(fresh, full, overwrite: true);
    }
}
