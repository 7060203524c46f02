using System.Text;

namespace CanvasCut.Job;

/// <summary>A folder of our own beside something that is written, in which the new is made whole before it takes the old one's place.</summary>
/// <remarks>
/// Its name ends in digits that nobody else has. A file in it, held open while the run lives, says whose it is and names each file
/// before it is made. So the next run knows what a killed one left, is kept from what another run is making at the moment, and
/// removes nothing but what is named there.
/// </remarks>
public sealed class MakingFolder : IDisposable
{
    /// <summary>Stands between the name of what is written and the digits.</summary>
    public const string Ending = ".canvascut-";

    private const string MarkName = "unfinished.txt";
    private const string MarkHead = "CanvasCut is making files here. What a run that was ended left behind, the next run removes. The files:";
    private const string NewName = "new";
    private const string OldName = "old";
    private const string GoneName = "replaced";
    private const int Digits = 16;

    private static readonly Lock Gate = new();
    private static readonly HashSet<MakingFolder> Alive = [];

    private readonly string _folder;
    private readonly FileStream _mark;
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);
    private readonly string? _leftBefore;
    private bool _isEnded;

    private MakingFolder(string target, string? leftBefore)
    {
        (Target, _leftBefore) = (target, leftBefore);
        _folder = target + Ending + Guid.NewGuid().ToString("N")[..Digits];
        Directory.CreateDirectory(_folder);
        _mark = new(Path.Combine(_folder, MarkName), FileMode.CreateNew, FileAccess.Write, FileShare.None);
        Note(MarkHead);
        Directory.CreateDirectory(PathOf(string.Empty));
    }

    /// <summary>What is written in the end.</summary>
    public string Target { get; }

    /// <summary>Where the folder that is replaced stands in the meantime.</summary>
    internal string Old => Path.Combine(_folder, OldName);

    /// <summary>Begins to make something; what killed runs left of the same is put back or removed before.</summary>
    /// <param name="target">Its full path; what it lies in is made if it is not there.</param>
    public static MakingFolder Beside(string target)
    {
        lock (Gate)
        {
            var left = TidyUp(target);
            var made = new MakingFolder(target, left);
            Alive.Add(made);
            return made;
        }
    }

    /// <summary>Puts back what a killed run had set aside, and removes what it was making.</summary>
    /// <returns>A folder in which something had to be left; null when there is none.</returns>
    public static string? TidyUp(string target)
    {
        var (parent, name) = (Path.GetDirectoryName(target)!, Path.GetFileName(target) + Ending);
        if (!Directory.Exists(parent))
        {
            return null;
        }

        var found = Directory.EnumerateDirectories(parent).Where(folder => IsNamed(Path.GetFileName(folder), name)).ToList();
        return found.FindAll(folder => IsTidied(folder, target)).Find(Directory.Exists);
    }

    /// <summary>Ends all that is being made, at once: for a run that is asked to stop. Nothing can be made afterwards.</summary>
    public static void EndAll()
    {
        Gate.Enter();
        foreach (var making in Alive.ToList())
        {
            making.End();
        }
    }

    /// <summary>The place of a file, or, with no name, of all that is made.</summary>
    public string PathOf(string name) => Path.Combine(_folder, NewName, name);

    /// <summary>Makes a file.</summary>
    public void Write(string name, ReadOnlySpan<byte> bytes)
    {
        lock (Gate)
        {
            var path = PathOf(name);
            _names.Add(name);
            Note(name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            stream.Write(bytes);
        }
    }

    /// <summary>Does something with all that was made, which no request to stop may break in two.</summary>
    internal static void Whole(Action action)
    {
        lock (Gate)
        {
            action();
        }
    }

    /// <summary>Removes the results that were replaced, but for what this program did not write.</summary>
    internal void RemoveOld()
    {
        if (Directory.Exists(Old))
        {
            RemoveOld(_folder);
        }
    }

    /// <summary>The folder, or that of an earlier run, when something had to be left in it; null when all is gone.</summary>
    internal string? LeftOver => Directory.Exists(_folder) ? _folder : _leftBefore;

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (Gate)
        {
            End();
        }
    }

    private void End()
    {
        if (_isEnded)
        {
            return;
        }

        _isEnded = true;
        Alive.Remove(this);
        _mark.Dispose();
        try
        {
            Clear(_folder, Target, _names);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // It stays, and is told of; the next run tries again.
        }
    }

    private void Note(string line)
    {
        _mark.Write(Encoding.UTF8.GetBytes(line + "\n"));
        _mark.Flush();
    }

    private static bool IsNamed(string name, string begins) =>
        name.Length == begins.Length + Digits && name.StartsWith(begins, StringComparison.Ordinal) && name[begins.Length..].All(char.IsAsciiHexDigitLower);

    /// <summary>Whether the folder was one of ours in which no run is at work, so that all of ours is gone from it now.</summary>
    private static bool IsTidied(string folder, string target)
    {
        try
        {
            HashSet<string> names;
            using (var mark = new FileStream(Path.Combine(folder, MarkName), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
            using (var reader = new StreamReader(mark, Encoding.UTF8))
            {
                if (reader.ReadLine() != MarkHead)
                {
                    return false;
                }

                names = [.. reader.ReadToEnd().Split('\n')];
            }

            Clear(folder, target, names);
            return true;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // It is none of ours, or another run is at work in it.
            return false;
        }
    }

    private static void Clear(string folder, string target, IReadOnlySet<string> names)
    {
        var old = Path.Combine(folder, OldName);
        if (Directory.Exists(old) && !Directory.Exists(target) && !File.Exists(target))
        {
            Directory.Move(old, target);
        }

        RemoveOld(folder);
        OurFiles.Remove(Path.Combine(folder, NewName), names);
        if (Directory.EnumerateFileSystemEntries(folder).All(entry => Path.GetFileName(entry) == MarkName))
        {
            File.Delete(Path.Combine(folder, MarkName));
            Directory.Delete(folder);
        }
    }

    /// <summary>Under another name first: what is half removed must never be put back.</summary>
    private static void RemoveOld(string folder)
    {
        var (old, gone) = (Path.Combine(folder, OldName), Path.Combine(folder, GoneName));
        if (Directory.Exists(gone))
        {
            OurFiles.RemoveResults(gone);
        }

        if (Directory.Exists(old) && !Directory.Exists(gone))
        {
            Directory.Move(old, gone);
            OurFiles.RemoveResults(gone);
        }
    }
}
