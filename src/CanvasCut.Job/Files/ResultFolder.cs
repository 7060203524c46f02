using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>Writes a folder of results whole, or leaves what was there as it was.</summary>
/// <remarks>
/// The new folder is made beside the old one under a name of its own and takes its place by renaming. A run that is
/// killed leaves the old results under their name, or, between the two renamings, whole beside it under the name
/// ending in <see cref="OldEnding"/>; the next run puts those back before it begins.
/// </remarks>
public static class ResultFolder
{
    /// <summary>Added to the name of the folder while it is being made.</summary>
    public const string NewEnding = ".canvascut-new";

    /// <summary>Added to the name of the old folder while the new one takes its place.</summary>
    public const string OldEnding = ".canvascut-old";

    /// <summary>Why a folder cannot be written, in words for the user; null when it can.</summary>
    public static string? Refusal(string folder)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        if (File.Exists(full))
        {
            return Say.Of($"{folder} is a file; name a folder that does not exist yet, or one with earlier results.");
        }

        if (Path.GetDirectoryName(full) is null)
        {
            return Say.Of($"{folder} is the root of a disk; name a folder in it.");
        }

        return Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any() && StrangerIn(full) is { } stranger
            ? Say.Of($"{folder} holds {stranger}, which CanvasCut did not write; name another folder, or move that file away.")
            : null;
    }

    /// <summary>Writes the files.</summary>
    /// <param name="folder">The folder; what it holds is replaced.</param>
    /// <param name="files">All its files.</param>
    /// <exception cref="IOException">It cannot be written; the old results are whole.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static void Write(string folder, IEnumerable<ResultFile> files)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        PutBack(full);
        var (fresh, old) = (full + NewEnding, full + OldEnding);
        DeleteIfThere(fresh);
        try
        {
            foreach (var file in files)
            {
                var path = Path.Combine(fresh, file.Name);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                using var stream = File.Create(path);
                stream.Write(file.Bytes.Span);
            }

            Exchange(full, fresh, old);
        }
        catch
        {
            DeleteIfThere(fresh);
            throw;
        }
    }

    /// <summary>Puts back the results that a killed run left aside.</summary>
    public static void PutBack(string folder)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var old = full + OldEnding;
        if (!Directory.Exists(old))
        {
            return;
        }

        if (Directory.Exists(full))
        {
            DeleteIfThere(old);
        }
        else
        {
            Directory.Move(old, full);
        }
    }

    private static void Exchange(string full, string fresh, string old)
    {
        if (!Directory.Exists(full))
        {
            Directory.Move(fresh, full);
            return;
        }

        Directory.Move(full, old);
        try
        {
            Directory.Move(fresh, full);
        }
        catch
        {
            Directory.Move(old, full);
            throw;
        }

        DeleteIfThere(old);
    }

    /// <summary>The first file or folder that our own list of results does not name; null when all are ours.</summary>
    private static string? StrangerIn(string full)
    {
        var ours = ListedIn(Path.Combine(full, ResultsPath.FileName));
        return Directory.EnumerateFiles(full, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(full, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)
            .FirstOrDefault(name => !ours.Contains(name))
            ?? (ours.Count == 0 ? Say.Of("other folders") : null);
    }

    private static HashSet<string> ListedIn(string resultsFile) => [.. ResultsPath.Read(resultsFile, new())?.Files() ?? []];

    private static void DeleteIfThere(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
