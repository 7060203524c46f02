using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>Writes a folder of results whole, or leaves what was there as it was; what this program did not write it never removes.</summary>
/// <remarks>
/// The new folder is made beside the old one, in a <see cref="MakingFolder"/>, and takes its place by renaming. A run that is
/// killed leaves the old results under their name, or, between the two renamings, whole in that folder; the next run puts those
/// back before it begins.
/// </remarks>
public static class ResultFolder
{
    /// <summary>Another run may come between the two renamings; that so many do one after the other means something else is wrong.</summary>
    private const int MostTries = 100;

    /// <summary>Why a folder cannot be written, in words for the user; null when it can.</summary>
    public static string? Refusal(string folder)
    {
        try
        {
            return RefusalOf(folder);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Say.Of($"{folder} cannot be written: {exception.Message}");
        }
    }

    /// <summary>Writes the files.</summary>
    /// <param name="folder">The folder; what it holds is replaced. Of a link the folder it points to is, and the link stays.</param>
    /// <param name="files">All its files.</param>
    /// <returns>A folder beside it in which something had to be left: what this program did not write, or could not remove; null when there is none.</returns>
    /// <exception cref="IOException">It cannot be written; the old results are whole.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static string? Write(string folder, IEnumerable<ResultFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var making = MakingFolder.Beside(TargetOf(folder));
        using (making)
        {
            foreach (var file in files)
            {
                making.Write(file.Name, file.Bytes.Span);
            }

            MakingFolder.Whole(() => Exchange(making, folder));
        }

        return making.LeftOver;
    }

    /// <summary>Puts back the results that a killed run left aside.</summary>
    public static void PutBack(string folder) => MakingFolder.TidyUp(TargetOf(folder));

    private static string? RefusalOf(string folder)
    {
        var target = TargetOf(folder);
        if (File.Exists(target))
        {
            return Say.Of($"{folder} is a file; name a folder that does not exist yet, or one with earlier results.");
        }

        if (Path.GetDirectoryName(target) is null)
        {
            return Say.Of($"{folder} is the root of a disk; name a folder in it.");
        }

        if (!Directory.Exists(target))
        {
            return null;
        }

        return (Directory.GetCurrentDirectory() + Path.DirectorySeparatorChar).StartsWith(target + Path.DirectorySeparatorChar, StringComparison.Ordinal)
            ? Say.Of($"{folder} is the folder you are in, and would be replaced under your feet; name another, or go to the folder above and name it there.")
            : OurFiles.StrangerIn(target) is { } stranger
            ? Say.Of($"{folder} holds {stranger}, which CanvasCut did not write; name another folder, or move that file away.")
            : null;
    }

    /// <summary>The folder itself, behind all links.</summary>
    private static string TargetOf(string folder)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var info = new DirectoryInfo(full);
        return info.LinkTarget is null ? full : Path.TrimEndingDirectorySeparator(info.ResolveLinkTarget(returnFinalTarget: true)!.FullName);
    }

    private static void Exchange(MakingFolder making, string folder)
    {
        for (var tries = 1; !TryExchange(making, folder, isLast: tries == MostTries); tries++)
        {
        }
    }

    /// <summary>False when another run was quicker between the two renamings; its results are replaced in their turn.</summary>
    private static bool TryExchange(MakingFolder making, string folder, bool isLast)
    {
        try
        {
            if (Directory.Exists(making.Target))
            {
                if (Refusal(folder) is { } refusal)
                {
                    throw new UnauthorizedAccessException(refusal);
                }

                Directory.Move(making.Target, making.Old);
            }

            Directory.Move(making.PathOf(string.Empty).TrimEnd(Path.DirectorySeparatorChar), making.Target);
        }
        catch (IOException) when (!isLast)
        {
            if (Directory.Exists(making.Target))
            {
                making.RemoveOld();
            }

            return false;
        }

        // A failure to remove the old results is no failure to write the new ones; the end of the making folder tries again and tells.
        return true;
    }
}
