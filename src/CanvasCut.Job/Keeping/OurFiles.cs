using System.IO.Enumeration;

namespace CanvasCut.Job;

/// <summary>Which entries of a folder this program wrote, and the removal of these alone.</summary>
internal static class OurFiles
{
    /// <summary>The first entry that the folder's own list of results does not name, by its place in the folder; null when all are named.</summary>
    public static string? StrangerIn(string folder)
    {
        var ours = ListedIn(folder);
        var folders = FoldersOf(ours);
        return EntriesOf(folder)
            .Where(entry => entry.IsLink || !(entry.IsFolder ? folders : ours).Contains(entry.Name))
            .Select(entry => entry.Name)
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();
    }

    /// <summary>Removes results; what their list does not name stays, and the folder with it.</summary>
    public static void RemoveResults(string folder) => Remove(folder, ListedIn(folder));

    /// <summary>Removes files by their places in a folder, then the folders they leave empty, and the folder itself if nothing is left in it.</summary>
    public static void Remove(string folder, IReadOnlySet<string> names)
    {
        if (!Directory.Exists(folder))
        {
            return;
        }

        // The list goes last, so that a removal that is broken off can be taken up again.
        foreach (var entry in EntriesOf(folder).Where(entry => !entry.IsFolder && !entry.IsLink && names.Contains(entry.Name)).OrderBy(entry => entry.Name == ResultsPath.FileName).ToList())
        {
            File.Delete(Path.Combine(folder, entry.Name));
        }

        var ours = FoldersOf(names);
        foreach (var name in EntriesOf(folder).Where(entry => entry.IsFolder && !entry.IsLink && ours.Contains(entry.Name)).Select(entry => entry.Name).OrderByDescending(name => name.Length).ToList())
        {
            DeleteIfEmpty(Path.Combine(folder, name));
        }

        DeleteIfEmpty(folder);
    }

    private static void DeleteIfEmpty(string folder)
    {
        if (!Directory.EnumerateFileSystemEntries(folder).Any())
        {
            Directory.Delete(folder);
        }
    }

    /// <summary>All that is in a folder and below it; what lies behind a link is not, and the link itself is.</summary>
    private static FileSystemEnumerable<Entry> EntriesOf(string folder)
    {
        static bool IsLink(ref FileSystemEntry entry) => entry.Attributes.HasFlag(FileAttributes.ReparsePoint);
        return new(
            folder,
            (ref FileSystemEntry entry) => new(Path.GetRelativePath(folder, entry.ToFullPath()).Replace('\\', '/'), entry.IsDirectory, IsLink(ref entry)),
            new() { RecurseSubdirectories = true, AttributesToSkip = 0, IgnoreInaccessible = false })
        {
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !IsLink(ref entry),
        };
    }

    /// <summary>The files that the list of results in a folder names; none where there is no such list.</summary>
    private static HashSet<string> ListedIn(string folder)
    {
        try
        {
            return [.. new ResultsText(File.ReadAllBytes(Path.Combine(folder, ResultsPath.FileName)), ResultsPath.FileName).Files()];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static HashSet<string> FoldersOf(IEnumerable<string> names)
    {
        var folders = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            for (var end = name.LastIndexOf('/'); end > 0; end = name.LastIndexOf('/', end - 1))
            {
                folders.Add(name[..end]);
            }
        }

        return folders;
    }

    /// <param name="Name">Its place in the folder, with forward slashes.</param>
    /// <param name="IsFolder">Whether it is a folder, or a link to one.</param>
    /// <param name="IsLink">Whether it only points elsewhere.</param>
    private readonly record struct Entry(string Name, bool IsFolder, bool IsLink);
}
